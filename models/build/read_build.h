#pragma once

#include "geometry/base/result.h"
#include "models/build/build.h"
#include "models/frame/frame.h"
#include "models/frame/read_frame.h"

#include <filesystem>
#include <string_view>

namespace gapwise {

/// A build sheet with the frame that it names.
struct BuildSheet {
    Frame frame{};
    Build build{};
};

/// Reads a build sheet and its frame; a path of a frame is relative to the sheet. `-` is standard input.
/// Everything that the frame lacks, every clock without a side and every attitude that contradicts itself is
/// an error.
Result<BuildSheet> readBuildSheet(const DataFolder& data, const std::filesystem::path& file);

/// From text; `file` names the place in errors and the folder that paths are relative to.
Result<BuildSheet> parseBuildSheet(const DataFolder& data, std::string_view text,
                                   const std::filesystem::path& file);

} // namespace gapwise
