#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <string_view>
#include <vector>

class TopoDS_Shape;

namespace gapwise {

/// Blades as solids of flat faces, at most 0.02 mm off their curves.
Result<std::vector<TopoDS_Shape>> bladeSolids(const Blades& blades, std::string_view where);

/// The body of revolution that holds a set of blades: what misses it misses every blade, whatever way the
/// wheel is turned.
TopoDS_Shape bladeHull(const Blades& blades);

} // namespace gapwise
