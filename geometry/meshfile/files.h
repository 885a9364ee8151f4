#pragma once

#include "geometry/base/result.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace gapwise {

/// 64 hexadecimal digits.
std::string sha256(std::string_view bytes);

/// The whole file. Refuses what is not a regular file and what is larger than `mostBytes`.
Result<std::string> fileContents(const std::filesystem::path& file, std::uintmax_t mostBytes);

} // namespace gapwise
