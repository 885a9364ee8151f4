#include "viewer/scene/pick.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace gapwise {

namespace {

/// Distance along the ray to a triangle (Möller and Trumbore 1997), or infinity.
double distanceTo(const Ray& ray, const Vec3& a, const Vec3& b, const Vec3& c) {
    constexpr double kMissed = std::numeric_limits<double>::infinity();
    constexpr double kParallel = 1e-12;
    const Vec3 ab = b - a;
    const Vec3 ac = c - a;
    const Vec3 p = cross(ray.direction, ac);
    const double determinant = dot(ab, p);
    if (std::abs(determinant) < kParallel)
        return kMissed;
    const Vec3 fromA = ray.from - a;
    const double u = dot(fromA, p) / determinant;
    if (u < 0.0 || u > 1.0)
        return kMissed;
    const Vec3 q = cross(fromA, ab);
    const double v = dot(ray.direction, q) / determinant;
    if (v < 0.0 || u + v > 1.0)
        return kMissed;
    const double distance = dot(ac, q) / determinant;
    return distance > 0.0 ? distance : kMissed;
}

/// The ray in the axes of a posed part: the pose is a rigid motion, so its inverse rotation is its transpose.
Ray inPartAxes(const Ray& ray, const Pose& pose) {
    const auto turnedBack = [&](const Vec3& v) {
        return Vec3{dot(v, pose.xAxis), dot(v, pose.yAxis), dot(v, pose.zAxis)};
    };
    return {turnedBack(ray.from - pose.shift), turnedBack(ray.direction)};
}

double nearestIn(const TriangleMesh& mesh, const Ray& ray) {
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& [a, b, c] : mesh.triangles)
        nearest = std::min(nearest, distanceTo(ray, mesh.positions[a], mesh.positions[b], mesh.positions[c]));
    return nearest;
}

} // namespace

Ray rayThrough(const SceneCamera& lens, const PictureSize& size, double x, double y) {
    const double mmPerPixel = lens.heightMm / size.height;
    const Vec3 aside = lens.camera.right() * ((x - size.width / 2.0) * mmPerPixel) +
                       lens.camera.up() * ((size.height / 2.0 - y) * mmPerPixel);
    if (lens.projection == Projection::Parallel)
        return {lens.camera.eye() + aside, lens.camera.forward()};
    return {lens.camera.eye(), normalized(lens.camera.target() + aside - lens.camera.eye())};
}

std::optional<Picked> pick(const Scene& scene, const Ray& ray) {
    std::optional<Picked> picked;
    for (std::size_t i = 0; i < scene.items.size(); ++i) {
        const SceneItem& item = scene.items[i];
        if (!item.mesh)
            continue;
        const Ray own = inPartAxes(ray, item.drawnPose());
        const double distance =
            std::min(nearestIn(item.mesh->body.faces, own), nearestIn(item.mesh->caps, own));
        if (std::isfinite(distance) && (!picked || distance < picked->distanceMm))
            picked = Picked{i, distance, ray.from + ray.direction * distance};
    }
    return picked;
}

std::optional<Vec3> meets(const Ray& ray, double zMm) {
    constexpr Degrees kAlongPlane{3.0};
    if (std::abs(ray.direction.z) < std::sin(radians(kAlongPlane)))
        return std::nullopt;
    return ray.from + ray.direction * ((zMm - ray.from.z) / ray.direction.z);
}

std::optional<Clock> clockUnder(const Ray& ray, double zMm) {
    constexpr double kOnAxisMm = 1e-9;
    const std::optional<Vec3> met = meets(ray, zMm);
    if (!met || std::hypot(met->x, met->y) < kOnAxisMm)
        return std::nullopt;
    return clockOf(*met);
}

} // namespace gapwise
