#pragma once

#include "geometry/shape/shape.h"

#include <cstddef>
#include <vector>

class TopoDS_Shape;

namespace gapwise {

/// What a feature adds or cuts, as solids in the part's own axes: one for each of its instances (a stepped
/// joint: three). The feature's sizes must be possible.
std::vector<TopoDS_Shape> toolsOf(const Shape& shape, std::size_t feature);

} // namespace gapwise
