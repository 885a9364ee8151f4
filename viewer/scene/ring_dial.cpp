#include "viewer/scene/ring_dial.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kCircleShare = 1.28; ///< Of the ring's radius.
constexpr double kHourShare = 1.48;
constexpr double kStrokeShare = 0.06;
constexpr Degrees kStep{3.0};

class Dial {
public:
    explicit Dial(const RingDialOf& wanted) : wanted_{wanted} {}

    Vec3 at(const Clock& clock, double share) const {
        return directionOf(clock) * (wanted_.ringRadiusMm * share) + Vec3{0.0, 0.0, wanted_.zMm};
    }

    std::vector<Vec3> arc(Degrees from, Degrees sweep, double share) const {
        const int steps = std::max(1, static_cast<int>(std::ceil(sweep.value / kStep.value)));
        std::vector<Vec3> line;
        line.reserve(static_cast<std::size_t>(steps) + 1);
        for (int i = 0; i <= steps; ++i)
            line.push_back(
                at(Clock::seenFrom(Side::Compressor, from + Degrees{sweep.value * i / steps}), share));
        return line;
    }

private:
    const RingDialOf& wanted_;
};

} // namespace

RingDial ringDialOf(const RingDialOf& wanted) {
    const Dial dial{wanted};
    RingDial made{.top = wanted.topWord};
    made.circle.push_back(dial.arc(Degrees{0.0}, Degrees{360.0}, kCircleShare));
    for (int hour = 1; hour <= 12; ++hour) {
        const Clock clock = wanted.top.turned(wanted.seenFrom, Degrees{30.0 * hour});
        const double inner = kCircleShare - (hour % 3 == 0 ? 2.0 : 1.0) * kStrokeShare;
        made.circle.push_back({dial.at(clock, inner), dial.at(clock, kCircleShare)});
        if (hour % 3 == 0)
            made.hours.push_back({hour, dial.at(clock, kHourShare)});
    }
    for (const Arc& window : wanted.windows)
        made.windows.push_back(dial.arc(window.start, window.sweep, kCircleShare));
    if (wanted.gap)
        made.gap = {dial.at(*wanted.gap, 1.0), dial.at(*wanted.gap, kCircleShare + kStrokeShare)};
    return made;
}

} // namespace gapwise
