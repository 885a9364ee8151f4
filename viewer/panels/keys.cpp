#include "viewer/panels/keys.h"

#include "viewer/panels/card.h"
#include "viewer/panels/cut_open.h"
#include "viewer/panels/measure_work.h"
#include "viewer/panels/show_me.h"
#include "viewer/panels/step_card.h"

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

constexpr std::array<KeyHelp, 31> kKeys{{{"Page Down", "next: its card; done if complete"},
                                         {"Page Up", "back: the card of the step before"},
                                         {"1 … 6", "the six looks, as their buttons stand"},
                                         {"[  ]", "pull apart: less, more"},
                                         {"c", "cut open: half, quarter, whole"},
                                         {"x  X", "turn the cut 15° on (clockwise), back"},
                                         {"k", "casings: shown, out of sight"},
                                         {"w  W", "walk round: to the left, right"},
                                         {"r", "turn the piece: half round"},
                                         {"t", "turn the piece: tip sideways"},
                                         {"o", "turn the piece: tip toward me"},
                                         {"n", "next part of the tray in hand"},
                                         {"p", "put it into its own seat"},
                                         {",  .", "gap 1° back, on (clockwise)"},
                                         {"<  >", "the same, 5°"},
                                         {"v", "how a clock on the card is meant"},
                                         {"f", "flip the part in hand"},
                                         {"a", "about the part: how it must sit"},
                                         {"m", "the sheet of measurements"},
                                         {"0 … 9  Enter", "a measurement: type it, take it"},
                                         {"y", "I looked: it is so; at the bench: done"},
                                         {"e", "show me the mistake"},
                                         {"Delete", "take the part in hand off"},
                                         {"Escape", "close the card, a box"},
                                         {"l", "all findings"},
                                         {"s", "save, open, start again, leave"},
                                         {"i", "who works here"},
                                         {"d", "done: the step of the card"},
                                         {"Ctrl+Z  Ctrl+Y", "undo, redo"},
                                         {"?", "these keys"},
                                         {"arrows, Space", "go from button to button, press it"}}};

bool pressedOnce(ImGuiKey key) {
    return ImGui::IsKeyPressed(ImGui::GetKeyIndex(key), false);
}

Wish lookAgain(Standpoint standpoint) {
    standpoint.pulledApart = std::clamp(standpoint.pulledApart, 0.0, 1.0);
    standpoint.observer.stand = wrapped(standpoint.observer.stand);
    return LookAgain{standpoint};
}

std::optional<Wish> lookKeys(const Job& job, ImWchar letter) {
    constexpr std::array<LookKind, 6> kLooks{LookKind::FromTurbine, LookKind::FromCompressor,
                                             LookKind::WhereIStand, LookKind::Beside,
                                             LookKind::Free,        LookKind::BothEnds};
    Standpoint standpoint = job.standpoint;
    if (letter >= '1' && letter <= '6') {
        standpoint.kind = kLooks.at(static_cast<std::size_t>(letter - '1'));
        return lookAgain(standpoint);
    }
    switch (letter) {
    case '[': standpoint.pulledApart -= 0.1; return lookAgain(standpoint);
    case ']': standpoint.pulledApart += 0.1; return lookAgain(standpoint);
    case 'c': return cutOpen(job, nextCut(job));
    case 'x': return turnCut(job, kCutStep);
    case 'X': return turnCut(job, -kCutStep);
    case 'k': return turnCasings(job);
    case 'w':
    case 'W':
        standpoint.kind = LookKind::WhereIStand;
        if (job.attitude().up == EndUp::Level)
            standpoint.observer.levelSide = opposite(standpoint.observer.levelSide);
        else
            standpoint.observer.stand = standpoint.observer.stand + Degrees{letter == 'w' ? 45.0 : -45.0};
        return lookAgain(standpoint);
    case 'r': return TurnPiece{TurningMove::Rolled};
    case 't': return TurnPiece{TurningMove::TurnedRound};
    case 'o': return TurnPiece{TurningMove::TippedOver};
    default: return std::nullopt;
    }
}

std::optional<Wish> flip(const Job& job, const Seating& seating) {
    const std::optional<Faces> faces = facesOf(job, seating.seat);
    if (!faces)
        return std::nullopt;
    const Side now = seating.referenceFaceLooks.value_or(opposite(faces->eye));
    return Act{FaceTurned{seating.seat, opposite(now), job.standingView()}};
}

