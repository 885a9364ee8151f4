#pragma once

#include "models/check/check.h"

#include <string>

namespace gapwise {

/// What carries the part in a seat at this moment of the build; null for a seat that nothing carries (the
/// housing's).
const Carrier* currentCarrierOf(const Frame& frame, const Build& build, const SeatId& seat);

/// The part that is really in the seat, or the part meant for it while the seat is empty.
PartId occupantOf(const Build& build, const PartId& meantPart);

/// `rounded`, `marked`, … : what the reference face of a type is called; `reference` when it has no name.
std::string_view faceWord(const PartType* type);

/// True when the seat has a part, or is the housing's, which is filled from the start.
bool isFilled(const Frame& frame, const Build& build, const SeatId& seat);

} // namespace gapwise
