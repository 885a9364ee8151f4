#pragma once

#include "models/measure/reckon.h"

namespace gapwise {

/// What was measured since, as chains count it.
std::vector<MeasuredValue> measuredValues(const ReadValues& read);

/// The readings of a build as a case for diagnosis: gaps of chains, sizes of parts with whether their method
/// can see what happened to them, and what was renewed.
CaseFile caseOf(const Frame& frame, const Build& build, const ReadValues& read);

} // namespace gapwise
