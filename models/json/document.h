#pragma once

#include "geometry/base/result.h"

#include <nlohmann/json_fwd.hpp>

#include <filesystem>
#include <string>
#include <string_view>

namespace gapwise {

/// The whole text of a file. A directory, an unreadable file, or more than `kLargestDocumentBytes` is an
/// error.
/// `-` is standard input.
Result<std::string> readText(const std::filesystem::path& file);

inline constexpr std::size_t kLargestDocumentBytes = 16U * 1024U * 1024U;
inline constexpr int kDeepestNesting = 64;

/// Strict JSON: no duplicate keys, no trailing text, no nesting deeper than kDeepestNesting. `file` names the
/// place in errors
/// (`file:line:column` for syntax, `file#/pointer` for a duplicate key).
Result<nlohmann::json> parseJson(std::string_view text, std::string_view file);

/// Everything in `document` that `schema` (JSON Schema draft 7) forbids, as `file#/pointer`, found, allowed;
/// every unknown key, leaf errors only, at most kMostErrors. Empty when it is valid.
Errors schemaErrors(const nlohmann::json& document, const nlohmann::json& schema, std::string_view file);

inline constexpr std::size_t kMostErrors = 200;

/// A short quotation of a value for an error message: `"left"`, `370`, `an object`.
std::string quoted(const nlohmann::json& value);

} // namespace gapwise
