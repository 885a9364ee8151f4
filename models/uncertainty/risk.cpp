#include "models/uncertainty/risk.h"

#include "models/uncertainty/quantiles.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <numbers>
#include <utility>

namespace gapwise {

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

double densityOf(const NormalDistribution& normal, double value) {
    const double z = (value - normal.mean) / normal.deviation;
    return std::exp(-z * z / 2.0) / (normal.deviation * std::sqrt(2.0 * std::numbers::pi));
}

/// The chance that a part of the process has a true value in [from, to] and a measured one in `accepted`.
double madeAndAccepted(const NormalDistribution& process, double measuring, const ToleranceInterval& accepted,
                       const std::pair<double, double>& ends) {
    constexpr double kReach = 9.0; // Standard deviations; beyond lies less than a double can tell from 1.
    constexpr unsigned kDepth = 15;
    const double from = std::max(ends.first, process.mean - kReach * process.deviation);
    const double to = std::min(ends.second, process.mean + kReach * process.deviation);
    if (from >= to)
        return 0.0;
    const auto both = [&](double value) {
        return densityOf(process, value) *
               conformanceProbability({.mean = value, .deviation = measuring}, accepted);
    };
    return boost::math::quadrature::gauss_kronrod<double, 31>::integrate(both, from, to, kDepth, 1e-10);
}

} // namespace

double conformanceProbability(const NormalDistribution& value, const ToleranceInterval& limits) {
    assert(value.deviation >= 0.0);
    if (value.deviation <= 0.0)
        return within(value.mean, limits) ? 1.0 : 0.0;
    const double below = limits.most ? normalCumulative((*limits.most - value.mean) / value.deviation) : 1.0;
    return below - (limits.least ? normalCumulative((*limits.least - value.mean) / value.deviation) : 0.0);
}

GlobalRisk globalRisk(const NormalDistribution& process, double measuring, const ToleranceInterval& tolerance,
                      const ToleranceInterval& accepted) {
    assert(process.deviation > 0.0 && measuring > 0.0);
    const double least = tolerance.least.value_or(-kInfinity);
    const double most = tolerance.most.value_or(kInfinity);
    const double good = madeAndAccepted(process, measuring, accepted, {least, most});
    const double tooSmall = madeAndAccepted(process, measuring, accepted, {-kInfinity, least});
    const double tooLarge = madeAndAccepted(process, measuring, accepted, {most, kInfinity});
    return {.falseAccept = tooSmall + tooLarge,
            .falseReject = conformanceProbability(process, tolerance) - good};
}

Capability processCapability(const NormalDistribution& process, const ToleranceInterval& limits) {
    assert(process.deviation > 0.0 && (limits.least || limits.most));
    Capability capability{.outside = 1.0 - conformanceProbability(process, limits)};
    const double below = limits.least ? process.mean - *limits.least : kInfinity;
    const double above = limits.most ? *limits.most - process.mean : kInfinity;
    capability.cpk = std::min(below, above) / (3.0 * process.deviation);
    if (limits.least && limits.most)
        capability.cp = (*limits.most - *limits.least) / (6.0 * process.deviation);
    return capability;
}

double measurementCapability(double toleranceWidth, double expandedU) {
    assert(toleranceWidth >= 0.0 && expandedU > 0.0);
    return toleranceWidth / (2.0 * expandedU);
}

} // namespace gapwise
