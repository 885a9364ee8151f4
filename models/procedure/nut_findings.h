#pragma once

#include "models/procedure/hold_point.h"
#include "models/torque/nut_line.h"

#include <optional>
#include <vector>

namespace gapwise {

/// The three numbers of a nut line as it was read; nothing for a fastener that has no line.
std::optional<NutLineShift> nutLineShiftOf(const Fastener& fastener, const NutLineRead& read);

/// What the angle of a nut from snug to final tells, and where it stands from its old line.
void addNutFindings(const Frame& frame, const JobState& state, const Fastener& fastener,
                    std::vector<ProcedureFinding>& findings);

} // namespace gapwise
