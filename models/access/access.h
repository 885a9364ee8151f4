#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

#include <string>
#include <vector>

namespace gapwise {

/// What stands in the way of a part on its straight way along the axis into a seat.
struct Blocked {
    PartId by{};
    std::string words{}; ///< `SR-TO is in the way: Ø16.7 inside, BRG-T is Ø18.9 outside`.
};

/// The seated parts that a part of `type` cannot pass on its way from the end it enters, by their (r, z)
/// outlines. A screw stands beside the shaft: it meets what covers its place, never what it goes through (the
/// parts that its fastener holds). Rings that open or close to pass a bore are let through bores, not through
/// parts. `tolerance` of 0.02 mm for line-to-line fits.
std::vector<Blocked> blockersOf(const Frame& frame, const Build& build, const PartId& part,
                                const SeatId& seat);

/// Why the part can never sit there (a ring too wide for the groove, another kind of part), or empty.
std::string misfitOf(const Frame& frame, const PartId& part, const SeatId& seat);

} // namespace gapwise
