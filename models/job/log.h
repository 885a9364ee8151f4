#pragma once

#include "models/frame/frame.h"
#include "models/job/event.h"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What is asked before a step may be called done.
enum class Demands {
    Order, ///< That what it needs is done and its parts are in: for showing how the work goes.
    All    ///< Also its fasteners, questions and cautions, and names at hold points.
};

/// All that was done to one cartridge, in order. It only ever grows: taking back is an event too.
struct Log {
    Build start{}; ///< What the job began with: the frame's name, or a build sheet that was opened.
    std::vector<Event> events{};
    bool rehearsal = false; ///< Practice, exam: no finding is overridden.
    Demands demands = Demands::All;
};

/// The state after all events that stand.
struct JobState {
    Build build{};
    bool attitudeConfirmed = true;      ///< False from a turning of the piece until the drain was confirmed.
    std::set<SeatId> lookedFirst{};     ///< Seats whose demand was shown before what is seen was said.
    std::size_t canUndo = 0;            ///< Events that can be taken back.
    std::size_t canRedo = 0;            ///< Events that can be brought back.
    std::optional<PersonCame> person{}; ///< Who works now.
    std::vector<StepSkipped> skipped{};
    std::vector<HoldPointPassed> passed{}; ///< Hold points as they stand: of each the last passing.
    /// Steps that were done and are open again, each with the step whose re-opening did it.
    std::map<StepId, StepId> reopened{};
    std::vector<Tightened> tightened{}; ///< As it stands, in the order done.
    std::vector<Answered> answers{};    ///< As they stand, one a question of a step.
    std::optional<NutLineRead> nutLine{};
    std::set<std::string> acknowledged{}; ///< Cautions.
    bool turnedUnretained =
        false; ///< The piece was turned with a loose rotor, which was not put in again since.
    bool rehearsal = false;
    Demands demands = Demands::All;

    const Answered* answer(const StepId& step, std::string_view question) const;
};

/// What may be done now: a part is refused with the reason when it or the seat is not there, the seat is
/// taken, the part sits elsewhere, or the way in is blocked; placed out of order or in the wrong groove it is
/// not: the rules say so. A step is done only when nothing that it needs is open and nothing of its own is
/// missing; a hold point only by name; a screw is tightened only in its turn; the piece is not turned over
/// while nothing holds the rotor, unless the event says that it was.
Errors refusalOf(const Frame& frame, const JobState& state, const Event& event);

/// What an event does to a build of itself; what follows from it for other steps is in stateOf. The event
/// must not be refused; a seat that is empty is left as it is.
Build withEvent(const Frame& frame, Build build, const Event& event);

/// The log folded from its start. Undone and Redone without anything to take or bring back change nothing.
/// Any order of steps in `log.start` is taken as it is. Undoing a step, touching a fastener, taking a placed
/// part off again and turning the piece with a loose rotor re-open what depends on it (see reopenedBy): work,
/// readings, torques and answers of those steps are void, signatures that follow are asked for again.
JobState stateOf(const Frame& frame, const Log& log);

/// The events of the log that stand, in order, after all taking back; LookedFirst, which cannot be taken
/// back, is not among them.
std::vector<const Event*> standingEvents(const Log& log);

/// A bush that is dropped, turned or seen within 5° of its pin falls onto it; every other part stays where it
/// was set.
Clock settledIndex(const Frame& frame, const Build& build, const IndexTurned& turned);

} // namespace gapwise
