#include "viewer/scene/read_meshes.h"

#include "geometry/meshfile/meshfile.h"

namespace gapwise {

Result<Meshes> readMeshes(const DataFolder& data, const Frame& frame) {
    Meshes meshes;
    Errors errors;
    for (const Part& part : frame.parts) {
        if (meshes.contains(part.type))
            continue;
        auto mesh = readMesh(data.meshFile(frame.id, part.type), frame.id.text);
        if (!mesh) {
            errors.insert(errors.end(), mesh.errors().begin(), mesh.errors().end());
            meshes[part.type] = nullptr; // Said once for all parts of the type.
            continue;
        }
        meshes[part.type] = std::make_shared<const DrawnMesh>(DrawnMesh{.body = std::move(mesh).value()});
    }
    if (!errors.empty())
        return errors;
    return meshes;
}

} // namespace gapwise
