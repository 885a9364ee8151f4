#include "geometry/mesh/mesh.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace gapwise {

double signedVolume(const TriangleMesh& mesh) {
    double sixfold = 0.0;
    for (const auto& [a, b, c] : mesh.triangles)
        sixfold += dot(mesh.positions[a], cross(mesh.positions[b], mesh.positions[c]));
    return sixfold / 6.0;
}

Bounds boundsOf(std::span<const Vec3> points) {
    assert(!points.empty());
    Bounds bounds{points.front(), points.front()};
    for (const Vec3& p : points) {
        bounds.low = {std::min(bounds.low.x, p.x), std::min(bounds.low.y, p.y), std::min(bounds.low.z, p.z)};
        bounds.high = {std::max(bounds.high.x, p.x), std::max(bounds.high.y, p.y),
                       std::max(bounds.high.z, p.z)};
    }
    return bounds;
}

TriangleMesh moved(TriangleMesh mesh, const Pose& pose) {
    for (Vec3& p : mesh.positions)
        p = pose.point(p);
    for (Vec3& n : mesh.normals)
        n = pose.direction(n);
    return mesh;
}

EdgeLines moved(EdgeLines edges, const Pose& pose) {
    for (Vec3& p : edges.positions)
        p = pose.point(p);
    return edges;
}

double sagitta(double radiusMm, int sides) {
    assert(radiusMm >= 0.0 && sides >= 2);
    return radiusMm * (1.0 - std::cos(std::numbers::pi / sides));
}

} // namespace gapwise
