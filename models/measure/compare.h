#pragma once

#include "models/measure/report.h"

#include <set>

namespace gapwise {

/// Parts that are not the old ones: decided to be renewed, or seated as new.
std::set<PartId> renewedParts(const Build& build);

/// What was read before beside what was read since: which way the quantity should have gone follows from what
/// was renewed and done. Compared only when both were read by the same method on the same part.
/// A quantity that must agree with another has that one's expectations where it has none of its own.
BeforeAndAfter compareReadings(const Frame& frame, const Build& build, const QuantityResult& result);

} // namespace gapwise
