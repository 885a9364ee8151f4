#pragma once

#include "models/procedure/hold_point.h"

#include <vector>

namespace gapwise {

/// What is wrong with how a fastener was tightened: its hand, its torque, the angle of a nut, its drag, its
/// line.
void addTorqueFindings(const Frame& frame, const JobState& state, const Fastener& fastener,
                       std::vector<ProcedureFinding>& findings);

} // namespace gapwise
