#pragma once

#include "geometry/base/result.h"

#include <cstddef>
#include <map>
#include <string_view>
#include <vector>

class TopoDS_Shape;

namespace gapwise {

/// The solids that each feature cuts, by its number in the shape.
using Tools = std::map<std::size_t, std::vector<TopoDS_Shape>>;

double volumeOf(const TopoDS_Shape& shape);

/// Number of solids in a shape.
int solidsIn(const TopoDS_Shape& shape);

/// All of them as one shape. An error when the volume of the union leaves the bounds that the parts set, or
/// when the library warns.
Result<TopoDS_Shape> joined(const std::vector<TopoDS_Shape>& solids, std::string_view where);

/// `body` less all tools. An error when the volume leaves its bounds, when the library warns, or when a
/// feature with all its tools cuts nothing.
Result<TopoDS_Shape> cut(const TopoDS_Shape& body, const Tools& tools, std::string_view where);

} // namespace gapwise
