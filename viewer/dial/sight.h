#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

namespace gapwise {

/// How a ring can be looked at now.
enum class Sight {
    Plain,          ///< From its own end, nothing before it.
    ThroughTheBore, ///< Past another ring, or only from the other end.
    FromBeside,     ///< What carries it is not in the housing yet: square to the axis.
    Hidden
};

/// `in sight`, `through the bore`, `from beside`, `hidden`.
std::string_view wordOf(Sight sight);

/// How the place of `seat` can be looked at, from the end its part goes in (else from the other), by the
/// outlines of what is seated. The part itself need not be there.
Sight sightOf(const Frame& frame, const Build& build, const SeatId& seat);

/// Whether an eye straight on the axis at that end sees anything of the place.
bool inSightFrom(const Frame& frame, const Build& build, const SeatId& seat, Side eye);

} // namespace gapwise
