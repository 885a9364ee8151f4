#pragma once

#include "geometry/mesh/mesh.h"

#include <vector>

namespace gapwise {

/// A closed line in a plane; its last point joins its first.
using Loop = std::vector<Vec3>;

/// A flat face over loops in one plane, and its border.
struct Cap {
    TriangleMesh face{};
    EdgeLines outline{};
};

/// Covers what the loops enclose: counter-clockwise loops (looking against `normal`) hold material, clockwise
/// ones are holes, overlapping material counts once.
Cap capOver(const std::vector<Loop>& loops, const Vec3& normal);

} // namespace gapwise
