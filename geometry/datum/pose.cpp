#include "geometry/datum/pose.h"

#include <cassert>
#include <cmath>

namespace gapwise {

Vec3 directionOf(const Clock& clock) {
    const double angle = radians(clock.from(Side::Compressor));
    return {std::sin(angle), std::cos(angle), 0.0};
}

Clock clockOf(const Vec3& point) {
    assert(point.x != 0.0 || point.y != 0.0);
    return Clock::seenFrom(Side::Compressor, degreesFromRadians(std::atan2(point.x, point.y)));
}

Pose poseOf(const Seated& seated) {
    const Vec3 index = directionOf(seated.index);
    const Vec3 face{0.0, 0.0, signOf(seated.referenceFaceLooks)};
    return Pose{.xAxis = cross(index, face),
                .yAxis = index,
                .zAxis = face,
                .shift = seated.asideMm + Vec3{0.0, 0.0, seated.stationMm}};
}

Clock featureClock(const Clock& index, Side referenceFaceLooks, Degrees offset) {
    return index.turned(referenceFaceLooks, offset);
}

} // namespace gapwise
