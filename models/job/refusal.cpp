#include "models/job/log.h"

#include "geometry/base/overloaded.h"
#include "models/job/part_refusal.h"
#include "models/job/reading_refusal.h"
#include "models/job/record_refusal.h"
#include "models/job/step_refusal.h"

namespace gapwise {

Errors refusalOf(const Frame& frame, const JobState& state, const Event& event) {
    const Build& build = state.build;
    return std::visit(
        Overloaded{[&](const PartPlaced& e) { return refusalOfPlacing(frame, build, e); },
                   [&](const PartTakenOff& e) { return refusalOfTakingOff(frame, build, e); },
                   [&](const IndexTurned& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const FaceTurned& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const SeatingConfirmed& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const LookedFirst& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const HomeStated& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const AttitudeChanged& e) { return refusalOfTurning(frame, state, e); },
                   [&](const StepDone& e) { return refusalOfDoing(frame, state, e); },
                   [&](const StepSkipped& e) { return refusalOfSkipping(frame, state, e); },
                   [&](const StepUndone& e) { return refusalOfUndoing(frame, state, e); },
                   [&](const HoldPointPassed& e) { return refusalOfPassingNow(frame, state, e); },
                   [&](const Tightened& e) { return refusalOfTightening(frame, state, e); },
                   [&](const Loosened& e) { return refusalOfLoosening(frame, state, e); },
                   [&](const Answered& e) { return refusalOfAnswer(frame, state, e); },
                   [&](const ConditionStated& e) { return refusalOfCondition(build, e); },
                   [&](const NutLineRead& e) { return refusalOfNutLine(frame, state, e); },
                   [&](const CautionAcknowledged& e) { return refusalOfCaution(frame, e); },
                   [&](const PersonCame& e) { return refusalOfPerson(e); },
                   [&](const NoteWritten& e) { return refusalOfNote(e); },
                   [&](const Undone&) {
                       return state.canUndo > 0 ? Errors{}
                                                : Errors{refusal("take back", "nothing was done", "an act")};
                   },
                   [&](const Redone&) {
                       return state.canRedo > 0
                                  ? Errors{}
                                  : Errors{refusal("bring back", "nothing was taken back", "an act")};
                   },
                   [&](const ReadingTaken& e) { return refusalOfReading(frame, state, e); },
                   [&](const PartDecided& e) { return refusalOfDecision(frame, state, e); },
                   [&](const WorkStated& e) { return refusalOfWork(frame, e); },
                   [](const RotorTurned&) { return Errors{}; }},
        event);
}

} // namespace gapwise
