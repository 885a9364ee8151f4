#pragma once

#include "geometry/datum/vector.h"

#include <cstdint>
#include <span>
#include <vector>

namespace gapwise {

/// Corners of a mesh that lie within this distance are one point, though their normals differ.
inline constexpr double kWeldMm = 1e-4;

/// For each corner the number of the point it belongs to: equal numbers for corners at one place.
std::vector<std::uint32_t> weldedCorners(std::span<const Vec3> positions);

} // namespace gapwise
