#pragma once

#include "tests/support/small_frame.h"

namespace gapwise {

/// The small frame with what can be measured: `M1` of the bush and the collar, `M2` of the assembly with one
/// plan of each kind, and two chains over five dimensions: `gap`, the collar against a stop of the housing,
/// and `play`, a diameter. The rotor pushed to the compressor lets the collar touch the bush.
inline ChangedFrame measuredFrame() {
    const auto parsed = [](const char* text) { return nlohmann::json::parse(text); };
    return ChangedFrame{}
        .set("/part_types/0/expansion_per_K", 11.4e-6)
        .set("/measurements", parsed(R"([
            {"id": "M1", "name": "lengths", "where": "at four places", "instrument": "micrometer", "step": "S1",
             "parts": ["BUSH", "COLLAR"],
             "methods": [{"id": "ball", "words": "ball anvil", "gauges": ["ball_anvil_micrometer"]},
                         {"id": "flat", "words": "flat anvils", "gauges": ["flat_anvil_micrometer"],
                          "blind": "flat anvils bridge a worn track"}],
             "quantities": [
                 {"id": "a", "name": "face", "part": "COLLAR", "unit": "mm", "points": ["1", "2", "3", "4"],
                  "planes": 2, "takes": "least", "expected": 4, "spread_most": 0.003, "ovality_most": 0.005,
                  "taper_most": 0.006,
                  "limits": {"fresh": [3.99, 4.01], "service": [3.98, null], "rule": "guarded", "method": "ball",
                             "source": "invented"}},
                 {"id": "rim", "name": "rim", "part": "COLLAR", "unit": "mm"},
                 {"id": "track", "name": "track", "part": "COLLAR", "unit": "mm", "from": ["+rim", "-a"]}]},
            {"id": "M2", "name": "assembly", "where": "at the nose", "step": "S4", "before": "S1", "parts": ["COLLAR"],
             "required": true,
             "methods": [{"id": "push-pull", "words": "pushed and pulled", "gauges": ["dial_indicator"]}],
             "quantities": [
                 {"id": "gap", "name": "gap", "unit": "mm", "agrees": {"with": "track", "within_mm": 0.02},
                  "limits": {"fresh": [0.05, 0.15], "rule": "as_printed", "method": "push-pull", "source": "invented"},
                  "expectations": [{"renewed": ["BUSH"], "direction": "down"},
                                   {"work": "rotor_freed", "direction": "up"}]},
                 {"id": "tip", "name": "tip", "unit": "mm", "points": ["12", "3", "6", "9"],
                  "four_point": {"seen_from": "turbine", "outboard_mm": 48, "eccentricity_most_mm": 0.06,
                                 "point_least_mm": 0.25, "consistency_most_mm": 0.05}},
                 {"id": "U", "name": "unbalance", "unit": "g_mm", "points": ["C", "T"],
                  "limits": {"rule": "guarded", "method": "push-pull", "source": "invented"},
                  "unbalance": {"grade_mm_s": 2.5, "speed_rpm": 130000, "mass_kg": 0.5, "centre_z_mm": -50,
                                "compressor_plane_z_mm": 46, "turbine_plane_z_mm": -79}},
                 {"id": "ends", "name": "ring gap", "unit": "mm",
                  "ring_gap": {"bore_mm": 20, "ring_per_K": 11.4e-6, "bore_per_K": 10.6e-6, "ring_rise_K": 180,
                               "bore_rise_K": 120}},
                 {"id": "turn", "name": "turn", "unit": "deg",
                  "pin_play": {"notch_mm": 2.7, "pin_mm": 2.5, "radius_mm": 9.4525}},
                 {"id": "nose", "name": "nose", "unit": "mm"}, {"id": "hub", "name": "hub", "unit": "mm"}]}
        ])"))
        .set("/dimensions", parsed(R"([
            {"id": "s", "name": "stop", "part": "HOUSING", "from": "HOUSING/datum", "to": "HOUSING/stop",
             "nominal_mm": 9.1, "tolerance_mm": 0.02},
            {"id": "b", "name": "bush", "part": "BUSH", "from": "HOUSING/datum", "to": "BUSH/face", "nominal_mm": 5,
             "tolerance_mm": 0.01, "scatter": "triangular"},
            {"id": "a", "name": "face", "part": "COLLAR", "from": "COLLAR/seat", "to": "COLLAR/face",
             "nominal_mm": 4, "tolerance_mm": 0, "scatter": "rectangular"},
            {"id": "d", "name": "journal", "part": "ROTOR", "from": "axis", "to": "ROTOR/journal", "nominal_mm": 12,
             "tolerance_mm": 0.005},
            {"id": "D", "name": "bore", "part": "BUSH", "from": "axis", "to": "BUSH/bore", "nominal_mm": 12.05,
             "tolerance_mm": 0.005}
        ])"))
        .set("/contacts", parsed(R"([{"between": ["BUSH/face", "COLLAR/seat"], "pushed_to": "compressor"},
                                     {"between": ["HOUSING/stop", "ROTOR/journal"]}])"))
        .set("/chains", parsed(R"([
            {"id": "gap", "name": "gap", "from": "COLLAR/face", "to": "HOUSING/stop", "pushed_to": "compressor",
             "links": ["-a", "-b", "+s"]},
            {"id": "play", "name": "play", "from": "ROTOR/journal", "to": "BUSH/bore", "links": ["-d", "+D"],
             "window_mm": [0.03, null]}
        ])"))
        .set("/changes", parsed(R"([{"id": "worn", "name": "worn", "kind": "wear", "part": "COLLAR",
                                     "moves": ["-a", "+b"], "remedy": "renew"}])"))
        .set("/selectors",
             parsed(R"([{"dimension": "b", "sets": "gap", "part": "BUSH", "grades_mm": [4.9, 5, 5.1],
                                       "otherwise": "grind"}])"))
        .set("/lever", parsed(R"({"span_mm": 44, "nose_mm": 62, "turbine_mm": 56, "bearing_length_mm": 9,
                                  "nose_reading": "nose", "turbine_reading": "hub", "compressor_play": "play",
                                  "turbine_play": "play"})"));
}

} // namespace gapwise
