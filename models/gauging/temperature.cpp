#include "models/gauging/temperature.h"

#include <algorithm>

namespace gapwise {

double growthMm(double lengthMm, double perK, double riseK) {
    return lengthMm * perK * riseK;
}

double lengthAt20Mm(const WarmReading& reading) {
    const double gauge = 1.0 + reading.gaugePerK * (reading.gaugeC - kReferenceC);
    const double part = 1.0 + reading.partPerK * (reading.partC - kReferenceC);
    return reading.readMm * gauge / part;
}

double correctionTo20Mm(const WarmReading& reading) {
    return lengthAt20Mm(reading) - reading.readMm;
}

std::optional<Expansion> expansionOf(std::string_view material) {
    const auto* const found = std::ranges::find(kExpansions, material, &Expansion::material);
    return found == kExpansions.end() ? std::nullopt : std::optional{*found};
}

} // namespace gapwise
