#pragma once

#include "geometry/base/result.h"

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

namespace gapwise {

/// Limits of every JSON document that is read. They lie far above what any frame or build needs and keep a
/// hostile file from taking the memory or the stack.
inline constexpr std::size_t kLargestDocumentBytes = std::size_t{16} * 1024 * 1024;
inline constexpr std::size_t kDeepestNesting = 64; ///< Objects and arrays inside each other.
inline constexpr std::size_t kLongestText = 2048;  ///< Bytes of one text or one key.
inline constexpr std::size_t kMostErrors = 200;    ///< Later ones are left out.

/// The whole text of a file. A directory, an unreadable file, or more than `kLargestDocumentBytes` is an
/// error; never more than that is read. `-` is standard input.
Result<std::string> readText(const std::filesystem::path& file);

/// Strict JSON (RFC 8259) in UTF-8: no duplicate keys, no trailing text, no numbers that a double cannot
/// hold, nothing beyond the limits above. A byte order mark of UTF-8 is passed over. `file` names the place
/// in errors (`file:line:column` for syntax, `file#/pointer` for the rest).
Result<nlohmann::json> parseJson(std::string_view text, std::string_view file);

/// Everything in `document` that `schema` (JSON Schema draft 7) forbids, as `file#/pointer`, found, allowed;
/// every unknown key, leaf errors only, at most kMostErrors. Empty when it is valid. `document` has to come
/// from parseJson, whose limits keep the validation within its stack.
Errors schemaErrors(const nlohmann::json& document, const nlohmann::json& schema, std::string_view file);

/// The same with a schema that stands in a file; a schema that cannot be read is an error too.
Errors schemaFileErrors(const nlohmann::json& document, const std::filesystem::path& schemaFile,
                        std::string_view file);

/// A short quotation of a value for an error message: `"left"`, `370`, `an object`.
std::string quoted(const nlohmann::json& value);

/// Text between quotation marks, escaped as in JSON, cut when it is long.
std::string quotedText(std::string_view text);

/// One token of a JSON pointer (RFC 6901): `~` and `/` escaped. Control characters are written as in JSON, so
/// that an error stays on its line.
std::string pointerToken(std::string_view key);

/// `file#pointer`, the `where` of an error inside a document.
std::string placeIn(std::string_view file, std::string_view pointer);

} // namespace gapwise
