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

/// All that was done to one cartridge, in order. It only ever grows: taking back is an event too.
struct Log {
    Build start{}; ///< What the job began with: the frame's name, or a build sheet that was opened.
    std::vector<Event> events{};
    bool rehearsal = false; ///< Practice, exam: no finding is overridden.
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

    const Answered* answer(const StepId& step, std::string_view question) const;
};

/// What may be done to a build now: refused with the reason when a part or seat is not there, the seat is
/// taken, the part sits elsewhere, or the way in is blocked. Out of order or in the wrong groove is not
/// refused: the rules say so.
Errors refusalOf(const Frame& frame, const JobState& state, const Event& event);

/// The only way a build changes. The event must not be refused; a seat that is empty is left as it is.
Build withEvent(const Frame& frame, Build build, const Event& event);

/// The log folded from its start. Undone and Redone without anything to take or bring back change nothing.
JobState stateOf(const Frame& frame, const Log& log);

/// The events of the log that stand, in order, after all taking back; LookedFirst, which cannot be taken
/// back, is not among them.
std::vector<const Event*> standingEvents(const Log& log);

/// A bush that is dropped, turned or seen within 5° of its pin falls onto it; every other part stays where it
/// was set.
Clock settledIndex(const Frame& frame, const Build& build, const IndexTurned& turned);

} // namespace gapwise
