#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <string_view>
#include <vector>

class TopoDS_Shape;

namespace gapwise {

/// The body of the rings: the round ones joined in the (r, z) half plane, their named edges broken, then
/// revolved; the hexagonal ones as prisms. One solid a list entry, touching or not; they are joined with the
/// additions. The shape's sizes must be possible.
Result<std::vector<TopoDS_Shape>> ringSolids(const Shape& shape, std::string_view where);

} // namespace gapwise
