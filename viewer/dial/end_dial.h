#pragma once

#include "viewer/dial/dial_state.h"
#include "viewer/dial/sight.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// One circle of an end dial: a place whose part has an index (a gap, a notch, a mark, an opening, an arrow).
/// All clocks are as seen from the dial's side with the inlet on top.
struct DialRing {
    SeatId seat{};
    PartId part{}; ///< What sits there, or the part meant for it while it is empty.
    IndexKind index = IndexKind::Gap;
    bool filled = false;
    Sight sight = Sight::Plain;
    std::optional<Degrees> at{}; ///< Where the index points; nothing: not set.
    Degrees drawnAt{0.0};        ///< The same, or a seeded angle where it is drawn hatched.
    Degrees halfWidth{4.0};      ///< Of the gap as it is drawn.
    bool demandShown = false;
    std::vector<Arc> windows{}; ///< What the rules demand, when it may be shown; none: any clock.
    DialState state{};
    PartId readFrom{}; ///< What carries it, when the clock is read from that part's own mark; else empty.
};

/// The sign at the index of a ring: a question mark wherever it is drawn at an angle that nobody set.
DialSign signAtIndex(const DialRing& ring);

/// What the dial of one end shows. Always with the inlet on top and the drain at 6, as rules are printed.
struct EndDial {
    Side side = Side::Compressor;
    std::vector<DialRing> rings{}; ///< The one nearest to this end first.
    Degrees arrowAt{180.0};        ///< Where the arrow outside stands …
    std::string_view
        arrowWord{}; ///< … and what it points at: `you stand here`, or `bench` below a level piece.
    bool arrowBelieved = false; ///< The drain was not confirmed since the piece was turned.
};
EndDial endDialOf(const Job& job, Side side);

/// How many rings the dial of an end has.
std::size_t ringCountOf(const Frame& frame, Side side);

/// The index of a part as it is kept (relative to the top of what carries it), for a clock on the dial.
Clock indexFor(const Job& job, const SeatId& seat, const Clock& onDial);

} // namespace gapwise
