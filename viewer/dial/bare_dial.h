#pragma once

#include "viewer/dial/sight.h"
#include "viewer/workplace/workplace.h"

#include <array>
#include <string>

namespace gapwise {

/// The dial of `say what you see`: drawn as the person sees the piece, with nothing demanded on it.
struct BareDial {
    View view{};                             ///< His view; clocks on this dial are as he sees them.
    bool upright = true;                     ///< Bench words of an upright piece, else of a level one.
    std::array<std::string_view, 4> words{}; ///< At 12, 3, 6 and 9: `away`, `right`, `toward you`, `left`.
    Degrees inletAt{0.0};                    ///< Where the inlet appears …
    Degrees drainAt{180.0};                  ///< … and the drain.
    PartId heldOn{}; ///< What carries the part outside the housing: to be held as it goes in, its mark
                     ///< to the inlet. Empty: the housing carries it.
    bool fromBeside = false; ///< Seen square to the axis: bench words only, and `away` is hidden.
    std::string unseen{};    ///< Why he cannot see the part from here; empty: he can.
};
BareDial bareDialOf(const Job& job, const SeatId& seat);

} // namespace gapwise
