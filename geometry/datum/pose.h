#pragma once

#include "geometry/datum/clock.h"
#include "geometry/datum/vector.h"

namespace gapwise {

/// Unit vector of a clock in the datum axes: (sin θ, cos θ, 0).
Vec3 directionOf(const Clock& clock);

/// The clock of a point or direction off the axis; its Z is ignored. The point must not lie on the axis.
Clock clockOf(const Vec3& point);

/// How a part sits: where its index points, which way its reference face looks, where its origin lies along
/// the shaft.
struct Seated {
    Clock index = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    Side referenceFaceLooks = Side::Compressor;
    double stationMm = 0.0; ///< Z of the part's origin, in mm.
    Vec3 asideMm{};         ///< Where its axis stands off the shaft, square to it; zero for most parts.
};

/// A rigid motion: columns of the rotation and a shift in mm. The determinant is always +1.
struct Pose {
    Vec3 xAxis{1.0, 0.0, 0.0};
    Vec3 yAxis{0.0, 1.0, 0.0};
    Vec3 zAxis{0.0, 0.0, 1.0};
    Vec3 shift{};

    Vec3 point(const Vec3& p) const { return direction(p) + shift; }
    Vec3 direction(const Vec3& d) const { return xAxis * d.x + yAxis * d.y + zAxis * d.z; }
};

/// From a part's own axes (axis on Z, index at +Y, reference face toward +Z, origin in its seat plane) to the
/// datum axes. A part whose reference face looks to the turbine is turned about its own Y, so that its index
/// stays where it is.
Pose poseOf(const Seated& seated);

/// Clock of a feature that lies `offset` from the index, clockwise looking at the reference face:
/// θ + a when that face looks to the compressor, θ - a when it looks to the turbine.
Clock featureClock(const Clock& index, Side referenceFaceLooks, Degrees offset);

} // namespace gapwise
