#pragma once

#include "viewer/workplace/workplace.h"

#include <string>

namespace gapwise {

/// The sign of a state: each is drawn as a shape of its own, so that it never rests on colour alone.
enum class DialSign {
    Holds,   ///< A tick.
    Broken,  ///< A cross.
    NotSet,  ///< A question mark.
    Open,    ///< An open ring: due, but something is not known.
    Unsaid,  ///< A dotted ring: what is seen was not said yet.
    Turning, ///< Two arrow heads.
    Empty    ///< A dash: nothing is there.
};

/// A state as it stands on the screen.
struct DialState {
    DialSign sign = DialSign::Empty;
    std::string word{}; ///< `holds`, `wrong`, `not set`, `face not set`, `not confirmed`, …
};

/// The state of all rules of a seat together, as far as it may be shown now.
DialState dialStateOf(const Job& job, const SeatId& seat);

/// The build as the screen shows it: the gap that is being turned is where it is now.
Build shownBuildOf(const Job& job);

/// The part that a seat is meant for; empty for a seat that the frame lacks.
PartId meantFor(const Frame& frame, const SeatId& seat);

/// Whether a part's index can be set there: it has one, and neither pin hole nor housing fixes it.
bool indexIsSet(const Frame& frame, const PartId& part, const SeatId& seat);

} // namespace gapwise
