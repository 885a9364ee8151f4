#include "viewer/workplace/standpoint.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kDistanceMm = 1000.0;
constexpr Degrees kSteepest{85.0};
/// A person at the bench does not hang over the piece: so far off the axis he looks onto an upright and a
/// level one.
constexpr Degrees kUprightTilt{35.0};
constexpr Degrees kLevelTilt{20.0};

/// The bench as the person stands before it, in the datum axes. Right-handed: right × up = toward.
struct Bench {
    Vec3 right{};
    Vec3 up{};
    Vec3 toward{}; ///< Toward the person; for a level piece square to the shaft, the turbine on his left.
};

Bench benchOf(const Attitude& attitude, const Observer& observer) {
    const View view = viewOf(attitude, observer);
    if (attitude.up == EndUp::Level) {
        const Vec3 up = directionOf(clockSeenIn(view, Degrees{0.0}));
        const Vec3 right{0.0, 0.0, 1.0};
        return {right, up, cross(right, up)};
    }
    return {directionOf(clockSeenIn(view, Degrees{90.0})), Vec3{0.0, 0.0, signOf(view.side)},
            directionOf(clockSeenIn(view, Degrees{180.0}))};
}

Camera toward(const Vec3& eyeDirection, const Vec3& up) {
    return Camera{eyeDirection * kDistanceMm, Vec3{}, up};
}

Camera levelled(Side side) {
    return toward(Vec3{0.0, 0.0, signOf(side)}, Vec3{0.0, 1.0, 0.0});
}

Camera fromTheBench(const Attitude& attitude, const Observer& observer) {
    const Bench bench = benchOf(attitude, observer);
    const Vec3 axis{0.0, 0.0, signOf(viewOf(attitude, observer).side)};
    const bool level = attitude.up == EndUp::Level;
    const double tilt = radians(level ? kLevelTilt : kUprightTilt);
    const Vec3 lean = level ? bench.up : bench.toward;
    return toward(axis * std::cos(tilt) + lean * std::sin(tilt), level ? bench.up : bench.toward * -1.0);
}

Camera free(const Bench& bench, Degrees azimuth, Degrees elevation) {
    const double a = radians(azimuth);
    const double e = radians(std::clamp(elevation, -kSteepest, kSteepest));
    const Vec3 level = bench.toward * std::cos(a) + bench.right * std::sin(a);
    return toward(level * std::cos(e) + bench.up * std::sin(e), bench.up);
}

} // namespace

Camera pictureCameraOf(const Standpoint& standpoint, const Attitude& attitude) {
    switch (standpoint.kind) {
    case LookKind::FromCompressor: return levelled(Side::Compressor);
    case LookKind::FromTurbine: return levelled(Side::Turbine);
    case LookKind::WhereIStand: return fromTheBench(attitude, standpoint.observer);
    case LookKind::Free:
        return free(benchOf(attitude, standpoint.observer), standpoint.freeAzimuth, standpoint.freeElevation);
    case LookKind::Beside:
    case LookKind::BothEnds: break;
    }
    return free(benchOf(attitude, standpoint.observer), Degrees{0.0}, Degrees{0.0});
}

std::optional<View> pictureViewOf(const Standpoint& standpoint, const Attitude& attitude) {
    if (standpoint.kind == LookKind::BothEnds)
        return std::nullopt;
    return pictureCameraOf(standpoint, attitude).view();
}

} // namespace gapwise
