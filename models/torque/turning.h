#pragma once

#include "geometry/datum/side.h"
#include "models/torque/thread.h"

#include <string>
#include <string_view>

namespace gapwise {

/// A turn as someone sees it.
enum class Sense { Clockwise, CounterClockwise };

constexpr Sense opposite(Sense sense) {
    return sense == Sense::Clockwise ? Sense::CounterClockwise : Sense::Clockwise;
}

/// `clockwise` or `counter-clockwise`.
std::string_view nameOf(Sense sense);

/// `clockwise` or `counter_clockwise`, as in files.
std::string_view keyOf(Sense sense);

/// What tightens, as seen by whoever faces the nut or the head: right-hand clockwise, left-hand
/// counter-clockwise.
Sense tighteningAsFaced(ThreadHand hand);

/// A nut or head on its thread, and the side that it looks to: the side from which one faces it.
struct FacedThread {
    ThreadHand hand = ThreadHand::Right;
    Side looksTo = Side::Compressor;
};

/// What tightens, as seen from a side; from behind it is the other way about.
Sense tighteningSeenFrom(const FacedThread& fastener, Side seenFrom);

/// The hand whose tightening turns so, as seen by whoever faces the nut.
ThreadHand handThatTightens(Sense asFaced);

/// The hand that a shaft nut at the nose must have: the drag of wheel and nut must tighten it, so it tightens
/// against the rotation of the shaft, both seen from the nose.
ThreadHand handForRotation(Sense rotationFromNose);

/// Whether a shaft nut of this hand is tightened, not loosened, by the drag of the running wheel.
bool fitsRotation(ThreadHand nut, Sense rotationFromNose);

/// `counter-clockwise as you face the nut`, or from behind `clockwise seen from the turbine side, from behind
/// the nut`. `what` is the word for it: `nut`, `head`.
std::string turningWords(const FacedThread& fastener, Side seenFrom, std::string_view what = "nut");

} // namespace gapwise
