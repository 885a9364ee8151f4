#pragma once

#include "geometry/mesh/mesh.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <map>
#include <set>
#include <utility>

namespace gapwise::test {

/// A point as whole steps of 1e-6 mm, so that points of neighbouring faces compare.
using Spot = std::array<std::int64_t, 3>;

inline Spot spotOf(const Vec3& p) {
    return {std::llround(p.x * 1e6), std::llround(p.y * 1e6), std::llround(p.z * 1e6)};
}

/// Triangle sides by their spots, each with how often it is walked this way.
inline std::map<std::pair<Spot, Spot>, int> sidesOf(const TriangleMesh& mesh) {
    std::map<std::pair<Spot, Spot>, int> sides;
    for (const auto& triangle : mesh.triangles) {
        for (std::size_t i = 0; i < 3; ++i)
            ++sides[{spotOf(mesh.positions[triangle[i]]), spotOf(mesh.positions[triangle[(i + 1) % 3]])}];
    }
    return sides;
}

/// Sides that are not walked as often the other way: 0 for a mesh that closes.
inline int openSides(const TriangleMesh& mesh) {
    const auto sides = sidesOf(mesh);
    int open = 0;
    for (const auto& [side, count] : sides) {
        const auto back = sides.find({side.second, side.first});
        open += back == sides.end() || back->second != count ? 1 : 0;
    }
    return open;
}

/// Lines that are not the side of a triangle.
inline int linesOffTheMesh(const PartMesh& mesh) {
    const auto sides = sidesOf(mesh.faces);
    int off = 0;
    for (const auto& [from, to] : mesh.edges.lines) {
        const Spot a = spotOf(mesh.edges.positions[from]);
        const Spot b = spotOf(mesh.edges.positions[to]);
        off += sides.contains({a, b}) || sides.contains({b, a}) ? 0 : 1;
    }
    return off;
}

/// Corners whose normal is not of unit length or looks away from its triangle's outer side.
inline int wrongNormals(const TriangleMesh& mesh) {
    int wrong = 0;
    for (const auto& [a, b, c] : mesh.triangles) {
        const Vec3 outward =
            cross(mesh.positions[b] - mesh.positions[a], mesh.positions[c] - mesh.positions[a]);
        for (const std::uint32_t corner : {a, b, c}) {
            const Vec3& normal = mesh.normals[corner];
            wrong += std::abs(length(normal) - 1.0) > 1e-9 || dot(normal, outward) <= 0.0 ? 1 : 0;
        }
    }
    return wrong;
}

} // namespace gapwise::test
