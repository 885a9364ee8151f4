#include "viewer/panels/tip_word.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace gapwise {

namespace {

constexpr double kSteep = 0.5; ///< Sine up to which a tip counts as above or below.
constexpr double kSide = 0.87; ///< … and from which on as left or right.

/// Outward of the tip; nothing where the area is too narrow for that.
std::optional<TipWord> inOneLine(const Tip& tip, const std::string& words, const Area& area,
                                 const Surface& surface) {
    const double height = surface.px(18.0);
    const bool left = std::sin(radians(tip.clock)) < -0.01;
    const double away = surface.px(14.0);
    for (ImFont* font : {surface.fonts().strong, surface.fonts().small}) {
        const double width = static_cast<double>(sizeOf(font, words).x) + 1.0;
        const double x = left ? tip.x - away - width : tip.x + away;
        if (x >= area.x && x + width <= area.right())
            return TipWord{.lines = {words}, .place = {x, tip.y - height / 2.0, width, height}, .font = font};
    }
    return std::nullopt;
}

/// The rim leaves a corner free, outward of the tip.
TipWord inTheCorner(const Tip& tip, const std::string& words, const Area& area, const Surface& surface) {
    ImFont* font = surface.fonts().small;
    const bool right = std::sin(radians(tip.clock)) > 0.0;
    const bool below = std::cos(radians(tip.clock)) < 0.0;
    const double free = (right ? area.right() - tip.x : tip.x - area.x) + tip.size;
    TipWord word{
        .lines = linesOf(free, words, font), .font = font, .align = right ? Align::Left : Align::Right};
    double width = 0.0;
    for (const std::string& line : word.lines)
        width = std::max(width, static_cast<double>(sizeOf(font, line).x) + 1.0);
    const double height = static_cast<double>(word.lines.size()) * lineHeightOf(font);
    const double x =
        right ? std::min(tip.x + tip.size, area.right() - width) : std::max(tip.x - tip.size - width, area.x);
    const double y = below ? std::min(tip.y + surface.px(3.0), area.bottom() - height)
                           : std::max(tip.y - surface.px(3.0) - height, area.y);
    word.place = {x, y, width, height};
    return word;
}

TipWord alongTheRim(const Tip& tip, const std::string& words, const Surface& surface) {
    const ImVec2 size = sizeOf(surface.fonts().small, words);
    const bool right = std::sin(radians(tip.clock)) > 0.0;
    const bool below = std::cos(radians(tip.clock)) < 0.001;
    const double length = static_cast<double>(size.x);
    const double width = static_cast<double>(size.y);
    const double inward = surface.px(5.0);
    return {.lines = {words},
            .place = {right ? tip.x - inward : tip.x + inward - width,
                      below ? tip.y + tip.size : tip.y - tip.size - length, width, length},
            .font = surface.fonts().small,
            .along = true};
}

/// Written where nothing cuts it off, then turned a quarter to the left and moved to its place: read upward.
void writeUpward(const TipWord& word, const Area& area) {
    ImDrawList& list = ink();
    const ImVec2 from = point(area.x, area.y);
    const ImVec2 to = point(word.place.x, word.place.bottom());
    const int first = list.VtxBuffer.Size;
    list.AddText(word.font, word.font->FontSize, from, palette::kInk, word.lines.front().c_str());
    for (int i = first; i < list.VtxBuffer.Size; ++i) {
        ImVec2& at = list.VtxBuffer[i].pos;
        at = {to.x + (at.y - from.y), to.y - (at.x - from.x)};
    }
}

} // namespace

TipWord tipWordOf(const Tip& tip, const std::string& words, const Area& area, const Surface& surface) {
    const double sine = std::abs(std::sin(radians(tip.clock)));
    if (sine < kSteep)
        if (const auto word = inOneLine(tip, words, area, surface))
            return *word;
    return sine < kSide ? inTheCorner(tip, words, area, surface) : alongTheRim(tip, words, surface);
}

void writeTipWord(const Tip& tip, const std::string& words, const Area& area, const Surface& surface) {
    const TipWord word = tipWordOf(tip, words, area, surface);
    if (word.along)
        return writeUpward(word, area);
    const double height = word.place.height / static_cast<double>(word.lines.size());
    for (std::size_t i = 0; i < word.lines.size(); ++i)
        writeLine({word.place.x, word.place.y + static_cast<double>(i) * height, word.place.width, height},
                  word.lines[i], {word.font, palette::kInk, word.align});
}

} // namespace gapwise
