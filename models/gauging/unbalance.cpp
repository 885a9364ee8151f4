#include "models/gauging/unbalance.h"

#include "models/gauging/band.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

/// No plane has less than this of the total, nor the other more than what is left (ISO 21940-11).
constexpr double kLeastShare = 0.3;

double radiansPerSecond(double speedRpm) {
    assert(speedRpm > 0.0);
    return speedRpm * std::numbers::pi / 30.0;
}

} // namespace

double permissibleEccentricityUm(double gradeMmPerS, double speedRpm) {
    assert(gradeMmPerS > 0.0);
    return gradeMmPerS / radiansPerSecond(speedRpm) * 1000.0;
}

double permissibleUnbalanceGmm(double gradeMmPerS, double massKg, double speedRpm) {
    assert(massKg > 0.0);
    // Micrometres times kilograms are gram-millimetres.
    return permissibleEccentricityUm(gradeMmPerS, speedRpm) * massKg;
}

Result<PlaneShares> splitOverPlanes(double totalGmm, const BalancePlanes& planes, std::string_view where) {
    assert(totalGmm > 0.0);
    const Band between = bandOf(planes.aMm, planes.bMm);
    const double span = between.most - between.least;
    if (!(span > 0.0))
        return Error{std::string{where}, fmt::format("both planes at {} mm", planes.aMm),
                     "two planes apart from each other"};
    if (!holds(between, planes.centreMm))
        return Error{
            std::string{where}, fmt::format("a centre of gravity at {} mm", planes.centreMm),
            fmt::format("one between the planes, {} to {} mm: an overhung rotor is not split by this rule",
                        between.least, between.most)};
    const double shareA =
        std::clamp(std::abs(planes.bMm - planes.centreMm) / span, kLeastShare, 1.0 - kLeastShare);
    return PlaneShares{.aGmm = totalGmm * shareA, .bGmm = totalGmm * (1.0 - shareA)};
}

} // namespace gapwise
