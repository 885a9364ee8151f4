#pragma once

#include "models/job/log.h"

namespace gapwise {

/// `what: found …, allowed: …`.
Error refusal(std::string what, std::string found, std::string allowed);

/// Why parts cannot be placed or taken off.
Errors refusalOfPlacing(const Frame& frame, const Build& build, const PartPlaced& event);
Errors refusalOfTakingOff(const Frame& frame, const Build& build, const PartTakenOff& event);

/// Why nothing can be said of a seat that has nothing in it.
Errors refusalOfEmptySeat(const Build& build, const SeatId& seat);

} // namespace gapwise
