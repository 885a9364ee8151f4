#pragma once

#include "viewer/panels/surface.h"

#include <string>
#include <vector>

namespace gapwise {

/// The tip of an arrow outside a dial, in pixels.
struct Tip {
    double x = 0.0;
    double y = 0.0;
    double size = 12.0;
    Degrees clock{0.0}; ///< Where on the rim it stands.
};

/// The word of a tip where it keeps beside it: above or below the rim in one line, on a diagonal in as many
/// lines as the corner is narrow, and at the left or right along the rim.
struct TipWord {
    std::vector<std::string> lines{};
    Area place{};
    ImFont* font = nullptr;
    Align align = Align::Left;
    bool along = false; ///< Turned a quarter, as it stands along the rim.
};
/// `area` is what the dial may use with its arrow.
TipWord tipWordOf(const Tip& tip, const std::string& words, const Area& area, const Surface& surface);

void writeTipWord(const Tip& tip, const std::string& words, const Area& area, const Surface& surface);

} // namespace gapwise
