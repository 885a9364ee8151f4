#include "models/gauging/repeats.h"

#include "models/gauging/band.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace gapwise {

Repeats repeatsOf(std::span<const double> readings) {
    assert(!readings.empty());
    const auto [least, most] = std::ranges::minmax(readings);
    const double sum = std::accumulate(readings.begin(), readings.end(), 0.0);
    return {.count = readings.size(),
            .mean = sum / static_cast<double>(readings.size()),
            .least = least,
            .most = most,
            .spread = most - least};
}

bool repeatable(const Repeats& repeats, double allowedSpread) {
    return repeats.spread <= allowedSpread + kLengthRoundingMm;
}

} // namespace gapwise
