#pragma once

#include "models/measure/report.h"

namespace gapwise {

/// What the quantities of a part, and what a person decided, make of it: the parts that have sizes or a
/// decision, in the order of the frame. A decision is open when one is needed and nobody made it by name and
/// with a reason, or when the one made is not allowed: beyond a limit, or of a part found worn out, damaged,
/// missing or wrong, nothing is used again without the number of a concession.
std::vector<PartVerdict> partVerdicts(const Frame& frame, const Build& build,
                                      const std::vector<QuantityResult>& quantities);

/// Why a decision is not enough for a part that stands so; empty when it is.
std::string lackOf(const PartDecision& decision, Standing worst);

} // namespace gapwise
