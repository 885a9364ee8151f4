#pragma once

#include "geometry/datum/view.h"
#include "models/frame/frame.h"

#include <string>
#include <vector>

namespace gapwise {

/// A screw where it sits on its flange.
struct FlangeScrew {
    int number = 1;
    Degrees at{0.0};       ///< Clockwise from the housing's top, as seen from the side its head looks to.
    double radiusMm = 0.0; ///< From the shaft; 0 for a nut on it, and where the frame does not draw it.
    SeatId seat{};         ///< Empty where the frame does not draw it.
};

/// The screws of one flange, by number.
struct FlangeGroup {
    std::string name{};
    /// False: the frame has no pieces of it, so that its screws stand in an even ring that is turned to no
    /// clock.
    bool drawn = false;
    std::vector<FlangeScrew> screws{};
};

/// The groups of a fastener's plan, one entry each; none without a plan. Drawn screws are numbered clockwise
/// as whoever tightens them sees them, from the first one at or after the housing's top on: as the pieces of
/// a frame are named.
std::vector<FlangeGroup> flangeOf(const Frame& frame, const Fastener& fastener);

/// How whoever tightens a fastener has its flange before him.
struct Facing {
    View view{};             ///< From the side that the heads look to.
    bool fromBehind = false; ///< As he stands, he looks at the back of the heads.
    EndUp up = EndUp::Level; ///< How the piece lies.

    Degrees inletAt() const { return wrapped(view.top); }
    Degrees drainAt() const { return wrapped(view.top + Degrees{180.0}); }
    /// Where the front of the bench appears; a level piece has none, its upper side is at 0.
    Degrees towardYouAt() const { return Degrees{fromBehind ? 0.0 : 180.0}; }
    Degrees seen(const FlangeScrew& screw) const;
};

/// From behind an upright piece it is what one sees from below, bent over the bench: left stays left, what is
/// toward one appears on top. A level piece is walked round.
Facing facingOf(const Fastener& fastener, const Attitude& attitude, const Observer& observer);

/// `seen from the compressor side, looking down on the heads` and the like.
std::string facingWords(const Facing& facing);

} // namespace gapwise
