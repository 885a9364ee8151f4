#pragma once

#include "geometry/base/result.h"

#include <filesystem>
#include <optional>
#include <string_view>

namespace gapwise {

/// Why a file could not be written.
struct WriteFailure {
    Error error{};
    bool diskFull = false; ///< The place is right, but there is no room now.
};

/// Writes the bytes beside the target, flushes them to disk and renames: the file is whole, or as it was.
/// Nothing is returned when it is on disk. `file` must name a file in a folder that exists.
std::optional<WriteFailure> writeFile(const std::filesystem::path& file, std::string_view bytes);

} // namespace gapwise
