#include "viewer/command/text_layout.h"

#include <algorithm>
#include <sstream>

namespace gapwise {

namespace {

std::string padded(const std::string& text, std::size_t columns) {
    return text + std::string(columns - std::min(columns, columnsOf(text)), ' ');
}

std::vector<std::size_t> widthsOf(const std::vector<std::vector<std::string>>& rows) {
    std::vector<std::size_t> widths(rows.empty() ? 0 : rows.front().size(), 0);
    for (const auto& row : rows)
        for (std::size_t i = 0; i < widths.size(); ++i)
            widths[i] = std::max(widths[i], columnsOf(row[i]));
    return widths;
}

} // namespace

std::size_t columnsOf(std::string_view text) {
    const auto startsCharacter = [](char byte) {
        return (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U;
    };
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), startsCharacter));
}

std::string paragraph(std::string_view lead, std::string_view text) {
    const std::string indent(columnsOf(lead), ' ');
    std::string lines;
    std::string line{lead};
    bool empty = true;
    std::istringstream words{std::string{text}};
    for (std::string word; words >> word;) {
        // A tolerance stays on the line of its sign.
        if (std::string number; word == "±" && words >> number)
            word += " " + number;
        if (!empty && columnsOf(line) + 1 + columnsOf(word) > kTextColumns) {
            lines += line + "\n";
            line = indent;
            empty = true;
        }
        line += (empty ? "" : " ") + word;
        empty = false;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    return lines + line + "\n";
}

std::string spoken(std::string_view name) {
    std::string words{name};
    std::ranges::replace(words, '_', ' ');
    return words;
}

std::string table(const std::vector<std::vector<std::string>>& rows, std::string_view indent) {
    const std::vector<std::size_t> widths = widthsOf(rows);
    std::string text;
    for (const auto& row : rows) {
        std::string lead{indent};
        for (std::size_t i = 0; i + 1 < row.size(); ++i)
            lead += padded(row[i], widths[i]) + "  ";
        text += row.empty() ? "" : paragraph(lead, row.back());
    }
    return text;
}

} // namespace gapwise
