#pragma once

/// Mesh files: one `.glb` (glTF 2.0, metres, right-handed, +Y up: the datum axes as they are) for a part
/// type, and its facts in a `.json` beside it. The only place where metres become millimetres and back.

#include "geometry/base/result.h"
#include "geometry/base/write_file.h"
#include "geometry/mesh/mesh.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace gapwise {

/// What is known of a mesh beside its triangles.
struct MeshFacts {
    std::string contentKey{}; ///< Of everything that the mesh was made from: another key, another mesh.
    double sagittaMm = 0.0;   ///< No triangle strays further from the solid.
    double volumeMm3 = 0.0;   ///< Of the solid.
    double massKg = 0.0;      ///< From the volume and the density of the part type.
    Vec3 centreMm{};          ///< Centre of mass, in the part's own axes.
    Bounds bounds{};
    std::size_t triangles = 0;
};

/// `folder/type.json` for `folder/type.glb`.
std::filesystem::path factsFileOf(const std::filesystem::path& glb);

/// 64 hexadecimal digits: SHA-256 over the text that a mesh is made from.
std::string contentKeyOf(std::string_view canonicalText);

/// Writes `glb` and its facts: each beside its target, flushed, then renamed; the folder is made. Nodes
/// `faces` (triangles with normals) and, where there are any, `edges` (lines). Nothing is returned when both
/// are on disk; a mesh without its facts is refused when it is read.
std::optional<WriteFailure> writeMesh(const std::filesystem::path& glb, const PartMesh& mesh,
                                      const MeshFacts& facts);

/// Moves a mesh and its facts to another name in the same file system, over what is there.
std::optional<WriteFailure> moveMesh(const std::filesystem::path& from, const std::filesystem::path& to);

/// The facts beside `glb`, once the file there is the one that they were written with. `frame` is named in
/// errors: the command that makes the meshes is `gapwise-shapes FRAME`.
Result<MeshFacts> readMeshFacts(const std::filesystem::path& glb, std::string_view frame);

/// The mesh in millimetres. A missing, broken or foreign file, or one whose facts are missing, is an error
/// that names the command.
Result<PartMesh> readMesh(const std::filesystem::path& glb, std::string_view frame);

} // namespace gapwise
