#pragma once

#include "geometry/base/result.h"

struct ImFont;
struct ImFontAtlas;

namespace gapwise {

/// The type of the screen. Null fonts stand for ImGui's own.
struct Fonts {
    ImFont* small = nullptr;  ///< 13 layout pixels.
    ImFont* body = nullptr;   ///< 16.
    ImFont* strong = nullptr; ///< 16, semibold.
    ImFont* large = nullptr;  ///< 20: to be read from a little farther off.
    ImFont* title = nullptr;  ///< 21, semibold.
    ImFont* bench = nullptr; ///< 44, semibold: capitals of 32 pixels, 9 mm on a monitor of 90 pixels an inch.
};

/// Puts the fonts into the atlas at `uiScale` and builds it with FreeType. The atlas must be empty. An error
/// names the font file that is missing and the package it comes in.
Result<Fonts> loadFonts(ImFontAtlas& atlas, double uiScale);

/// Colours, borders and spaces of every panel, for the current ImGui context; keyboard navigation on.
void applyStyle(double uiScale);

} // namespace gapwise
