#pragma once

#include "geometry/mesh/mesh.h"
#include "geometry/shape/shape.h"

#include <vector>

namespace gapwise {

/// Blades as a closed mesh each, sunk 1 mm into their hub, and the volume that stands free of it. The surface
/// of a blade is straight along the radius, so that it is laid out directly, without a solid: straight
/// rulings along the hub, each from the sunk root over the hub line to the tip, on either side.
struct BladeMesh {
    PartMesh mesh{};
    double freeVolumeMm3 = 0.0;
    Vec3 freeMoment{}; ///< Volume times centre of the free part, in mm⁴.
};

/// `deflectionMm`: how far the pieces between stations may stray from the curves. The sizes must be possible.
BladeMesh bladeMesh(const Blades& blades, double deflectionMm);

/// Each blade of the set as a closed mesh of its own.
std::vector<TriangleMesh> bladeSheets(const Blades& blades, double deflectionMm);

/// Adds `more` to `mesh`.
void append(PartMesh& mesh, const PartMesh& more);

} // namespace gapwise
