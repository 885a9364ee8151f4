#include "viewer/workplace/standpoint.h"

#include <cmath>

namespace gapwise {

namespace {

constexpr double kDistanceMm = 1000.0;
/// A person at the bench does not hang over the piece: so far off the axis he looks onto an upright and a
/// level one.
constexpr Degrees kUprightTilt{35.0};
constexpr Degrees kLevelTilt{20.0};

/// Along the axis at the end of `view`, the eye lowered by `tilt` toward the picture's `leanTo` (1 = its
/// lower edge, -1 = upper).
Camera endOn(const View& view, Degrees tilt = Degrees{0.0}, double leanTo = 1.0) {
    const Vec3 axis{0.0, 0.0, signOf(view.side)};
    const Vec3 up = directionOf(clockSeenIn(view, Degrees{0.0}));
    const Vec3 eye = axis * std::cos(radians(tilt)) - up * (leanTo * std::sin(radians(tilt)));
    return Camera{eye * kDistanceMm, Vec3{}, up};
}

Camera fromTheBench(const Attitude& attitude, const Observer& observer) {
    const View view = viewOf(attitude, observer);
    if (attitude.up == EndUp::Level)
        return endOn(view, kLevelTilt, -1.0);
    return endOn(view, kUprightTilt, 1.0);
}

/// Square to the shaft, the turbine on the left, the inlet on top.
Camera fromAzimuth(Degrees azimuth, Degrees elevation) {
    const double a = radians(azimuth);
    const double e = radians(elevation);
    // Seen from -X, the compressor (+Z) lies on the right: forward +X, up +Y, right = forward x up = +Z.
    const Vec3 eye{-std::cos(a) * std::cos(e), std::sin(e), std::sin(a) * std::cos(e)};
    return Camera{eye * kDistanceMm, Vec3{}, Vec3{0.0, 1.0, 0.0}};
}

} // namespace

Camera pictureCameraOf(const Standpoint& standpoint, const Attitude& attitude) {
    switch (standpoint.kind) {
    case LookKind::FromCompressor: return endOn(inletOnTop(Side::Compressor));
    case LookKind::FromTurbine: return endOn(inletOnTop(Side::Turbine));
    case LookKind::WhereIStand: return fromTheBench(attitude, standpoint.observer);
    case LookKind::Free: return fromAzimuth(standpoint.freeAzimuth, standpoint.freeElevation);
    case LookKind::Beside:
    case LookKind::BothEnds: break;
    }
    return fromAzimuth(Degrees{0.0}, Degrees{0.0});
}

std::optional<View> pictureViewOf(const Standpoint& standpoint, const Attitude& attitude) {
    if (standpoint.kind == LookKind::BothEnds)
        return std::nullopt;
    return pictureCameraOf(standpoint, attitude).view();
}

} // namespace gapwise
