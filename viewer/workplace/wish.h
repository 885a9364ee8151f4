#pragma once

#include "models/job/event.h"
#include "viewer/workplace/about.h"
#include "viewer/workplace/measures_page.h"
#include "viewer/workplace/standpoint.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace gapwise {

/// What the program is used for: a rehearsal, work at the bench, or showing it to others.
enum class Use { Practise, Bench, Show };

/// `practise`, `bench` or `show`, as in journals; and back, nothing for any other word.
std::string_view nameOf(Use use);
std::optional<Use> useNamed(std::string_view name);

/// What a panel asks for. Panels keep nothing and change nothing; the workplace grants a wish or says why
/// not.

/// An act on the cartridge.
struct Act {
    Event event{};
};
/// Take the part of a seat, or one from the tray, in hand: its card opens. Nothing puts it down: the card of
/// the step that is open lies there again.
struct TakeInHand {
    std::optional<PartId> part{};
};
/// Open the card of a step: what was in hand is put down. Nothing closes it.
struct OpenStep {
    std::optional<StepId> step{};
};
/// Take the wrench to a fastener: its card lies over that of the step. Nothing puts the wrench down.
struct OpenFastener {
    std::optional<FastenerId> fastener{};
};
/// Take the gauge to a measurement: its card lies over that of the step, and over the sheet of measurements.
/// One that is judged by eye has no card: the page of the parts opens. Nothing lays the gauge away.
struct OpenMeasurement {
    std::optional<MeasurementId> measurement{};
};
/// Lay the sheet of measurements open, or turn to another page of it. Nothing lays it away.
struct ReadMeasures {
    std::optional<MeasuresPage> page{};
};
/// Lay the sheet about a part open, or turn its picture. Nothing lays it away.
struct ReadAbout {
    std::optional<About> about{};
};
/// Look from elsewhere, pull apart, zoom.
struct LookAgain {
    Standpoint standpoint{};
};
/// Turn the workpiece, named in the observer's picture.
struct TurnPiece {
    TurningMove move = TurningMove::Rolled;
};
/// The piece was not turned after all: nothing held the rotor.
struct TurnGivenUp {};
/// It was, with the rotor loose in it: that is written down.
struct TurnedAllTheSame {};
/// Answer to `Where does the drain point now?`, as seen in the current attitude.
struct DrainSaid {
    Degrees drain{180.0};
};
/// A gap is being turned: shown, but not done until the mouse is let go.
struct Turning {
    SeatId seat{};
    Clock index = Clock::seenFrom(Side::Compressor, Degrees{0.0});
};
/// The turning was given up.
struct TurningLeft {};
/// Show the demanded window before saying what is seen; it is recorded so.
struct LookFirst {
    SeatId seat{};
};
/// What is seen of a seating, said: the gap on the bare dial (as seen in the current view) and the visible
/// face.
struct SaySeen {
    SeatId seat{};
    std::optional<Degrees> gapSeen{};
    std::optional<bool> referenceFaceVisible{};
    std::string by{};
};
struct StartJob {
    std::string frame{};
    Use use = Use::Practise;
    std::filesystem::path sheet{}; ///< A build sheet to begin with, or empty.
};
struct ContinueJob {
    std::filesystem::path journal{};
};
struct SaveSheet {
    std::filesystem::path file{};
};
/// Lay the slip for the next shift open, or away.
struct ReadSlip {
    bool open = true;
};
/// Save the slip as text.
struct SaveSlip {
    std::filesystem::path file{};
};
struct StartAgain {};
struct ToOpening {};
struct DismissNote {};

using Wish = std::variant<Act, TakeInHand, OpenStep, OpenFastener, OpenMeasurement, ReadMeasures, ReadAbout,
                          LookAgain, TurnPiece, TurnGivenUp, TurnedAllTheSame, DrainSaid, Turning,
                          TurningLeft, LookFirst, SaySeen, StartJob, ContinueJob, SaveSheet, ReadSlip,
                          SaveSlip, StartAgain, ToOpening, DismissNote>;

} // namespace gapwise
