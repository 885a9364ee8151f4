#include "geometry/shape/stroke_font.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace gapwise {

namespace {

/// Four digits a stroke: from x, from y, to x, to y.
struct Glyph {
    char letter;
    std::string_view strokes;
};

constexpr std::array kGlyphs{
    Glyph{' ', ""},
    Glyph{'-', "0343"},
    Glyph{'0', "0006 0646 4640 4000"},
    Glyph{'1', "2026 2615"},
    Glyph{'2', "0646 4643 4303 0300 0040"},
    Glyph{'3', "0646 4640 4000 0343"},
    Glyph{'4', "0603 0343 4640"},
    Glyph{'5', "4606 0603 0343 4340 4000"},
    Glyph{'6', "4606 0600 0040 4043 4303"},
    Glyph{'7', "0646 4610"},
    Glyph{'8', "0006 0646 4640 4000 0343"},
    Glyph{'9', "0040 4046 4606 0603 0343"},
    Glyph{'A', "0026 2640 1232"},
    Glyph{'B', "0006 0636 3645 4544 4433 0333 3342 4241 4130 3000"},
    Glyph{'C', "4606 0600 0040"},
    Glyph{'D', "0006 0626 2644 4442 4220 2000"},
    Glyph{'E', "4606 0600 0040 0333"},
    Glyph{'F', "0006 0646 0333"},
    Glyph{'G', "4606 0600 0040 4043 4323"},
    Glyph{'H', "0006 4046 0343"},
    Glyph{'I', "2026"},
    Glyph{'J', "4640 4000 0002"},
    Glyph{'K', "0006 0246 1340"},
    Glyph{'L', "0600 0040"},
    Glyph{'M', "0006 0623 2346 4640"},
    Glyph{'N', "0006 0640 4046"},
    Glyph{'O', "0006 0646 4640 4000"},
    Glyph{'P', "0006 0646 4643 4303"},
    Glyph{'Q', "0006 0646 4640 4000 2240"},
    Glyph{'R', "0006 0646 4643 4303 1340"},
    Glyph{'S', "4606 0603 0343 4340 4000"},
    Glyph{'T', "0646 2620"},
    Glyph{'U', "0600 0040 4046"},
    Glyph{'V', "0620 2046"},
    Glyph{'W', "0610 1024 2430 3046"},
    Glyph{'X', "0046 0640"},
    Glyph{'Y', "0623 4623 2320"},
    Glyph{'Z', "0646 4600 0040"},
};

std::vector<Stroke> parsed(std::string_view text) {
    const auto number = [&](std::size_t at) { return static_cast<double>(text[at] - '0'); };
    std::vector<Stroke> strokes;
    for (std::size_t at = 0; at < text.size(); at += 5) {
        assert(at + 4 <= text.size());
        strokes.push_back({number(at), number(at + 1), number(at + 2), number(at + 3)});
    }
    return strokes;
}

} // namespace

std::optional<std::vector<Stroke>> strokesOf(char letter) {
    const auto* const glyph =
        std::find_if(kGlyphs.begin(), kGlyphs.end(), [&](const Glyph& g) { return g.letter == letter; });
    if (glyph == kGlyphs.end())
        return std::nullopt;
    return parsed(glyph->strokes);
}

} // namespace gapwise
