#pragma once

#include "models/procedure/step_status.h"

#include <vector>

namespace gapwise {

/// Where every step stands, in the frame's order, without the reasons.
std::vector<StepStanding> standingsOf(const StepGraph& graph, const JobState& state);

/// Nobody waits for it any more: done, skipped or not needed.
bool isSettled(StepStanding standing);

} // namespace gapwise
