#include "models/torque/turning.h"

#include <fmt/format.h>

namespace gapwise {

std::string_view nameOf(Sense sense) {
    return sense == Sense::Clockwise ? "clockwise" : "counter-clockwise";
}

std::string_view keyOf(Sense sense) {
    return sense == Sense::Clockwise ? "clockwise" : "counter_clockwise";
}

Sense tighteningAsFaced(ThreadHand hand) {
    return hand == ThreadHand::Right ? Sense::Clockwise : Sense::CounterClockwise;
}

Sense tighteningSeenFrom(const FacedThread& fastener, Side seenFrom) {
    const Sense faced = tighteningAsFaced(fastener.hand);
    return seenFrom == fastener.looksTo ? faced : opposite(faced);
}

ThreadHand handThatTightens(Sense asFaced) {
    return asFaced == Sense::Clockwise ? ThreadHand::Right : ThreadHand::Left;
}

ThreadHand handForRotation(Sense rotationFromNose) {
    return handThatTightens(opposite(rotationFromNose));
}

bool fitsRotation(ThreadHand nut, Sense rotationFromNose) {
    return nut == handForRotation(rotationFromNose);
}

std::string turningWords(const FacedThread& fastener, Side seenFrom, std::string_view what) {
    const std::string_view sense = nameOf(tighteningSeenFrom(fastener, seenFrom));
    if (seenFrom == fastener.looksTo)
        return fmt::format("{} as you face the {}", sense, what);
    return fmt::format("{} seen from the {} side, from behind the {}", sense, nameOf(seenFrom), what);
}

} // namespace gapwise
