#include "tests/viewer/window/ring_on_dial.h"

#include "tests/viewer/window/names.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gapwise::test {

std::string ringSheet() {
    return R"({
  "format": "gapwise.build/1", "frame": "alder-72",
  "attitude": {"up": "compressor", "drain_deg": 180},
  "seatings": [{"part": "SR-CO", "seat": "seat-SR-CO", "clock_deg": 90, "seen_from": "compressor",
                "reference_face_looks": "compressor", "home": true}],
  "steps_done": []
})";
}

Point onSrCo(const Rectangle& dial, double clockwise) {
    const double radius = std::min(dial.width, dial.height) / 2.0 * names::kSrCoShare;
    const double angle = clockwise * std::numbers::pi / 180.0;
    const Point middle = dial.middle();
    return {middle.x + radius * std::sin(angle), middle.y - radius * std::cos(angle)};
}

} // namespace gapwise::test
