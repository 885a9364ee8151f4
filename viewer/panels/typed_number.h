#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace gapwise {

/// A number as a person types it, whatever the language of the system: `12.5` or `12,5`, with a sign where it
/// has one. Nothing for anything else, an infinite one too.
std::optional<double> typedNumber(std::string_view text);

/// A count: a whole number from 0 to a million. Nothing for anything else.
std::optional<int> typedCount(std::string_view text);

/// A day of the calendar as `2026-11-30`; the same text without blanks around it. Nothing for anything else.
std::optional<std::string> typedDay(std::string_view text);

/// Without the blanks around it.
std::string trimmedWords(std::string_view text);

} // namespace gapwise
