#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <string_view>
#include <vector>

class TopoDS_Face;

namespace gapwise {

/// Cross-sections in the half plane (r along +Y, z along +Z) with their named corners rounded or chamfered.
/// An edge that names no corner, or that leaves no room for its size, is an error.
Result<std::vector<TopoDS_Face>> withBrokenEdges(std::vector<TopoDS_Face> sections,
                                                 const std::vector<EdgeBreak>& edges, std::string_view where);

} // namespace gapwise
