#include "geometry/datum/angle.h"

#include <cmath>
#include <numbers>

namespace gapwise {

Degrees wrapped(Degrees angle) {
    double turned = std::fmod(angle.value, 360.0);
    if (turned < 0.0)
        turned += 360.0;
    // A tiny negative angle plus 360 rounds to 360 itself; adding 0 turns -0, which prints as "-0", into 0.
    return Degrees{turned >= 360.0 ? 0.0 : turned + 0.0};
}

Degrees wrappedHalf(Degrees angle) {
    const double turned = wrapped(angle).value;
    return Degrees{turned > 180.0 ? turned - 360.0 : turned};
}

Degrees apart(Degrees a, Degrees b) {
    return Degrees{std::abs(wrappedHalf(a - b).value)};
}

bool within(Degrees a, Degrees b, Degrees tolerance) {
    return apart(a, b) <= tolerance + kAngleRounding;
}

double radians(Degrees angle) {
    return angle.value * std::numbers::pi / 180.0;
}

Degrees degreesFromRadians(double radians) {
    return Degrees{radians * 180.0 / std::numbers::pi};
}

} // namespace gapwise
