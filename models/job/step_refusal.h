#pragma once

#include "models/job/log.h"

namespace gapwise {

/// Why a step cannot be called done, skipped, opened again, or a hold point passed.
Errors refusalOfDoing(const Frame& frame, const JobState& state, const StepDone& event);
Errors refusalOfSkipping(const Frame& frame, const JobState& state, const StepSkipped& event);
Errors refusalOfUndoing(const Frame& frame, const JobState& state, const StepUndone& event);
Errors refusalOfPassingNow(const Frame& frame, const JobState& state, const HoldPointPassed& event);

} // namespace gapwise
