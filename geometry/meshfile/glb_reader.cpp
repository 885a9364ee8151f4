#include "geometry/meshfile/glb.h"

#include <assimp/Importer.hpp>
#include <assimp/mesh.h>
#include <assimp/scene.h>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kMmPerMetre = 1e3;

Vec3 vectorOf(const aiVector3D& v) {
    return {static_cast<double>(v.x), static_cast<double>(v.y), static_cast<double>(v.z)};
}

const aiMesh* meshOf(const aiScene& scene, unsigned primitive) {
    for (unsigned i = 0; i < scene.mNumMeshes; ++i) {
        if (scene.mMeshes[i]->mPrimitiveTypes == primitive)
            return scene.mMeshes[i];
    }
    return nullptr;
}

bool isFinite(const Vec3& v) {
    return std::isfinite(v.x) && std::isfinite(v.y) && std::isfinite(v.z);
}

/// False when a face has another number of corners or names a vertex that is not there.
template <std::size_t N>
bool copyIndices(const aiMesh& mesh, std::vector<std::array<std::uint32_t, N>>& out) {
    for (unsigned i = 0; i < mesh.mNumFaces; ++i) {
        const aiFace& face = mesh.mFaces[i];
        if (face.mNumIndices != N)
            return false;
        std::array<std::uint32_t, N> indices{};
        for (unsigned k = 0; k < N; ++k) {
            if (face.mIndices[k] >= mesh.mNumVertices)
                return false;
            indices[k] = face.mIndices[k];
        }
        out.push_back(indices);
    }
    return true;
}

bool copyPositions(const aiMesh& mesh, std::vector<Vec3>& out) {
    for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
        out.push_back(vectorOf(mesh.mVertices[i]) * kMmPerMetre);
        if (!isFinite(out.back()))
            return false;
    }
    return true;
}

bool copyNormals(const aiMesh& mesh, std::vector<Vec3>& out) {
    if (!mesh.HasNormals())
        return false;
    for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
        const Vec3 normal = vectorOf(mesh.mNormals[i]);
        if (!isFinite(normal) || length(normal) < 0.5)
            return false;
        out.push_back(normalized(normal));
    }
    return true;
}

} // namespace

Result<PartMesh> meshFromGlb(const std::string& bytes, std::string_view where) {
    Assimp::Importer importer;
    const aiScene* const scene = importer.ReadFileFromMemory(bytes.data(), bytes.size(), 0, "glb");
    if (scene == nullptr)
        return Error{std::string{where}, importer.GetErrorString(), "a binary glTF file"};
    const aiMesh* const faces = meshOf(*scene, aiPrimitiveType_TRIANGLE);
    const aiMesh* const edges = meshOf(*scene, aiPrimitiveType_LINE);
    PartMesh mesh;
    const bool sound = faces != nullptr && copyPositions(*faces, mesh.faces.positions) &&
                       copyNormals(*faces, mesh.faces.normals) && copyIndices(*faces, mesh.faces.triangles) &&
                       (edges == nullptr || (copyPositions(*edges, mesh.edges.positions) &&
                                             copyIndices(*edges, mesh.edges.lines)));
    if (!sound)
        return Error{std::string{where}, "a mesh without triangles, normals or edges of its own",
                     "triangles with normals, and lines"};
    return mesh;
}

} // namespace gapwise
