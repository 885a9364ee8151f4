#pragma once

#include "geometry/datum/angle.h"

#include <string_view>

namespace gapwise {

/// A bush that a pin keeps from turning: its play along the shaft and round it. Millimetres.

/// What a bush can move along the shaft once its outer ring is in: pocket − length, a prediction. Below 0 it
/// does not go in.
double axialFloatMm(double pocketMm, double bushMm);

/// A notch over a pin.
struct PinFit {
    double notchMm = 0.0;  ///< Width of the notch.
    double pinMm = 0.0;    ///< Diameter of the pin.
    double radiusMm = 0.0; ///< Where they meet: the bush's outer radius, above 0.
};

/// How far the bush turns from one side of the pin to the other: (w − d)/R, as an angle. Below 0 the notch
/// does not go over the pin.
Degrees pinPlay(const PinFit& fit);

/// A bush that turns further has lost its pin. Common practice, no source.
inline constexpr Degrees kLostPin{2.0};

/// What a bush that is turned by hand says of its pin. Between these two a frame's limits decide.
enum class PinState {
    Nipped, ///< It does not turn at all.
    Holds,
    Lost ///< It turns by more than kLostPin.
};
PinState pinStateOf(Degrees turned);

/// What is to be said of it, in a sentence.
std::string_view adviceFor(PinState state);

/// Feeler gaps on the two sides of the pin, the bush in the middle of its play, mm.
struct PinSides {
    double oneMm = 0.0;
    double otherMm = 0.0;
};

/// True when one side is closed, so that the pin loads the bush; both must be open.
bool pinLoadsBush(const PinSides& sides);

/// Where a pin ends and a notch begins, measured from the shaft's axis: radii and lengths, mm.
struct PinEnd {
    double boreRadiusMm = 0.0; ///< Of the housing bore that the pin stands out of.
    double projectionMm = 0.0; ///< How far it stands out.
    double bushRadiusMm = 0.0; ///< Outside of the bush.
    double notchDepthMm = 0.0; ///< Depth of the notch from there.
};

/// From the end of the pin to the bottom of the notch, mm; 0 or less touches.
double pinEndClearanceMm(const PinEnd& pin);

} // namespace gapwise
