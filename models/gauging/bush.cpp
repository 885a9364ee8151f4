#include "models/gauging/bush.h"

#include "models/gauging/band.h"

#include <algorithm>
#include <cassert>

namespace gapwise {

double axialFloatMm(double pocketMm, double bushMm) {
    return pocketMm - bushMm;
}

Degrees pinPlay(const PinFit& fit) {
    assert(fit.radiusMm > 0.0);
    return degreesFromRadians((fit.notchMm - fit.pinMm) / fit.radiusMm);
}

PinState pinStateOf(Degrees turned) {
    if (turned <= kAngleRounding)
        return PinState::Nipped;
    return turned > kLostPin + kAngleRounding ? PinState::Lost : PinState::Holds;
}

std::string_view adviceFor(PinState state) {
    switch (state) {
    case PinState::Nipped: return "it does not turn at all: it is nipped";
    case PinState::Holds: return "the pin holds it";
    case PinState::Lost: return "it turns by more than 2°: it has lost its pin";
    }
    return "";
}

bool pinLoadsBush(const PinSides& sides) {
    return std::min(sides.oneMm, sides.otherMm) <= kLengthRoundingMm;
}

double pinEndClearanceMm(const PinEnd& pin) {
    return (pin.boreRadiusMm - pin.projectionMm) - (pin.bushRadiusMm - pin.notchDepthMm);
}

} // namespace gapwise
