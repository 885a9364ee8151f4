#include "viewer/workplace/standpoint.h"

#include <glm/gtc/quaternion.hpp>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kDistanceMm = 1000.0;
constexpr Degrees kSteepest{85.0};
/// A person at the bench does not hang over the piece: so far off the axis he looks onto an upright and a
/// level one.
constexpr Degrees kUprightTilt{32.0};
constexpr Degrees kLevelTilt{24.0};
constexpr Degrees kBesideElevation{10.0};
/// Where the parts are pulled apart, he steps so far out of the line of the shaft that none hides the next.
constexpr Degrees kPulledApartAzimuth{20.0};
constexpr Degrees kPulledApartElevation{18.0};

/// The bench as the person stands before it, in the datum axes: right, up, toward him. A level piece lies
/// square to him, the turbine on his left.
Pose benchOf(const Attitude& attitude, const Observer& observer) {
    const View view = viewOf(attitude, observer);
    if (attitude.up == EndUp::Level) {
        const Vec3 up = directionOf(clockSeenIn(view, Degrees{0.0}));
        const Vec3 right{0.0, 0.0, 1.0};
        return {.xAxis = right, .yAxis = up, .zAxis = cross(right, up)};
    }
    return {.xAxis = directionOf(clockSeenIn(view, Degrees{90.0})),
            .yAxis = Vec3{0.0, 0.0, signOf(view.side)},
            .zAxis = directionOf(clockSeenIn(view, Degrees{180.0}))};
}

/// The bench of an upright piece that is laid on its side for the picture: what faced the person still does.
Pose laidBenchOf(const Attitude& attitude, const Observer& observer) {
    const Vec3 toward = benchOf(attitude, observer).zAxis;
    const Vec3 right{0.0, 0.0, 1.0};
    return {.xAxis = right, .yAxis = cross(toward, right), .zAxis = toward};
}

Camera toward(const Vec3& eyeDirection, const Vec3& up) {
    return Camera{eyeDirection * kDistanceMm, Vec3{}, up};
}

Camera levelled(Side side) {
    return toward(Vec3{0.0, 0.0, signOf(side)}, Vec3{0.0, 1.0, 0.0});
}

Camera ontoTheEnd(const Pose& bench, const Attitude& attitude, const Observer& observer) {
    const Vec3 axis{0.0, 0.0, signOf(viewOf(attitude, observer).side)};
    const bool level = attitude.up == EndUp::Level;
    const double tilt = radians(level ? kLevelTilt : kUprightTilt);
    const Vec3 lean = level ? bench.yAxis : bench.zAxis;
    return toward(axis * std::cos(tilt) + lean * std::sin(tilt), level ? bench.yAxis : bench.zAxis * -1.0);
}

Camera free(const Pose& bench, Degrees azimuth, Degrees elevation) {
    const double a = radians(azimuth);
    const double e = radians(std::clamp(elevation, -kSteepest, kSteepest));
    const Vec3 level = bench.zAxis * std::cos(a) + bench.xAxis * std::sin(a);
    return toward(level * std::cos(e) + bench.yAxis * std::sin(e), bench.yAxis);
}

Camera cameraOn(const Pose& bench, const Standpoint& standpoint, const Attitude& attitude) {
    switch (standpoint.kind) {
    case LookKind::Free: return free(bench, standpoint.freeAzimuth, standpoint.freeElevation);
    case LookKind::Beside: return free(bench, Degrees{0.0}, kBesideElevation);
    default: break;
    }
    if (standpoint.pulledApart <= 0.0)
        return ontoTheEnd(bench, attitude, standpoint.observer);
    const double side = signOf(viewOf(attitude, standpoint.observer).side);
    return free(bench, Degrees{kPulledApartAzimuth.value * side}, kPulledApartElevation);
}

glm::dmat3 matrixOf(const Vec3& x, const Vec3& y, const Vec3& z) {
    return {{x.x, x.y, x.z}, {y.x, y.y, y.z}, {z.x, z.y, z.z}};
}

Vec3 column(const glm::dmat3& matrix, int index) {
    const glm::dvec3& c = matrix[index];
    return {c.x, c.y, c.z};
}

} // namespace

bool laidOnItsSide(const Standpoint& standpoint, const Attitude& attitude) {
    const bool levelled =
        standpoint.kind == LookKind::FromCompressor || standpoint.kind == LookKind::FromTurbine;
    return attitude.up != EndUp::Level && standpoint.pulledApart > 0.0 && !levelled;
}

Stance stanceOf(const Standpoint& standpoint, const Attitude& attitude) {
    if (standpoint.kind == LookKind::FromCompressor)
        return {.camera = levelled(Side::Compressor)};
    if (standpoint.kind == LookKind::FromTurbine)
        return {.camera = levelled(Side::Turbine)};
    if (laidOnItsSide(standpoint, attitude)) {
        const Pose bench = laidBenchOf(attitude, standpoint.observer);
        return {.camera = cameraOn(bench, standpoint, attitude), .bench = bench, .onBench = true};
    }
    // The bench stays where it is when the person walks round it.
    return {.camera = cameraOn(benchOf(attitude, standpoint.observer), standpoint, attitude),
            .bench = benchOf(attitude, Observer{.levelSide = standpoint.observer.levelSide}),
            .onBench = true};
}

Camera pictureCameraOf(const Standpoint& standpoint, const Attitude& attitude) {
    return stanceOf(standpoint, attitude).camera;
}

Standpoint freed(const Standpoint& standpoint, const Attitude& attitude) {
    if (standpoint.kind == LookKind::Free)
        return standpoint;
    const Vec3 eye = stanceOf(standpoint, attitude).camera.forward() * -1.0;
    Standpoint next = standpoint;
    next.kind = LookKind::Free;
    const Pose bench = laidOnItsSide(next, attitude) ? laidBenchOf(attitude, next.observer)
                                                     : benchOf(attitude, next.observer);
    next.freeAzimuth = degreesFromRadians(std::atan2(dot(eye, bench.xAxis), dot(eye, bench.zAxis)));
    next.freeElevation = degreesFromRadians(std::asin(std::clamp(dot(eye, bench.yAxis), -1.0, 1.0)));
    return next;
}

Stance between(const Stance& from, const Stance& to, double share) {
    const auto benchOf = [](const Stance& s) {
        return glm::quat_cast(matrixOf(s.bench.xAxis, s.bench.yAxis, s.bench.zAxis));
    };
    const auto eyeOf = [](const Stance& s) {
        return glm::quat_cast(matrixOf(s.camera.right(), s.camera.up(), s.camera.forward() * -1.0));
    };
    const glm::dquat benchFrom = benchOf(from);
    const glm::dquat benchTo = benchOf(to);
    const glm::dquat bench = glm::slerp(benchFrom, benchTo, share);
    const glm::dquat eyeOnBench =
        glm::slerp(glm::conjugate(benchFrom) * eyeOf(from), glm::conjugate(benchTo) * eyeOf(to), share);
    const glm::dmat3 axes = glm::mat3_cast(bench);
    const glm::dmat3 eye = glm::mat3_cast(bench * eyeOnBench);
    return {.camera = toward(column(eye, 2), column(eye, 1)),
            .bench = {.xAxis = column(axes, 0), .yAxis = column(axes, 1), .zAxis = column(axes, 2)},
            .onBench = from.onBench && to.onBench};
}

std::optional<View> pictureViewOf(const Standpoint& standpoint, const Attitude& attitude) {
    if (standpoint.kind == LookKind::BothEnds)
        return std::nullopt;
    return pictureCameraOf(standpoint, attitude).view();
}

} // namespace gapwise
