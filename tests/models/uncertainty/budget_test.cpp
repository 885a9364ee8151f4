#include "models/uncertainty/budget.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <numeric>
#include <vector>

namespace gapwise::test {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

/// JCGM 100:2008 table H.1 (UNC-01), nanometres: l_S, d, the rest of the two temperature terms.
std::vector<UncertaintyComponent> gaugeBlock() {
    constexpr double kLengthNm = 50.000623e6;
    return {{.name = "standard", .standard = 25.0, .degreesOfFreedom = 18},
            {.name = "difference", .standard = 9.7, .degreesOfFreedom = 25.6},
            {.name = "expansion apart",
             .sensitivity = -kLengthNm * -0.1,
             .standard = 0.58e-6,
             .degreesOfFreedom = 50},
            {.name = "temperature apart",
             .sensitivity = -kLengthNm * 11.5e-6,
             .standard = 0.029,
             .degreesOfFreedom = 2}};
}

} // namespace

// JCGM 100:2008 table H.1 (UNC-03).
TEST(Budget, CombinesTheGaugeBlockOfH1) {
    const std::vector<UncertaintyComponent> components = gaugeBlock();
    EXPECT_NEAR(std::abs(components[2].sensitivity) * components[2].standard, 2.9, 0.05);
    EXPECT_NEAR(std::abs(components[3].sensitivity) * components[3].standard, 16.6, 0.1);
    EXPECT_NEAR(combinedStandard(components), 31.71, 0.4);
    EXPECT_NEAR(std::pow(combinedStandard(components), 2), 1002.0, 8.0);
}

// JCGM 100:2008 H.1.3.2 (UNC-04); its 25.6 comes of 9.7, rounded before it goes on: 25.45 unrounded.
TEST(Budget, DifferenceOfGaugeBlocksHas256DegreesOfFreedom) {
    const std::array<UncertaintyComponent, 3> components{{{.standard = 5.8, .degreesOfFreedom = 24},
                                                          {.standard = 3.9, .degreesOfFreedom = 5},
                                                          {.standard = 6.7, .degreesOfFreedom = 8}}};
    EXPECT_NEAR(combinedStandard(components), 9.7, 0.05);
    const double rounded = std::pow(9.7 / combinedStandard(components), 4);
    EXPECT_NEAR(effectiveDegreesOfFreedom(components) * rounded, 25.6, 0.05);
}

// JCGM 100:2008 H.1.6 (UNC-05, UNC-06).
TEST(Budget, ExpandsTheGaugeBlockTo99Percent) {
    EXPECT_NEAR(effectiveDegreesOfFreedom(gaugeBlock()), 16.7, 0.1);
    const ExpandedUncertainty expanded = expandedUncertainty(gaugeBlock(), 0.99);
    EXPECT_EQ(expanded.degreesOfFreedom, 16.0);
    EXPECT_NEAR(expanded.coverageFactor, 2.92, 0.005);
    EXPECT_NEAR(expanded.expanded, 93.0, 0.5);
}

// A course's example (UNC-15).
TEST(Budget, OneOfTwoComponentsWithFewRepeats) {
    const std::array<UncertaintyComponent, 2> components{
        {{.standard = 0.57, .degreesOfFreedom = 9}, {.standard = 0.25}}};
    EXPECT_NEAR(effectiveDegreesOfFreedom(components), 12.8, 0.1);
    EXPECT_EQ(expandedUncertainty(components).degreesOfFreedom, 12.0);
}

TEST(Budget, EqualComponentsAddTheirDegreesOfFreedom) {
    const std::vector<UncertaintyComponent> components(4, {.standard = 0.1, .degreesOfFreedom = 1});
    EXPECT_EQ(expandedUncertainty(components).degreesOfFreedom, 4.0);
}

TEST(Budget, WithoutFewRepeatsTheFactorIsNormal) {
    const std::array<UncertaintyComponent, 1> components{{{.standard = 0.5}}};
    const ExpandedUncertainty expanded = expandedUncertainty(components, 0.95);
    EXPECT_EQ(expanded.degreesOfFreedom, kInfinite);
    EXPECT_NEAR(expanded.expanded, 0.98, 1e-4);
}

TEST(Budget, OfNothingIsNothing) {
    EXPECT_EQ(combinedStandard({}), 0.0);
    EXPECT_EQ(effectiveDegreesOfFreedom({}), kInfinite);
    const std::array<UncertaintyComponent, 1> components{{{.standard = 0.0, .degreesOfFreedom = 3}}};
    EXPECT_EQ(sharesOfVariance(components), std::vector{0.0});
}

// Worked examples, reckoned (STK-03, STK-04): links of a chain as components.
TEST(Budget, AddsLinksByTheRootOfTheSumOfSquares) {
    EXPECT_NEAR(combinedStandard(std::vector<UncertaintyComponent>(10, {.standard = 0.1})), 0.316, 0.001);
    const std::array<UncertaintyComponent, 3> three{
        {{.standard = 0.20}, {.standard = 0.10}, {.standard = 0.15}}};
    EXPECT_NEAR(combinedStandard(three), 0.269, 0.001);
}

namespace {

std::vector<UncertaintyComponent> drawnComponents() {
    std::vector<UncertaintyComponent> components;
    for (int number = *rc::gen::inRange(1, 8); number > 0; --number)
        components.push_back({.sensitivity = *rc::gen::inRange(-300, 300) / 100.0,
                              .standard = *rc::gen::inRange(1, 1000) / 1000.0,
                              .degreesOfFreedom = static_cast<double>(*rc::gen::inRange(1, 50))});
    components.front().sensitivity = 1.0;
    return components;
}

} // namespace

RC_GTEST_PROP(Budget, SharesSumToOne, ()) {
    const std::vector<double> shares = sharesOfVariance(drawnComponents());
    RC_ASSERT(std::abs(std::accumulate(shares.begin(), shares.end(), 0.0) - 1.0) < 1e-12);
}

// JCGM 100:2008 G.4.1: never above the sum of the components', never below the least of them.
RC_GTEST_PROP(Budget, EffectiveDegreesLieBetweenLeastAndSum, ()) {
    const std::vector<UncertaintyComponent> components = drawnComponents();
    double least = kInfinite;
    double sum = 0.0;
    for (const UncertaintyComponent& component : components) {
        least = std::min(least, component.degreesOfFreedom);
        sum += component.degreesOfFreedom;
    }
    const double effective = effectiveDegreesOfFreedom(components);
    RC_ASSERT(effective > least - 1e-9 && effective < sum + 1e-9);
}

RC_GTEST_PROP(Budget, NeverExceedsTheSumOfTheParts, ()) {
    const std::vector<UncertaintyComponent> components = drawnComponents();
    double sum = 0.0;
    for (const UncertaintyComponent& component : components)
        sum += std::abs(component.sensitivity) * component.standard;
    RC_ASSERT(combinedStandard(components) < sum + 1e-12);
}

} // namespace gapwise::test
