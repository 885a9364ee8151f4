#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// Columns that text for a person keeps to.
inline constexpr std::size_t kTextColumns = 100;

/// Columns that a UTF-8 text takes: one a character.
std::size_t columnsOf(std::string_view text);

/// The words of `text` in lines of at most kTextColumns columns, each with its line feed: the first line
/// behind `lead`, the others as far in. A longer word has a line of its own.
std::string paragraph(std::string_view lead, std::string_view text);

/// Rows in columns two blanks apart, the last column wrapped. Every row has as many cells as the first.
std::string table(const std::vector<std::vector<std::string>>& rows, std::string_view indent);

} // namespace gapwise
