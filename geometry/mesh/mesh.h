#pragma once

#include "geometry/datum/pose.h"
#include "geometry/datum/vector.h"

#include <array>
#include <cstdint>
#include <span>
#include <vector>

namespace gapwise {

/// Triangles in millimetres, counter-clockwise seen from outside, one normal a vertex.
struct TriangleMesh {
    std::vector<Vec3> positions{};
    std::vector<Vec3> normals{}; ///< As many as positions; unit length.
    std::vector<std::array<std::uint32_t, 3>> triangles{};
};

/// True edges of a solid as line pieces, in millimetres.
struct EdgeLines {
    std::vector<Vec3> positions{};
    std::vector<std::array<std::uint32_t, 2>> lines{};
};

/// What a part is drawn with.
struct PartMesh {
    TriangleMesh faces{};
    EdgeLines edges{};
};

struct Bounds {
    Vec3 low{};
    Vec3 high{};
};

/// Volume of a closed mesh by the divergence sum, in mm³; negative when its triangles wind the wrong way.
double signedVolume(const TriangleMesh& mesh);

/// The smallest box around the points; `points` must not be empty.
Bounds boundsOf(std::span<const Vec3> points);

TriangleMesh moved(TriangleMesh mesh, const Pose& pose);
EdgeLines moved(EdgeLines edges, const Pose& pose);

/// Distance between a circle of radius r and its chord polygon of n sides: r(1 - cos(π/n)).
double sagitta(double radiusMm, int sides);

} // namespace gapwise
