#include "viewer/scene/visible.h"

#include <array>

namespace gapwise {

namespace {

struct Ray {
    Vec3 from{};
    Vec3 direction{}; ///< Unit length.
};

/// Möller and Trumbore: whether the ray meets the triangle farther than `nearest` from its start.
bool meets(const Ray& ray, const std::array<Vec3, 3>& triangle, double nearest) {
    const Vec3& a = triangle[0];
    const Vec3 ab = triangle[1] - a;
    const Vec3 ac = triangle[2] - a;
    const Vec3 p = cross(ray.direction, ac);
    const double determinant = dot(ab, p);
    if (determinant == 0.0)
        return false;
    const Vec3 fromA = ray.from - a;
    const double u = dot(fromA, p) / determinant;
    const Vec3 q = cross(fromA, ab);
    const double v = dot(ray.direction, q) / determinant;
    return u >= 0.0 && v >= 0.0 && u + v <= 1.0 && dot(ac, q) / determinant > nearest;
}

bool meets(const Ray& ray, const TriangleMesh& mesh, double nearest) {
    for (const auto& [a, b, c] : mesh.triangles)
        if (meets(ray, {mesh.positions[a], mesh.positions[b], mesh.positions[c]}, nearest))
            return true;
    return false;
}

/// The same vector in the axes of a part.
Vec3 inPartAxes(const Pose& pose, const Vec3& v) {
    return {dot(pose.xAxis, v), dot(pose.yAxis, v), dot(pose.zAxis, v)};
}

} // namespace

bool isHidden(const Scene& scene, const SceneCamera& camera, const Vec3& point) {
    constexpr double kOnFaceMm = 0.05; // Triangles stray so far from the face that the point lies on.
    const Vec3 toEye = camera.projection == Projection::Parallel ? camera.camera.forward() * -1.0
                                                                 : normalized(camera.camera.eye() - point);
    for (const SceneItem& item : scene.items) {
        const Pose drawn = item.drawnPose();
        const Ray ray{inPartAxes(drawn, point - drawn.shift), inPartAxes(drawn, toEye)};
        if (meets(ray, item.mesh->body.faces, kOnFaceMm) || meets(ray, item.mesh->caps, kOnFaceMm))
            return true;
    }
    return false;
}

} // namespace gapwise
