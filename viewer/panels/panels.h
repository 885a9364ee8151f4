#pragma once

#include "viewer/panels/area.h"
#include "viewer/panels/fonts.h"
#include "viewer/panels/layout.h"
#include "viewer/workplace/workplace.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// Everything on the screen but the 3D picture, as functions from what is shown to what is wished. Dear ImGui
/// draws them; no window, no OpenGL.

/// A word in the picture: a side, the inlet, the drain, a part. Placed by whoever knows the camera.
struct PictureLabel {
    double x = 0.0; ///< Middle of the words, in pixels of the window.
    double y = 0.0;
    std::string words{};
    bool strong = false;
};

/// What panels remember from one frame to the next: drafts that were not said yet, and what is folded out.
/// Nothing of it belongs to the job, and it may be thrown away at any time.
struct Drafts {
    Use use = Use::Practise;   ///< Chosen on the opening screen.
    bool findingsOpen = false; ///< The list of findings is folded out.
    bool notDueOpen = false;   ///< With those that are not due yet.
    bool keysOpen = false;     ///< The list of keys.
    bool fileOpen = false;     ///< Saving and leaving.
    std::string file{};        ///< Path that is being typed.
    std::string clock{};       ///< Clock that is being typed in the card.
    Side clockSide = Side::Compressor;
    SeatId saying{}; ///< Seat of which is being said what is seen.
    std::optional<Degrees> gapSeen{};
    std::optional<bool> referenceFaceVisible{};
    std::string by{};                  ///< Who confirms.
    std::optional<StepId> askedStep{}; ///< A step whose mark was tapped, and that hides what does not hold.
    double lineScroll = -1.0;          ///< Of the line of marks, in marks; below 0: follows the procedure.
};

/// What the window gives to the panels and what it gets back, besides the wish.
struct PanelFrame {
    // Given
    Fonts fonts{};
    double uiScale = 1.0;
    double pixelsPerMm = 0.0;           ///< Of the monitor; 0 = not known.
    std::vector<PictureLabel> labels{}; ///< Of this frame's picture.
    // Kept
    Drafts drafts{};
    // Given back
    Area picture{}; ///< Where the 3D picture goes; empty on the opening screen.
    std::optional<PartId>
        pointedAt{}; ///< Part under the pointer on a dial or the tray: the picture may light it.
};

/// Draws every panel between ImGui::NewFrame and ImGui::Render and returns what is wished, at most one wish a
/// frame. The size of the window is ImGui's DisplaySize.
std::optional<Wish> showPanels(const Workplace& workplace, PanelFrame& frame);

/// The two halves of the picture for the look at both ends: turbine left, compressor right.
struct BothEndsAreas {
    Area turbine{};
    Area compressor{};
};
BothEndsAreas bothEndsAreas(const Area& picture);

} // namespace gapwise
