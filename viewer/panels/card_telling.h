#pragma once

#include "viewer/panels/surface.h"

#include <string>
#include <vector>

namespace gapwise {

/// One line of what the card tells.
struct ToldLine {
    std::string words{};
    Type type{};
    double above = 0.0;     ///< Space before it, in pixels.
    double paragraph = 0.0; ///< Height of the lines that belong together from it on, itself among them; 0
                            ///< within a paragraph.
};

/// A page of it: all of one finding, or as much as fits.
struct ToldPage {
    std::size_t finding = 0; ///< Which of the findings.
    std::vector<ToldLine> lines{};
};

/// The findings as pages of `area`'s size: no word is ever cut off, and a paragraph that fits a page stays
/// whole. What is wrong and why, which way to turn, the question, and why it matters.
std::vector<ToldPage> pagesOf(const std::vector<const Finding*>& findings, const Area& area,
                              const Surface& surface);

void drawPage(const ToldPage& page, const Area& area);

} // namespace gapwise
