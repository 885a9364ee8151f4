#pragma once

#include "tests/support/small_frame.h"

namespace gapwise {

/// The small frame with screws `A` (a drawn set of none) at S2 and a shaft nut `N` of one piece, the collar,
/// at S4.
inline ChangedFrame tightenedFrame() {
    const auto parsed = [](const char* text) { return nlohmann::json::parse(text); };
    return ChangedFrame{}
        .set("/fasteners", parsed(R"([
            {"id": "A", "name": "screws", "size": "4 x M5", "tightens": "clockwise", "seen_from": "compressor",
             "step": "S2", "parts": ["HOUSING"], "thread": "M5", "length_mm": 12, "class": "8.8", "torque_Nm": 5,
             "lubrication": "light oil", "locking": "spring_washer", "stages_percent": [60, 100],
             "pattern": [1, 3, 2, 4], "check_pass": true, "friction_thread": 0.14, "friction_head": 0.12,
             "head_diameter_mm": 7, "groups": [{"name": "left", "count": 4}, {"name": "right", "count": 4}],
             "check": "even gap", "source": "invented"},
            {"id": "N", "name": "nut", "size": "M8x1", "tightens": "counter_clockwise", "seen_from": "compressor",
             "step": "S4", "parts": ["COLLAR"], "thread": "M8x1-LH", "class": "10.9", "torque_Nm": 14,
             "lubrication": "oil", "locking": "none", "pattern": [1], "friction_thread": 0.12,
             "friction_head": 0.12, "head_diameter_mm": 10, "groups": [{"count": 1}],
             "run_down": {"seat_Nm": 16, "snug_Nm": 5, "drag_most_Nm": 1, "angle_deg": [12, 28],
                          "torque_factor": 0.16, "stiffness_kN_mm": 134, "stem_diameter_mm": 8},
             "nut_line": {"agrees_deg": 8, "small_deg": 25, "stack": ["COLLAR"]}, "source": "invented"}
        ])"))
        .set("/parts/7/fastener", "N");
}

} // namespace gapwise
