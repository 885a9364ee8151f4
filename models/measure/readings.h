#pragma once

#include "models/measure/reckon.h"

namespace gapwise {

/// What was read of every quantity, evaluated: the last reading of each, and those that it took the place of.
struct AllRead {
    ReadValues before{};
    ReadValues after{};
    std::map<QuantityId, std::vector<Evaluated>> earlier{}; ///< Oldest first.
};

/// Evaluates the readings of a build and reckons what follows from them.
AllRead allRead(const Frame& frame, const Build& build, const Bench& bench, std::string_view today);

} // namespace gapwise
