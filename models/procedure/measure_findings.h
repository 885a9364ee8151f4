#pragma once

#include "models/procedure/hold_point.h"

#include <vector>

namespace gapwise {

/// The quantities that a step asks for and that nobody has read since, in the frame's order.
std::vector<const Quantity*> unreadAt(const Frame& frame, const Build& build, const StepId& step);

/// What readings say of the work, one finding a quantity (`measure-c`): beyond its limit (severity 3, unless
/// a concession lets the part be used or it is renewed), between the band of new parts and the limit with no
/// decision, or read by a method that its limit is not for (2).
void addMeasureFindings(const Frame& frame, const JobState& state, std::vector<ProcedureFinding>& findings);

} // namespace gapwise