std::optional<Wish> turnKeys(const Job& job, const Seating& seating, ImWchar letter, ClockMeant meant) {
    if (!indexIsSet(job.frame, seating.part, seating.seat))
        return std::nullopt;
    const View view = viewMeant(job, meant);
    switch (letter) {
    case ',': return turnOn(job, seating.seat, view, Degrees{-1.0});
    case '.': return turnOn(job, seating.seat, view, Degrees{1.0});
    case '<': return turnOn(job, seating.seat, view, Degrees{-5.0});
    case '>': return turnOn(job, seating.seat, view, Degrees{5.0});
    default: return std::nullopt;
    }
}

/// The look from which the finding that the card tells is seen; the first of several.
std::optional<Wish> showMe(const Job& job, const SeatId& seat) {
    for (const Finding* finding : toldFindingsOf(job, seat))
        if (const auto show = showMeOf(job, *finding))
            return LookAgain{show->standpoint};
    return std::nullopt;
}

/// What was tapped is put right before it is said.
void sayingKeys(ImWchar letter, Drafts& drafts) {
    if (letter == 'f' && drafts.referenceFaceVisible)
        drafts.referenceFaceVisible = !*drafts.referenceFaceVisible;
    if (!drafts.gapSeen)
        return;
    switch (letter) {
    case ',': drafts.gapSeen = wrapped(*drafts.gapSeen - Degrees{1.0}); break;
    case '.': drafts.gapSeen = wrapped(*drafts.gapSeen + Degrees{1.0}); break;
    case '<': drafts.gapSeen = wrapped(*drafts.gapSeen - Degrees{5.0}); break;
    case '>': drafts.gapSeen = wrapped(*drafts.gapSeen + Degrees{5.0}); break;
    default: break;
    }
}

std::optional<Wish> confirm(const Job& job, const SeatId& seat, Drafts& drafts) {
    if (job.use == Use::Bench)
        return saidAll(job, seat, drafts) ? std::optional<Wish>{said(job, seat, drafts)} : std::nullopt;
    if (!demandShown(job, seat) || dialStateOf(job, seat).sign != DialSign::Holds)
        return std::nullopt;
    return Act{SeatingConfirmed{seat, {whoWorks(job), Confirmation::Said::After}}};
}

std::optional<Wish> handKeys(const Job& job, ImWchar letter, Drafts& drafts) {
    const Seating* seating = seatingInHand(job);
    if (!seating)
        return std::nullopt;
    switch (letter) {
    case 'e': return showMe(job, seating->seat);
    case 'y': return confirm(job, seating->seat, drafts);
    default: break;
    }
    if (job.use == Use::Bench) {
        sayingKeys(letter, drafts);
        return std::nullopt;
    }
    if (letter == 'f')
        return flip(job, *seating);
    return turnKeys(job, *seating, letter, drafts.meant);
}

void toggle(Drafts& drafts, Drafts::Box box) {
    drafts.box = drafts.box == box ? Drafts::Box::None : box;
}

/// What is chosen is left first, then what is asked, then the card.
std::optional<Wish> closeMeasure(MeasureDrafts& drafts) {
    if (drafts.page != MeasureDrafts::Page::Read)
        drafts.page = MeasureDrafts::Page::Read;
    else if (drafts.doubt)
        drafts.doubt.reset();
    else if (!drafts.typed.empty())
        drafts.typed.clear();
    else
        return OpenMeasurement{};
    return std::nullopt;
}

/// Digits belong to the number on the card of a measurement.
bool isTypedOnCard(const Job& job, ImWchar letter) {
    return job.measurementInHand && letter < 0x80 && isMeasureKey(static_cast<char>(letter));
}

void boxKeys(ImWchar letter, Drafts& drafts) {
    switch (letter) {
    case 'l': toggle(drafts, Drafts::Box::Findings); break;
    case 's': toggle(drafts, Drafts::Box::File); break;
    case 'i': toggle(drafts, Drafts::Box::Who); break;
    case '?': toggle(drafts, Drafts::Box::Keys); break;
    case 'v':
        drafts.meant = drafts.meant == ClockMeant::AsISeeIt
                           ? ClockMeant::FromTurbine
                           : (drafts.meant == ClockMeant::FromTurbine ? ClockMeant::FromCompressor
                                                                      : ClockMeant::AsISeeIt);
        break;
    default: break;
    }
}

