#pragma once

#include "geometry/datum/datum.h"
#include "models/build/build.h"
#include "models/frame/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace gapwise {

/// What a person did. A build is the fold of its events (see log.h); nothing else changes it.

/// The workpiece lies another way. Until `confirmed` the drain is only believed to point there.
struct AttitudeChanged {
    Attitude attitude{};
    bool confirmed = false;
};

/// A part went into a seat. Dropped in the picture it has a clock and a face; from the tray both are not
/// known. A screw goes in with all the pieces of its set.
struct PartPlaced {
    PartId part{};
    SeatId seat{};
    std::optional<Clock> index{};
    std::optional<Side> referenceFaceLooks{};
    std::optional<View> setIn{};
};

/// The part in a seat was taken off again; a screw with all the pieces of its set.
struct PartTakenOff {
    SeatId seat{};
};

/// The index of the part in a seat was turned to a clock (relative to the top of what carries it), in a view.
struct IndexTurned {
    SeatId seat{};
    Clock index = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    std::optional<View> setIn{};
};

/// The part in a seat was set with its reference face to a side, in a view.
struct FaceTurned {
    SeatId seat{};
    Side referenceFaceLooks = Side::Compressor;
    std::optional<View> setIn{};
};

/// Somebody said what he sees of the part in a seat, before the demand was shown or after: where the index
/// points, which way the reference face looks, whether it is fully home.
struct SeatingConfirmed {
    SeatId seat{};
    Confirmation confirmation{};
    std::optional<Clock> index{};
    std::optional<Side> referenceFaceLooks{};
    std::optional<bool> home{};
    std::optional<View> setIn{};
};

/// Somebody looked at the demand of a seat before saying what he sees there. Nothing takes that back.
struct LookedFirst {
    SeatId seat{};
};

/// The part in a seat is fully home, or is not.
struct HomeStated {
    SeatId seat{};
    bool home = true;
};

struct RotorTurned {
    Degrees rotor{0.0}; ///< Clock of the rotor mark, clockwise from the compressor side.
};

struct StepDone {
    StepId step{};
};

struct StepUndone {
    StepId step{};
};

/// Takes back the last event that stands.
struct Undone {};

/// Brings back the event that was taken back last.
struct Redone {};

using Event =
    std::variant<AttitudeChanged, PartPlaced, PartTakenOff, IndexTurned, FaceTurned, SeatingConfirmed,
                 LookedFirst, HomeStated, RotorTurned, StepDone, StepUndone, Undone, Redone>;

/// `attitude`, `placed`, `taken_off`, … as in journals.
std::string_view nameOf(const Event& event);

/// The event as one line of JSON, without a line break.
std::string toJsonLine(const Event& event);

/// Reads what toJsonLine wrote. `where` names the line in errors.
Result<Event> parseEvent(std::string_view line, std::string_view where);

} // namespace gapwise
