#pragma once

#include "geometry/datum/datum.h"
#include "models/build/build.h"
#include "models/frame/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gapwise {

/// What a person did. A build is the fold of its events (see log.h); nothing else changes it.

/// The workpiece lies another way. Until `confirmed` the drain is only believed to point there.
struct AttitudeChanged {
    Attitude attitude{};
    bool confirmed = false;
    bool unretained = false; ///< The rotor lay loose in it, and the person said so: it may have moved.
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

/// What the person at the bench is there for.
enum class Role { Technician, Apprentice, Instructor, Inspector };

/// `technician`, `apprentice`, `instructor`, `inspector`; and back, nothing for any other word.
std::string_view nameOf(Role role);
std::optional<Role> roleNamed(std::string_view name);

/// Who works from here on.
struct PersonCame {
    std::string name{};
    Role role = Role::Technician;
};

struct StepDone {
    StepId step{};
    std::string by{};
};

/// A step that may be left out was, with a reason that stays in the record.
struct StepSkipped {
    StepId step{};
    std::string reason{};
    std::string by{};
};

/// A step is open again, and with it every step that depended on it.
struct StepUndone {
    StepId step{};
    std::string reason{};
    std::string by{};
};

/// A finding that does not stop a hold point, and who answers for it.
struct Override {
    std::string finding{}; ///< Id of the rule, or of the finding of the procedure.
    std::string by{};
    std::string reason{};
    Role role = Role::Technician;
    std::string concession{}; ///< Its number, for a finding of severity 4.
};

/// Work goes on past a hold point: who did the work, and who saw it.
struct HoldPointPassed {
    StepId step{};
    std::string by{};
    std::string witness{};   ///< Another person; empty for a lone worker.
    bool loneWorker = false; ///< Nobody else was there, and the record says so.
    std::vector<Override> overrides{};
};

/// A screw, or the nut, was brought to the torque of a stage.
struct Tightened {
    FastenerId fastener{};
    std::size_t stage = 0; ///< Index into stagesOf(fastener).
    int group = 0;         ///< Index into its groups.
    int screw = 1;         ///< Number on its flange, from 1.
    double torqueNm = 0.0;
    bool clockwise = true;
    Side seenFrom = Side::Compressor;
    std::optional<Degrees> angle{}; ///< From snug to final.
    std::string wrench{};           ///< Its number; may be empty.
    std::string by{};
};

/// A fastener was touched after it was tightened: slackened, turned on, taken out.
struct Loosened {
    FastenerId fastener{};
    std::string reason{};
    std::string by{};
};

/// A question of a step was answered.
struct Answered {
    StepId step{};
    std::string question{}; ///< nameOf(StepQuestion), `witness-1` …, `pick-1` …, `gauge-1` ….
    std::string answer{};
    std::optional<double> amount{}; ///< A count, or in the unit of the question.
    std::string by{};
};

/// The part in a seat, or a surface of it, was stated to be new, oiled, greased, coated or dry, or not.
struct ConditionStated {
    SeatId seat{};
    std::string state{};
    bool so = true;
};

/// How far the nut stands from its old line, tightening positive, and by how much its stack changed.
struct NutLineRead {
    FastenerId fastener{};
    Degrees read{0.0};
    double stackNewMinusOldMm = 0.0;
    std::string by{};
};

/// The caution was read before the act; once a job.
struct CautionAcknowledged {
    std::string caution{};
    std::string by{};
};

/// A quantity was read. Read again, the first reading stays in the history and the last one counts.
struct ReadingTaken {
    Reading reading{};
};

/// What becomes of a part was decided, or decided anew.
struct PartDecided {
    PartDecision decision{};
};

/// Something was done that measurements show (`deposits_removed_turbine`), or was not after all.
struct WorkStated {
    std::string work{};
    bool so = true;
    std::string by{};
};

struct NoteWritten {
    std::string words{};
    std::string by{};
};

/// Takes back the last event that stands.
struct Undone {};

/// Brings back the event that was taken back last.
struct Redone {};

using Event =
    std::variant<AttitudeChanged, PartPlaced, PartTakenOff, IndexTurned, FaceTurned, SeatingConfirmed,
                 LookedFirst, HomeStated, RotorTurned, StepDone, StepUndone, Undone, Redone, PersonCame,
                 StepSkipped, HoldPointPassed, Tightened, Loosened, Answered, ConditionStated, NutLineRead,
                 CautionAcknowledged, NoteWritten, ReadingTaken, PartDecided, WorkStated>;

/// `attitude`, `placed`, `taken_off`, … as in journals.
std::string_view nameOf(const Event& event);

/// The event as one line of JSON, without a line break.
std::string toJsonLine(const Event& event);

/// Reads what toJsonLine wrote. `where` names the line in errors.
Result<Event> parseEvent(std::string_view line, std::string_view where);

} // namespace gapwise
