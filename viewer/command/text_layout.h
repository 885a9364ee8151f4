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

/// `top mark` of `top_mark`: names in files as they stand in sentences.
std::string spoken(std::string_view name);

/// The words of all things with a separator between them.
template <class Things, class Word>
std::string listed(const Things& things, std::string_view separator, const Word& word) {
    std::string text;
    for (const auto& thing : things)
        text += (text.empty() ? "" : std::string{separator}) + word(thing);
    return text;
}

/// Rows in columns two blanks apart, the last column wrapped. Every row has as many cells as the first.
std::string table(const std::vector<std::vector<std::string>>& rows, std::string_view indent);

} // namespace gapwise
