#include "models/uncertainty/risk.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace gapwise::test {

namespace {

constexpr ToleranceInterval kTen{.least = 9.95, .most = 10.05};
constexpr ToleranceInterval kOne{.least = -1.0, .most = 1.0};

/// The chance that a part measured at the acceptance limit T − g is not within T.
double falseAcceptAt(double guard, double u) {
    return 1.0 - conformanceProbability({.mean = 1.0 - guard, .deviation = u}, {.most = 1.0});
}

} // namespace

// JCGM 106:2012 clause 7, reckoned (UNC-29).
TEST(ConformanceProbability, FallsTowardAndBeyondTheLimit) {
    EXPECT_NEAR(conformanceProbability({10.00, 0.02}, kTen), 0.98758, 1e-5);
    EXPECT_NEAR(conformanceProbability({10.03, 0.02}, kTen), 0.84131, 1e-5);
    EXPECT_NEAR(conformanceProbability({10.05, 0.02}, kTen), 0.50000, 1e-5);
    EXPECT_NEAR(conformanceProbability({10.09, 0.02}, kTen), 0.02275, 1e-5);
}

// JCGM 106:2012, the Zener diode, from memory (UNC-30).
TEST(ConformanceProbability, OfTheZenerDiodeIs92Percent) {
    EXPECT_NEAR(conformanceProbability({-5.47, 0.05}, {.most = -5.40}), 0.92, 0.005);
}

TEST(ConformanceProbability, IsSureWithoutUncertainty) {
    EXPECT_EQ(conformanceProbability({10.05, 0.0}, kTen), 1.0);
    EXPECT_EQ(conformanceProbability({10.06, 0.0}, kTen), 0.0);
    EXPECT_EQ(conformanceProbability({10.06, 0.1}, {}), 1.0);
}

// Tail of the normal distribution (UNC-31).
TEST(FalseAccept, AtTheAcceptanceLimitDependsOnTheGuardBand) {
    EXPECT_NEAR(falseAcceptAt(0.0, 0.1), 0.50, 0.0005);
    EXPECT_NEAR(falseAcceptAt(0.2, 0.1), 0.0228, 0.0005);
    EXPECT_NEAR(falseAcceptAt(guardBand95(0.1), 0.1), 0.050, 0.0005);
}

// Deaver (UNC-32): the process has σ = T/2, the measurement a quarter of that.
TEST(GlobalRisk, OfATestUncertaintyRatioOfFour) {
    const GlobalRisk risk = globalRisk({0.0, 0.5}, 0.125, kOne, kOne);
    EXPECT_NEAR(risk.falseAccept, 0.0080, 0.0002);
    EXPECT_NEAR(risk.falseReject, 0.0149, 0.0002);
}

// Deaver (UNC-33): half the ratio, the limits drawn in by 0.91.
TEST(GlobalRisk, AGuardFactorKeepsTheConsumersAtHalfTheRatio) {
    const GlobalRisk risk = globalRisk({0.0, 0.5}, 0.25, kOne, {.least = -0.91, .most = 0.91});
    EXPECT_NEAR(risk.falseAccept, 0.0080, 0.0005);
    EXPECT_NEAR(risk.falseReject, 0.066, 0.0005);
}

TEST(GlobalRisk, OfAnExactMeasurementIsNone) {
    const GlobalRisk risk = globalRisk({0.2, 0.7}, 1e-6, kOne, kOne);
    EXPECT_NEAR(risk.falseAccept, 0.0, 1e-5);
    EXPECT_NEAR(risk.falseReject, 0.0, 1e-5);
}

TEST(GlobalRisk, OfOneLimitIsHalfThatOfTwoAlike) {
    const GlobalRisk both = globalRisk({0.0, 0.5}, 0.05, kOne, kOne);
    const GlobalRisk one = globalRisk({0.0, 0.5}, 0.05, {.most = 1.0}, {.most = 1.0});
    EXPECT_NEAR(one.falseAccept, both.falseAccept / 2.0, 1e-8);
    EXPECT_NEAR(one.falseReject, both.falseReject / 2.0, 1e-8);
}

// A published test of a quality program (UNC-34).
TEST(ProcessCapability, OfAProcessInAndOffTheMiddle) {
    const ToleranceInterval limits{.least = 9.0, .most = 11.0};
    const Capability centred = processCapability({10.0, 0.4}, limits);
    EXPECT_NEAR(centred.cpk, 0.8333, 1e-4);
    EXPECT_NEAR(centred.outside, 0.01242, 1e-4);
    EXPECT_NEAR(centred.cp.value_or(0.0), centred.cpk, 1e-12);
    const Capability off = processCapability({10.5, 0.4}, limits);
    EXPECT_NEAR(off.cpk, 0.4167, 1e-4);
    EXPECT_NEAR(off.outside, 0.10574, 1e-4);
}

TEST(ProcessCapability, OfOneLimitHasNoWidth) {
    const Capability capability = processCapability({10.0, 0.4}, {.most = 11.0});
    EXPECT_FALSE(capability.cp);
    EXPECT_NEAR(capability.cpk, 0.8333, 1e-4);
}

// JCGM 106:2012, from memory (UNC-36).
TEST(MeasurementCapability, IsTheToleranceOverTwiceU) {
    EXPECT_DOUBLE_EQ(measurementCapability(0.10, 0.01), 5.0);
}

RC_GTEST_PROP(GlobalRisk, AWiderGuardBandMovesRiskToTheProducer, ()) {
    const double u = *rc::gen::inRange(20, 300) / 1000.0;
    const double guard = *rc::gen::inRange(0, 500) / 1000.0;
    const ToleranceInterval wide{.least = -1.0 + guard, .most = 1.0 - guard};
    const ToleranceInterval narrow{.least = -0.98 + guard, .most = 0.98 - guard};
    const GlobalRisk before = globalRisk({0.1, 0.5}, u, kOne, wide);
    const GlobalRisk after = globalRisk({0.1, 0.5}, u, kOne, narrow);
    RC_ASSERT(after.falseAccept < before.falseAccept + 1e-12);
    RC_ASSERT(after.falseReject > before.falseReject - 1e-12);
}

} // namespace gapwise::test
