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
    std::filesystem::path frameFile{}; ///< Where the frame was read from.
    Build build{};
};

/// Reads a build sheet and its frame; a path of a frame is relative to the sheet. `-` is standard input.
/// Everything that the frame lacks, every clock without a side and every attitude that contradicts itself is
/// an error. All errors at once, but each stage (syntax, schema, the frame, what the frame says of the sheet)
/// only when the one before found none.
Result<BuildSheet> readBuildSheet(const DataFolder& data, const std::filesystem::path& file);

/// From text; `file` names the place in errors and the folder that paths are relative to.
Result<BuildSheet> parseBuildSheet(const DataFolder& data, std::string_view text,
                                   const std::filesystem::path& file);

/// What a frame says against a build of it: ids that it lacks, two parts in one seat, one part in two seats,
/// a part that can never sit there, a step done twice. `where` of each error is `file#/pointer`.
Errors buildErrors(const Frame& frame, const Build& build, std::string_view file);

} // namespace gapwise
