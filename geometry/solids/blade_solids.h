#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <TopoDS_Shape.hxx>
#include <string_view>
#include <vector>

namespace gapwise {

/// Blades as solids of flat faces, at most 0.02 mm off their curves, and the body of revolution that holds
/// them all: what misses it misses every blade, whatever way the wheel is turned.
struct BladeSolids {
    std::vector<TopoDS_Shape> blades{};
    TopoDS_Shape hull{};
};

Result<BladeSolids> bladeSolids(const Blades& blades, std::string_view where);

} // namespace gapwise
