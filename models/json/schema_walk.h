#pragma once

#include "geometry/base/result.h"

#include <nlohmann/json_fwd.hpp>

#include <string_view>

namespace gapwise::schema {

/// Walks `document` along `schema` and names each place that breaks it, with what was found and what is
/// allowed. Knows the keywords of draft 7 except formats, and references inside the schema. Empty when it
/// finds nothing wrong; at most `most` errors.
Errors walkErrors(const nlohmann::json& document, const nlohmann::json& schema, std::string_view file,
                  std::size_t most);

} // namespace gapwise::schema
