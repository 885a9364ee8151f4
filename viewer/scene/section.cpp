#include "viewer/scene/section.h"

#include "geometry/datum/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

constexpr Degrees kHalfOfAQuarter{45.0};

CuttingPlane planeThroughShaft(const Clock& removed, const Pose& pose) {
    const Vec3 normal = directionOf(removed);
    return {.normal = {dot(pose.xAxis, normal), dot(pose.yAxis, normal), dot(pose.zAxis, normal)},
            .offsetMm = -dot(pose.shift, normal)};
}

Clock fromCompressor(double degrees) {
    return Clock::seenFrom(Side::Compressor, Degrees{degrees});
}

} // namespace

Section openedToward(const Vec3& toEye, Section::Kind kind) {
    constexpr double kAlongTheShaft = 0.02;
    constexpr double kAlongThePorts = 0.5; // Less than 30 degrees off their plane.
    constexpr double kUsuallyUp = 0.02;    // Between an upper and a lower quarter.
    if (std::abs(toEye.x) < kAlongTheShaft && std::abs(toEye.y) < kAlongTheShaft)
        return {.kind = kind, .removed = fromCompressor(kind == Section::Kind::Half ? 90.0 : 45.0)};
    const bool right = toEye.x > -kAlongTheShaft;
    const bool up = toEye.y > -kUsuallyUp;
    if (kind == Section::Kind::Half && std::abs(toEye.x) < kAlongThePorts * std::hypot(toEye.x, toEye.y))
        return {.kind = kind, .removed = fromCompressor(up ? 0.0 : 180.0)};
    if (kind == Section::Kind::Half)
        return {.kind = kind, .removed = fromCompressor(right ? 90.0 : 270.0)};
    return {.kind = kind, .removed = fromCompressor(right ? (up ? 45.0 : 135.0) : (up ? 315.0 : 225.0))};
}

TakenAway inPartAxes(const Section& section, const Pose& pose) {
    if (section.kind == Section::Kind::Half)
        return {.first = planeThroughShaft(section.removed, pose)};
    // The wedge between a - 45 and a + 45 lies beyond the two planes whose normals are its ends.
    return {.first = planeThroughShaft(section.removed.turned(Side::Compressor, -kHalfOfAQuarter), pose),
            .second = planeThroughShaft(section.removed.turned(Side::Compressor, kHalfOfAQuarter), pose)};
}

std::string wordsOf(const Section& section, Side seenFrom) {
    const Degrees middle = section.removed.from(seenFrom);
    if (section.kind == Section::Kind::Half)
        return fmt::format("the half at {}", clockSeenFrom(middle, seenFrom));
    return fmt::format("the quarter from {} to {}", hoursAndMinutes(wrapped(middle - kHalfOfAQuarter)),
                       clockSeenFrom(wrapped(middle + kHalfOfAQuarter), seenFrom));
}

} // namespace gapwise
