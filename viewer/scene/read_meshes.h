#pragma once

#include "models/frame/read_frame.h"
#include "viewer/scene/scene_of.h"

namespace gapwise {

/// The meshes of every part type that a part of the frame has. A missing or broken one is an error that names
/// the command that makes it; all of them at once.
Result<Meshes> readMeshes(const DataFolder& data, const Frame& frame);

} // namespace gapwise
