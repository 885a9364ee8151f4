#include "geometry/solids/threads.h"

#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

constexpr int kPiecesATurn = 24;
/// Where the crest runs out, at either end, in pitches.
constexpr double kRunOut = 0.25;

} // namespace

EdgeLines threadLines(const Thread& thread) {
    const double turns = thread.z.length() / thread.pitchMm - 2.0 * kRunOut;
    const int pieces = static_cast<int>(std::floor(turns * kPiecesATurn));
    const double step = 2.0 * std::numbers::pi / kPiecesATurn;
    const double radius = thread.diameterMm / 2.0 / std::cos(step / 2.0);
    // Looking at +Z a right-hand crest climbs counter-clockwise: it goes away from whoever turns it
    // clockwise.
    const double sense = thread.leftHand ? -1.0 : 1.0;
    EdgeLines lines;
    if (pieces < 1)
        return lines;
    for (int i = 0; i <= pieces; ++i) {
        const double turn = sense * step * i;
        const double z = thread.z.from + thread.pitchMm * (kRunOut + static_cast<double>(i) / kPiecesATurn);
        const auto index = static_cast<std::uint32_t>(lines.positions.size());
        lines.positions.push_back({radius * -std::sin(turn), radius * std::cos(turn), z});
        if (i > 0)
            lines.lines.push_back({index - 1, index});
    }
    return lines;
}

} // namespace gapwise
