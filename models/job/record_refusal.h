#pragma once

#include "models/job/log.h"

namespace gapwise {

/// Why what was done or said is not taken down: numbers that are none, things that the frame does not have, a
/// screw whose turn it is not.
Errors refusalOfTurning(const Frame& frame, const JobState& state, const AttitudeChanged& event);
Errors refusalOfTightening(const Frame& frame, const JobState& state, const Tightened& event);
Errors refusalOfLoosening(const Frame& frame, const JobState& state, const Loosened& event);
Errors refusalOfAnswer(const Frame& frame, const JobState& state, const Answered& event);
Errors refusalOfCondition(const Build& build, const ConditionStated& event);
Errors refusalOfNutLine(const Frame& frame, const JobState& state, const NutLineRead& event);
Errors refusalOfCaution(const Frame& frame, const CautionAcknowledged& event);
Errors refusalOfPerson(const PersonCame& event);
Errors refusalOfNote(const NoteWritten& event);

} // namespace gapwise
