#pragma once

#include "geometry/base/result.h"
#include "geometry/mesh/mesh.h"
#include "geometry/solids/solids.h"

#include <string_view>

class TopoDS_Shape;

namespace gapwise {

/// Triangles with the normals of the faces, and the true edges: seams, degenerated edges and edges over which
/// the surface runs on smoothly are left out. Vertices are shared within a face only. An error when a face
/// gets no triangles or the mesh does not hold the solid's volume.
Result<PartMesh> tessellated(const TopoDS_Shape& solid, const Fineness& fineness, std::string_view where);

} // namespace gapwise
