#include "models/uncertainty/budget.h"

#include "models/uncertainty/quantiles.h"

#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

double varianceOf(const UncertaintyComponent& component) {
    assert(component.standard >= 0.0 && component.degreesOfFreedom >= 1.0);
    const double part = component.sensitivity * component.standard;
    return part * part;
}

double combinedVariance(std::span<const UncertaintyComponent> components) {
    double variance = 0.0;
    for (const UncertaintyComponent& component : components)
        variance += varianceOf(component);
    return variance;
}

} // namespace

double combinedStandard(std::span<const UncertaintyComponent> components) {
    return std::sqrt(combinedVariance(components));
}

double effectiveDegreesOfFreedom(std::span<const UncertaintyComponent> components) {
    const double variance = combinedVariance(components);
    double sum = 0.0;
    for (const UncertaintyComponent& component : components)
        sum += varianceOf(component) * varianceOf(component) / component.degreesOfFreedom;
    return sum > 0.0 ? variance * variance / sum : std::numeric_limits<double>::infinity();
}

ExpandedUncertainty expandedUncertainty(std::span<const UncertaintyComponent> components,
                                        double probability) {
    // Four components of equal weight give 4 as 3.9999…: the allowance keeps such a number whole.
    constexpr double kRounding = 1e-9;
    ExpandedUncertainty result{.standard = combinedStandard(components),
                               .degreesOfFreedom =
                                   std::floor(effectiveDegreesOfFreedom(components) + kRounding)};
    result.coverageFactor = coverageFactor(probability, result.degreesOfFreedom);
    result.expanded = result.coverageFactor * result.standard;
    return result;
}

std::vector<double> sharesOfVariance(std::span<const UncertaintyComponent> components) {
    const double variance = combinedVariance(components);
    std::vector<double> shares;
    for (const UncertaintyComponent& component : components)
        shares.push_back(variance > 0.0 ? varianceOf(component) / variance : 0.0);
    return shares;
}

} // namespace gapwise
