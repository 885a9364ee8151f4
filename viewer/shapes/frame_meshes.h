#pragma once

#include "models/frame/frame.h"
#include "viewer/shapes/part_mesh.h"

#include <cstddef>
#include <functional>
#include <string>

namespace gapwise {

/// How the making of a frame's meshes is told.
struct MeshTelling {
    std::function<void(const std::string& line)> line{};
    std::function<void(const Error& error)> error{};
};

/// Makes the meshes of all part types of a frame in `order.folder`, `jobs` at a time, each in a process of
/// its own; a line a part type, then a line for the cartridge. What is made is put in place only when all
/// could be made. Exit status: 0 all are there, 2 a shape cannot be built, 3 a place cannot be written.
int makeFrameMeshes(const Frame& frame, MeshOrder order, std::size_t jobs, const MeshTelling& tell);

} // namespace gapwise
