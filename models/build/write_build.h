#pragma once

#include "geometry/base/result.h"
#include "models/build/build.h"
#include "models/frame/frame.h"

#include <filesystem>
#include <string>

namespace gapwise {

/// The build as a build sheet, with line breaks; what is not known is left out. Reading it gives the same
/// build.
std::string toBuildSheet(const Build& build, const Frame& frame);

/// Writes the build sheet beside the target, flushes it and renames it: whole or not at all. Empty when it is
/// on disk.
Errors writeBuildSheet(const Build& build, const Frame& frame, const std::filesystem::path& file);

} // namespace gapwise
