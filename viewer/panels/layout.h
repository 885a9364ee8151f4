#pragma once

#include "viewer/panels/area.h"

namespace gapwise {

/// What decides where things lie on the screen.
struct LayoutFor {
    double width = 1366.0; ///< Of the window, in pixels.
    double height = 768.0;
    double uiScale = 1.0;     ///< Pixels of the window for one pixel of the layout.
    bool cardOpen = false;    ///< Of a part, a fastener or a step: it slides up over tray and line.
    bool tallCard = false;    ///< Of a step or a fastener: it needs more room than that of a part.
    bool bench = false;       ///< Larger words and targets, for gloves and for reading at 1.5 m.
    bool bothEnds = false;    ///< The picture takes the place of the two dials.
    double pixelsPerMm = 0.0; ///< Of the monitor, by its physical size; 0 = not known.
};

/// Where everything lies. Nothing overlaps, everything is inside the window. An empty area is not shown now.
struct Layout {
    Area banner{};
    Area turbineDial{};
    Area compressorDial{};
    Area looks{};     ///< Look controls above the picture.
    Area picture{};   ///< The 3D picture; nothing but boxes that ask for an answer lies over it.
    Area cutOpen{};   ///< The upright control at the left edge of the picture.
    Area pullApart{}; ///< The upright slider at the right edge of the picture.
    Area notices{}; ///< Findings in one line, or a note: under the picture. Empty at the bench with the card
                    ///< open.
    Area tray{};
    Area card{};
    Area line{}; ///< The procedure; a thin strip while the card is open.
};

/// The window that the layout is drawn for, in layout pixels, and the smallest that still holds it.
inline constexpr double kLayoutWidth = 1366.0;
inline constexpr double kLayoutHeight = 768.0;
inline constexpr double kLeastWidth = 1280.0;
inline constexpr double kLeastHeight = 720.0;

Layout layoutOf(const LayoutFor& wanted);

/// The scale for a window: as large as kLayoutWidth × kLayoutHeight allows, in steps of an eighth, never
/// below 1.
double suggestedScale(double width, double height);

/// Smallest side of what a gloved finger must hit, in pixels: 15 mm where the monitor's size is known, else
/// 60 pixels of the layout; 36 outside the bench layout.
double targetSize(const LayoutFor& wanted);

} // namespace gapwise
