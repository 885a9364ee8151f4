#pragma once

#include <nlohmann/json_fwd.hpp>

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise::schema {

/// `a`, `a or b`, `a, b or c`.
std::string listed(const std::vector<std::string>& words, std::string_view last);

/// What the keyword `type` allows: `text`, `a number or an array`.
std::string typeWords(const nlohmann::json& type);

/// True when the value is of a type that the keyword `type` names.
bool isOfType(const nlohmann::json& value, const nlohmann::json& type);

/// Values of an `enum` or a `const` for a person: texts bare, everything else as in JSON.
std::vector<std::string> valueWords(const nlohmann::json& values);

/// What minimum, maximum and their exclusive forms allow: `a number from 0 to below 360`. Empty without any.
std::string rangeWords(const nlohmann::json& schema);

/// `1 item`, `at least 2 items`, `2 to 3 items`: what two counting keywords allow. Empty without any.
std::string countWords(const nlohmann::json* least, const nlohmann::json* most, std::string_view thing);

/// `1 part`, `2 parts`.
std::string counted(std::size_t count, std::string_view thing);

} // namespace gapwise::schema
