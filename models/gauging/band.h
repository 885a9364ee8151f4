#pragma once

#include <string>

namespace gapwise {

/// From the least to the most that a quantity may be; both ends belong to it.
struct Band {
    double least = 0.0;
    double most = 0.0;

    bool operator==(const Band&) const = default;
};

/// Rounding allowance where a length in millimetres is compared with a limit: the boundary holds. A tenth of
/// a picometre is noise of reckoning, never something that was measured.
inline constexpr double kLengthRoundingMm = 1e-10;

/// The band between two numbers, whichever is the greater.
Band bandOf(double one, double other);

/// True when the value lies in the band; the ends do.
bool holds(const Band& band, double value);

/// True when some value lies in both.
bool overlap(const Band& one, const Band& other);

/// `0.13–0.16 mm`, both ends rounded to so many decimals (0 to 6); `0.13 mm` where both round alike.
std::string bandWords(const Band& band, int decimals);

} // namespace gapwise
