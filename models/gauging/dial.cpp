#include "models/gauging/dial.h"

#include "models/gauging/band.h"

#include <cassert>
#include <cmath>
#include <vector>

namespace gapwise {

double axialClearanceMm(const PushPull& read) {
    return std::abs(read.towardCompressorMm - read.towardTurbineMm);
}

Repeats axialClearance(std::span<const PushPull> reads) {
    std::vector<double> clearances;
    clearances.reserve(reads.size());
    for (const PushPull& read : reads)
        clearances.push_back(axialClearanceMm(read));
    return repeatsOf(clearances);
}

bool springsBack(double heldMm, double releasedMm) {
    return std::abs(heldMm - releasedMm) > kMostSpringBackMm + kLengthRoundingMm;
}

double totalReadingMm(double eccentricityMm) {
    return 2.0 * eccentricityMm;
}

double eccentricityFromTotalMm(double totalMm) {
    return totalMm / 2.0;
}

double alongAxisMm(double readMm, Degrees askew) {
    assert(std::abs(askew.value) < 90.0);
    return readMm * std::cos(radians(askew));
}

double noseDepthMm(double oneWayMm, double turnedMm) {
    return (oneWayMm + turnedMm) / 2.0;
}

NoseCheck noseCheck(double towardTurbineMm, double towardCompressorMm, double dialMm) {
    const double clearance = towardTurbineMm - towardCompressorMm;
    const double off = clearance - dialMm;
    return {.clearanceMm = clearance,
            .offMm = off,
            .agrees = std::abs(off) <= kNoseDepthAgreementMm + kLengthRoundingMm};
}

} // namespace gapwise
