#pragma once

#include "viewer/panels/area.h"
#include "viewer/panels/fonts.h"
#include "viewer/panels/layout.h"
#include "viewer/panels/measure_drafts.h"
#include "viewer/panels/measuring_drafts.h"
#include "viewer/panels/picture_overlay.h"
#include "viewer/panels/portrait.h"
#include "viewer/panels/torque_drafts.h"
#include "viewer/workplace/workplace.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// Everything on the screen but the 3D picture, as functions from what is shown to what is wished. Dear ImGui
/// draws them; no window, no OpenGL.

/// What can be pressed in a picture, by name: `card/Close`, `tray/SR-CO`. For scripts and tests that drive
/// the screen as a hand does.
struct Target {
    std::string name{};
    Area area{};
};

/// How a clock that is typed or pressed on the card is meant.
enum class ClockMeant {
    AsISeeIt,       ///< From where the person stands, as the piece lies.
    FromCompressor, ///< From the compressor side, inlet on top.
    FromTurbine     ///< From the turbine side, inlet on top.
};

/// A press on an end dial that may become the dragging of a gap.
struct DialDrag {
    Side side = Side::Compressor;
    SeatId seat{};
    Degrees grip{0.0};  ///< From the pointer to the gap.
    double fromX = 0.0; ///< Where it was pressed.
    double fromY = 0.0;
    bool moved = false;
};

/// What is being read and said on the card of a step.
struct StepDrafts {
    /// What was pressed and asks for a second touch.
    enum class Asks { Nothing, Skip, Reopen };

    StepId step{};         ///< Of which step.
    std::string tab{"do"}; ///< Which page lies open.
    std::string state{};   ///< Whether the step was done then.
    std::size_t page = 0;  ///< How far it was leafed on.
    Asks asks = Asks::Nothing;
    bool alone = false;                          ///< Nobody else is there to see it.
    std::map<std::string, std::string> fields{}; ///< What is being typed, by name of the field.
    std::map<std::string, std::string> faults{}; ///< What is wrong with it.
};

/// What panels remember from one frame to the next: drafts that were not said yet, and what is folded out.
/// Nothing of it belongs to the job, and it may be thrown away at any time.
struct Drafts {
    /// The box over the picture.
    enum class Box { None, Findings, Keys, File, Lying, Who };

    Use use = Use::Practise; ///< Chosen on the opening screen.
    Box box = Box::None;
    bool notDueOpen = false; ///< Findings that are not due yet are folded out.
    std::string file{};      ///< Path of the build sheet to save, as it is being typed.
    std::string openPath{};  ///< Path of what is to be opened, as it is being typed.
    std::string clock{};     ///< Clock that is being typed on the card.
    ClockMeant meant = ClockMeant::AsISeeIt;
    std::size_t cardPage = 0;  ///< Which page of the part's findings the card tells.
    std::string cardTold{};    ///< Which judgement these pages tell.
    std::size_t aboutPage = 0; ///< Which page of the sheet about a part lies open.
    std::string aboutRead{};   ///< Of which part, and whether something was kept back.
    SeatId saying{};           ///< Seat of which is being said what is seen.
    std::optional<Degrees> gapSeen{};
    std::optional<bool> referenceFaceVisible{};
    std::string who{}; ///< Name of who signs on, as it is being typed.
    Role role = Role::Technician;
    std::optional<EndUp> lies{};  ///< How the piece lies, said before its drain.
    bool askedStartAgain = false; ///< `Start again` was pressed once.
    std::optional<DialDrag> drag{};
    StepDrafts stepCard{};
    TorqueDrafts torque{}; ///< The wrench, and what is typed on the card of a fastener.
    MeasuringDrafts measuring{};
    MeasureDrafts measure{};  ///< What is typed and chosen on the card of a measurement.
    std::string slipFile{};   ///< Path of the slip to save, as it is being typed.
    double lineScroll = -1.0; ///< First mark on the line; below 0: follows the procedure.
    double trayScroll = 0.0;  ///< First part on the tray.
    double listScroll = 0.0;  ///< First recent job on the opening screen.
};

/// What the window gives to the panels and what it gets back, besides the wish.
struct PanelFrame {
    // Given
    Fonts fonts{};
    double uiScale = 1.0;
    double pixelsPerMm = 0.0; ///< Of the monitor; 0 = not known.
    PictureOverlay overlay{}; ///< Of this frame's pictures.
    std::string today{};      ///< `2026-11-30`; empty: not known.
    // Kept
    Drafts drafts{};
    std::string scope{};     ///< Of the panel that is being drawn.
    bool enterTaken = false; ///< Enter belongs to the number that is typed, not to what has the keyboard.
    // Given back
    Area picture{};                    ///< Where the 3D picture goes; empty on the opening screen.
    std::vector<Portrait> portraits{}; ///< Where pictures of one part alone go.
    bool pictureFree = false;          ///< The pointer is over the picture and no panel wants it.
    std::vector<Target> targets{};     ///< Of this frame, in the order they were drawn.
    std::optional<PartId>
        pointedAt{}; ///< Part under the pointer on a dial or the tray: the picture may light it.
};

/// Draws every panel between ImGui::NewFrame and ImGui::Render and returns what is wished, at most one wish a
/// frame. The size of the window is ImGui's DisplaySize.
std::optional<Wish> showPanels(const Workplace& workplace, PanelFrame& frame);

/// The parts of the picture for the look at both ends: turbine left, compressor right, and between them the
/// piece as it lies.
struct BothEndsAreas {
    Area turbine{};
    Area lying{};
    Area compressor{};
};
BothEndsAreas bothEndsAreas(const Area& picture);

} // namespace gapwise
