#include "models/uncertainty/decision.h"

#include "models/uncertainty/quantiles.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace gapwise {

namespace {

/// How far inside the nearer limit the value lies; negative beyond it.
double depthInside(double value, const ToleranceInterval& limits) {
    double depth = std::numeric_limits<double>::infinity();
    if (limits.least)
        depth = std::min(depth, value - *limits.least);
    if (limits.most)
        depth = std::min(depth, *limits.most - value);
    return depth;
}

bool straddles(double value, double expandedU, const std::optional<double>& limit) {
    return limit && std::abs(value - *limit) < expandedU - kLimitRounding;
}

Conformity conformityAt(double depth, double guard) {
    if (depth >= guard - kLimitRounding)
        return Conformity::Within;
    return depth <= -guard + kLimitRounding ? Conformity::Outside : Conformity::NotProven;
}

} // namespace

bool within(double value, const ToleranceInterval& limits) {
    return depthInside(value, limits) >= -kLimitRounding;
}

Decision decide(double value, double expandedU, const ToleranceInterval& limits, Deciding deciding) {
    assert(std::isfinite(value) && expandedU >= 0.0 && deciding.guardFactor >= 0.0);
    assert(limits.least || limits.most);
    const double guard = deciding.rule == DecisionRule::Guarded ? deciding.guardFactor * expandedU : 0.0;
    Decision decision{.close = straddles(value, expandedU, limits.least) ||
                               straddles(value, expandedU, limits.most),
                      .guardBand = guard};
    if (deciding.rule == DecisionRule::AsPrinted)
        decision.conformity = within(value, limits) ? Conformity::Within : Conformity::Outside;
    else
        decision.conformity = conformityAt(depthInside(value, limits), guard);
    return decision;
}

double guardBand(double standardU, double probability) {
    assert(standardU >= 0.0 && probability > 0.5);
    return normalQuantile(probability) * standardU;
}

double guardBand95(double standardU) {
    return guardBand(standardU, 0.95);
}

double leastSignificantChange(double standardBefore, double standardAfter, double coverageFactor) {
    assert(standardBefore >= 0.0 && standardAfter >= 0.0 && coverageFactor >= 0.0);
    return coverageFactor * std::hypot(standardBefore, standardAfter);
}

bool isSignificant(double change, double leastSignificant) {
    return std::abs(change) > leastSignificant + kLimitRounding;
}

} // namespace gapwise
