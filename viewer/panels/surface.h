#pragma once

#include "viewer/panels/area.h"
#include "viewer/panels/palette.h"
#include "viewer/panels/panels.h"

#include <imgui.h>

#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What every panel draws on: fonts, scale, drafts. Lives for one frame.
struct Surface {
    PanelFrame& frame;
    bool bench = false;
    double target = 36.0; ///< Smallest side of a button, in pixels.

    const Fonts& fonts() const { return frame.fonts; }
    Drafts& drafts() const { return frame.drafts; }
    /// Layout pixels in pixels of the window.
    double px(double layoutPixels) const { return layoutPixels * frame.uiScale; }
};

/// A panel while it is drawn: what can be pressed in it is named `panel/…`.
class Scope {
public:
    Scope(const Surface& surface, std::string_view name);
    ~Scope();
    Scope(const Scope&) = delete;
    Scope& operator=(const Scope&) = delete;

private:
    std::string& path_;
    std::size_t outer_;
};

inline ImVec2 point(double x, double y) {
    return {static_cast<float>(x), static_cast<float>(y)};
}

/// The draw list of the current window.
ImDrawList& ink();

/// A word's size in a font; null stands for the current one.
ImVec2 sizeOf(ImFont* font, std::string_view words);

enum class Align { Left, Middle, Right };

/// How words are set.
struct Type {
    ImFont* font = nullptr;
    ImU32 colour = palette::kInk;
    Align align = Align::Left;
};

/// One line in the middle of the area's height; words that are too long end in an ellipsis.
void writeLine(const Area& area, std::string_view words, const Type& type);

/// Words broken into lines at the area's width, from its upper edge. Returns the height used; lines below the
/// area are left out, the last one then ends in an ellipsis.
double writeLines(const Area& area, std::string_view words, const Type& type);

/// Words broken into lines at a width.
std::vector<std::string> linesOf(double width, std::string_view words, ImFont* font);

/// From one line to the next.
double lineHeightOf(ImFont* font);

/// The height that writeLines needs.
double heightOf(double width, std::string_view words, ImFont* font);

void fillArea(const Area& area, ImU32 colour, double rounding = 0.0);
void frameArea(const Area& area, ImU32 colour, double rounding = 0.0, double thickness = 1.0);

/// A part of the screen that can be pressed by mouse, finger or keyboard (space or enter); draws only the
/// keyboard's frame.
struct Pressed {
    bool done = false; ///< Let go on it, or by key.
    bool held = false; ///< Down at this moment.
    bool hovered = false;
};
Pressed pressable(const Surface& surface, const char* id, const Area& area);

/// A button with words in its middle.
struct ButtonLook {
    bool chosen = false; ///< It is what is shown now.
    bool enabled = true;
    bool leading = false; ///< What one most likely wants next.
    ImFont* font = nullptr;
    std::string_view second{}; ///< A smaller second line.
    std::string id{};          ///< Name of the target; empty: its label.
};
bool button(const Surface& surface, const Area& area, std::string_view label, const ButtonLook& look = {});

/// `count` areas beside each other with `gap` between them.
Area columnOf(const Area& area, int count, int index, double gap);

} // namespace gapwise
