#pragma once

#include <cstddef>
#include <span>

namespace gapwise {

/// What several readings of one quantity come to.
struct Repeats {
    std::size_t count = 0;
    double mean = 0.0;
    double least = 0.0;
    double most = 0.0;
    double spread = 0.0; ///< Most − least.
};

/// At least one reading.
Repeats repeatsOf(std::span<const double> readings);

/// True when the readings lie no further apart than is allowed; the boundary holds. Else they are read again.
bool repeatable(const Repeats& repeats, double allowedSpread);

} // namespace gapwise
