#pragma once

/// Solids from numbers. A `Shape` becomes a checked solid, and that the mesh a part is drawn with: triangles
/// whose normals are those of the solid's own faces, and its true edges as lines.
///
/// A boolean operation that loses something in silence does not pass: every one is checked by bounds on its
/// volume and by its warnings, and the whole against a volume counted straight from the numbers. Blades are
/// sunk into their hub, not fused with it.

#include "geometry/base/result.h"
#include "geometry/datum/angle.h"
#include "geometry/datum/vector.h"
#include "geometry/mesh/mesh.h"
#include "geometry/shape/shape.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace gapwise {

/// How far the triangles may stray from the solid.
struct Fineness {
    double deflectionMm = 0.02;       ///< Largest distance between an edge and its pieces.
    Degrees angle{28.64788975654116}; ///< Largest turn from one piece of an edge to the next: 0.5 rad.
};

struct SolidFacts {
    double volumeMm3 = 0.0; ///< Of the solid itself, not of its triangles; blades counted from the hub on.
    Vec3 centreMm{};        ///< Centre of mass, in the part's own axes.
    Bounds bounds{};        ///< Of the mesh, in the part's own axes.
    double sagittaMm = 0.0; ///< No triangle strays further from the solid: twice the deflection, for faces
                            ///< that bend both ways.
    std::size_t triangles = 0;
};

struct SolidPart {
    PartMesh mesh{};
    SolidFacts facts{};
};

/// Builds the solid of a shape and its mesh. `where` names the shape in errors. Sizes that no part can have,
/// a cut that cuts nothing, an addition that touches nothing and a body that falls apart are errors.
Result<SolidPart> buildSolid(const Shape& shape, const Fineness& fineness, std::string_view where);

/// What makes another mesh of the same shape: the version of this builder and of the library beneath it.
std::string solidsVersion();

} // namespace gapwise
