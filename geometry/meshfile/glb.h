#pragma once

#include "geometry/base/result.h"
#include "geometry/mesh/mesh.h"

#include <string>
#include <string_view>

namespace gapwise {

/// The bytes of a binary glTF file, in metres. The mesh must have triangles, and a normal at each vertex.
std::string glbOf(const PartMesh& mesh);

/// Reads bytes that `glbOf` made, in millimetres. For bytes that are known to be sound: the reader beneath
/// trusts them.
Result<PartMesh> meshFromGlb(const std::string& bytes, std::string_view where);

} // namespace gapwise
