#pragma once

#include <compare>

namespace gapwise {

/// An angle in degrees. Bare numbers never become angles unasked.
struct Degrees {
    double value = 0.0;

    constexpr Degrees() = default;
    constexpr explicit Degrees(double degrees) : value{degrees} {}
    constexpr auto operator<=>(const Degrees&) const = default;
    constexpr Degrees operator-() const { return Degrees{-value}; }
    constexpr Degrees operator+(Degrees other) const { return Degrees{value + other.value}; }
    constexpr Degrees operator-(Degrees other) const { return Degrees{value - other.value}; }
};

/// Rounding allowance when angles are compared with a limit: the boundary of a tolerance holds.
inline constexpr Degrees kAngleRounding{1e-9};

/// The same direction in [0, 360).
Degrees wrapped(Degrees angle);

/// The same turn in (-180, 180].
Degrees wrappedHalf(Degrees angle);

/// Smallest angle between two directions, in [0, 180].
Degrees apart(Degrees a, Degrees b);

/// True when `a` and `b` are at most `tolerance` apart on the circle; the boundary holds.
bool within(Degrees a, Degrees b, Degrees tolerance);

double radians(Degrees angle);
Degrees degreesFromRadians(double radians);

} // namespace gapwise
