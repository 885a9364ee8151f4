#include "models/gauging/band.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>

namespace gapwise {

Band bandOf(double one, double other) {
    return {std::min(one, other), std::max(one, other)};
}

bool holds(const Band& band, double value) {
    return value >= band.least - kLengthRoundingMm && value <= band.most + kLengthRoundingMm;
}

bool overlap(const Band& one, const Band& other) {
    return one.least <= other.most + kLengthRoundingMm && other.least <= one.most + kLengthRoundingMm;
}

std::string bandWords(const Band& band, int decimals) {
    assert(decimals >= 0 && decimals <= 6);
    const std::string least = fmt::format("{:.{}f}", band.least, decimals);
    const std::string most = fmt::format("{:.{}f}", band.most, decimals);
    return least == most ? least + " mm" : fmt::format("{}–{} mm", least, most);
}

} // namespace gapwise
