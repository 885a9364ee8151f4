#pragma once

#include "geometry/base/result.h"
#include "geometry/solids/solids.h"
#include "models/frame/frame.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace gapwise {

/// Where the meshes of a frame go.
struct MeshOrder {
    std::string frame{};             ///< As it was named on the command line.
    std::string frameFile{};         ///< For errors.
    std::filesystem::path folder{};  ///< One `<type>.glb` and `<type>.json` a part type.
    std::filesystem::path staging{}; ///< Beside it: what is made waits here until all of it is.
    double leastDeflectionMm = 0.03; ///< Of the frame: nothing is drawn finer.
    bool evenIfUpToDate = false;
};

struct MadeMesh {
    std::size_t triangles = 0;
    double massKg = 0.0;
    double seconds = 0.0; ///< Of processor time.
    bool wasUpToDate = false;
};

/// What shows in no picture of a whole cartridge of this frame, in mm: 1/4000 of the diameter of its housing.
double leastDeflectionOf(const Frame& frame);

/// How fine a part is drawn: 1/4000 of its largest diameter, but no finer than the frame demands, so that a
/// large frame takes no more triangles than a small one.
Fineness finenessOf(const Shape& shape, double leastDeflectionMm);

/// Everything that the mesh and its facts come from, as one key.
std::string contentKeyOf(const PartType& type, const Fineness& fineness);

std::filesystem::path glbOf(const PartType& type, const std::filesystem::path& folder);

/// Makes the mesh of one part type in the staging folder, unless the one that lies in the folder has the same
/// content key. `cannotWrite` tells a place that cannot be written from a shape that cannot be built.
Result<MadeMesh> makePartMesh(const PartType& type, const MeshOrder& order, bool& cannotWrite);

} // namespace gapwise