std::optional<Wish> namedKeys(const Job& job, Drafts& drafts) {
    const ImGuiIO& io = ImGui::GetIO();
    if (io.KeyCtrl && pressedOnce(ImGuiKey_Z))
        return Act{Undone{}};
    if (io.KeyCtrl && pressedOnce(ImGuiKey_Y))
        return Act{Redone{}};
    const Seating* seating = seatingInHand(job);
    if (seating && pressedOnce(ImGuiKey_Delete))
        return Act{PartTakenOff{seating->seat}};
    if (!pressedOnce(ImGuiKey_Escape))
        return std::nullopt;
    if (drafts.box == Drafts::Box::File && drafts.askedStartAgain) {
        drafts.askedStartAgain = false;
        return std::nullopt;
    }
    if (drafts.box != Drafts::Box::None) {
        drafts.box = Drafts::Box::None;
        return std::nullopt;
    }
    if (job.turnAsked)
        return TurnGivenUp{};
    if (job.turning) {
        drafts.drag.reset();
        return TurningLeft{};
    }
    if (job.inHand)
        return TakeInHand{};
    if (job.fastenerInHand)
        return OpenFastener{};
    if (job.measurementInHand)
        return closeMeasure(drafts.measure);
    return job.step ? std::optional<Wish>{OpenStep{}} : std::nullopt;
}

std::optional<Wish> letterKeys(const Job& job, ImWchar letter, Drafts& drafts) {
    boxKeys(letter, drafts);
    if (const auto wish = lookKeys(job, letter))
        return wish;
    if (letter == 'n') {
        const std::vector<PartId> tray = partsOnTray(job);
        return tray.empty() ? std::nullopt : std::optional<Wish>{TakeInHand{tray.front()}};
    }
    if (letter == 'd' && job.step)
        return stepOn(job, drafts);
    if (letter == 'a')
        return ReadAbout{About{job.inHand.value_or(job.frame.housing)}};
    if (letter == 'm')
        return ReadMeasures{MeasuresPage{}};
    if (letter == 'p' && job.inHand && !seatingInHand(job))
        return Act{PartPlaced{.part = *job.inHand, .seat = seatOf(*job.inHand)}};
    return handKeys(job, letter, drafts);
}

} // namespace

std::span<const KeyHelp> keyHelp() {
    return kKeys;
}

std::optional<Wish> aboutKeys(const Job& job, Drafts& drafts) {
    if (pressedOnce(ImGuiKey_PageDown))
        ++drafts.aboutPage;
    if (pressedOnce(ImGuiKey_PageUp) && drafts.aboutPage > 0)
        --drafts.aboutPage;
    bool close = pressedOnce(ImGuiKey_Escape);
    for (const ImWchar letter : ImGui::GetIO().InputQueueCharacters)
        close = close || letter == 'a';
    return close && job.about ? std::optional<Wish>{ReadAbout{}} : std::nullopt;
}

std::optional<Wish> measuresKeys(const Job& job, Drafts& drafts) {
    const ImGuiIO& io = ImGui::GetIO();
    if (io.WantTextInput)
        return std::nullopt;
    if (io.KeyCtrl && pressedOnce(ImGuiKey_Z))
        return Act{Undone{}};
    if (io.KeyCtrl && pressedOnce(ImGuiKey_Y))
        return Act{Redone{}};
    bool close = pressedOnce(ImGuiKey_Escape);
    if (close && drafts.box != Drafts::Box::None) {
        drafts.box = Drafts::Box::None;
        return std::nullopt;
    }
    for (const ImWchar letter : io.InputQueueCharacters)
        close = close || letter == 'm';
    return close && job.measures ? std::optional<Wish>{ReadMeasures{}} : std::nullopt;
}

std::optional<Wish> slipKeys(const Job& job) {
    const bool close = pressedOnce(ImGuiKey_Escape) || pressedOnce(ImGuiKey_PageDown);
    return close && job.slip ? std::optional<Wish>{ReadSlip{false}} : std::nullopt;
}

std::optional<Wish> stepKeys(const Job& job, Drafts& drafts) {
    if (pressedOnce(ImGuiKey_PageDown))
        return stepOn(job, drafts);
    return pressedOnce(ImGuiKey_PageUp) ? stepBack(job, drafts) : std::nullopt;
}

std::optional<Wish> jobKeys(const Job& job, Drafts& drafts) {
    // What was asked in a box that was closed meanwhile is not asked any more.
    drafts.askedStartAgain = drafts.askedStartAgain && drafts.box == Drafts::Box::File;
    const ImGuiIO& io = ImGui::GetIO();
    if (io.WantTextInput)
        return std::nullopt;
    std::optional<Wish> wish = namedKeys(job, drafts);
    for (const ImWchar letter : io.InputQueueCharacters)
        if (!wish && !io.KeyCtrl && !isTypedOnCard(job, letter))
            wish = letterKeys(job, letter, drafts);
    return wish ? wish : stepKeys(job, drafts);
}

} // namespace gapwise
