#include "models/uncertainty/decision.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <vector>

namespace gapwise::test {

namespace {

/// Fifteen and a half, ± 0.005, as a published test has it (UNC-24): reckoned, so that binary fractions
/// disagree with the printed bounds.
const ToleranceInterval kFifteen{.least = 15.590 - 0.005, .most = 15.590 + 0.005};
const ToleranceInterval kTen{.least = 9.95, .most = 10.05};

Conformity printed(double value, const ToleranceInterval& limits) {
    return decide(value, 0.0, limits).conformity;
}

Conformity guarded(double value, double expandedU, const ToleranceInterval& limits) {
    return decide(value, expandedU, limits, DecisionRule::Guarded).conformity;
}

} // namespace

// A published test of simple acceptance (UNC-24).
TEST(AsPrinted, PassesUpToTheLimitItself) {
    EXPECT_EQ(printed(15.590, kFifteen), Conformity::Within);
    EXPECT_EQ(printed(15.595, kFifteen), Conformity::Within);
    EXPECT_EQ(printed(15.585, kFifteen), Conformity::Within);
    EXPECT_EQ(printed(15.610, kFifteen), Conformity::Outside);
}

// Good practice (ENG-16): 0.06804 is shown as 0.068.
TEST(AsPrinted, JudgesTheUnroundedValue) {
    EXPECT_EQ(printed(0.06804, {.most = 0.068}), Conformity::Outside);
    EXPECT_EQ(printed(0.068, {.most = 0.068}), Conformity::Within);
}

TEST(AsPrinted, SaysCloseWhereTheBandHoldsALimit) {
    EXPECT_FALSE(decide(0.070, 0.006, {.least = 0.050, .most = 0.090}).close);
    EXPECT_TRUE(decide(0.086, 0.006, {.least = 0.050, .most = 0.090}).close);
    EXPECT_TRUE(decide(0.094, 0.006, {.least = 0.050, .most = 0.090}).close);
    EXPECT_TRUE(decide(0.051, 0.006, {.least = 0.050, .most = 0.090}).close);
    EXPECT_FALSE(decide(0.084, 0.006, {.least = 0.050, .most = 0.090}).close);
}

TEST(AsPrinted, UncertaintyChangesNoVerdict) {
    const Decision decision = decide(0.089, 0.5, {.most = 0.090});
    EXPECT_EQ(decision.conformity, Conformity::Within);
    EXPECT_EQ(decision.guardBand, 0.0);
}

TEST(AsPrinted, OneLimitLeavesTheOtherSideOpen) {
    EXPECT_EQ(printed(-1e6, {.most = 1.0}), Conformity::Within);
    EXPECT_EQ(printed(1e6, {.least = 1.0}), Conformity::Within);
    EXPECT_EQ(printed(0.9, {.least = 1.0}), Conformity::Outside);
}

// ISO 14253-1, as its editions of 1998 and 2013 are read (UNC-25).
TEST(Guarded, LeavesUOnEitherSideUndecided) {
    EXPECT_EQ(guarded(15.5900, 0.002, kFifteen), Conformity::Within);
    EXPECT_EQ(guarded(15.5945, 0.002, kFifteen), Conformity::NotProven);
    EXPECT_EQ(guarded(15.5960, 0.002, kFifteen), Conformity::NotProven);
    EXPECT_EQ(guarded(15.5980, 0.002, kFifteen), Conformity::Outside);
}

// ISO 14253-1, from memory (UNC-26).
TEST(Guarded, BoundariesBelongToWhatIsProven) {
    EXPECT_EQ(guarded(10.01, 0.04, kTen), Conformity::Within);
    EXPECT_EQ(guarded(10.09, 0.04, kTen), Conformity::Outside);
    EXPECT_EQ(guarded(9.99, 0.04, kTen), Conformity::Within);
    EXPECT_EQ(guarded(9.91, 0.04, kTen), Conformity::Outside);
}

// A page prints "reject" here; neither conformity nor its contrary is proven (UNC-26, BAD-08).
TEST(Guarded, TenPointZeroThreeIsNoReject) {
    EXPECT_EQ(guarded(10.03, 0.04, kTen), Conformity::NotProven);
    EXPECT_EQ(guarded(9.97, 0.04, kTen), Conformity::NotProven);
}

// Several pages call simple acceptance the default of ISO 14253-1; it asks for proof (BAD-11).
TEST(Guarded, IsNotSimpleAcceptance) {
    EXPECT_EQ(printed(10.045, kTen), Conformity::Within);
    EXPECT_EQ(guarded(10.045, 0.02, kTen), Conformity::NotProven);
    EXPECT_EQ(printed(10.055, kTen), Conformity::Outside);
    EXPECT_EQ(guarded(10.055, 0.02, kTen), Conformity::NotProven);
}

// ISO 14253-1 (UNC-28): who delivers proves conformity with T − U, who receives its contrary with T + U.
TEST(Guarded, UncertaintyCountsAgainstWhoMustProve) {
    for (const double value : {10.02, 10.04, 10.05, 10.06, 10.08}) {
        const bool supplierProves = value <= 10.05 - 0.04 + 1e-9;
        const bool customerProves = value >= 10.05 + 0.04 - 1e-9;
        EXPECT_FALSE(supplierProves || customerProves);
        EXPECT_EQ(guarded(value, 0.04, {.most = 10.05}), Conformity::NotProven);
    }
}

TEST(Guarded, NothingIsProvenWithinANarrowWindow) {
    for (const double value : {9.96, 10.00, 10.04})
        EXPECT_EQ(guarded(value, 0.06, kTen), Conformity::NotProven);
    EXPECT_EQ(guarded(10.12, 0.06, kTen), Conformity::Outside);
}

// ISO 14253-1:2017, from memory (UNC-27): 1.65·u, where U is 2·u.
TEST(Guarded, TheBandIsASetting) {
    const double u = 0.020;
    EXPECT_NEAR(guardBand95(u), 0.0329, 5e-5);
    EXPECT_NEAR(guardBand95(1.0), 1.6449, 1e-4);
    const Decision decision = decide(10.015, 2.0 * u, kTen, {DecisionRule::Guarded, guardBand95(1.0) / 2.0});
    EXPECT_NEAR(decision.guardBand, 0.0329, 5e-5);
    EXPECT_EQ(decision.conformity, Conformity::Within);
    EXPECT_EQ(guarded(10.015, 2.0 * u, kTen), Conformity::NotProven);
}

// GUM, reckoned (ENG-14).
TEST(Change, CountsBeyondTheRootOfBothSquares) {
    EXPECT_NEAR(leastSignificantChange(5.0, 5.0), 14.1, 0.05);
    EXPECT_TRUE(isSignificant(-14.2, leastSignificantChange(5.0, 5.0)));
    EXPECT_FALSE(isSignificant(14.1, leastSignificantChange(5.0, 5.0)));
    EXPECT_FALSE(isSignificant(0.0, leastSignificantChange(0.0, 0.0)));
}

namespace {

double drawn(int least, int most) {
    return *rc::gen::inRange(least, most) / 1000.0;
}

} // namespace

RC_GTEST_PROP(Guarded, MoreUncertaintyProvesNoMore, ()) {
    const ToleranceInterval limits{.least = 1.0, .most = 1.0 + drawn(1, 1000)};
    const double value = drawn(500, 2500);
    const double uncertainty = drawn(0, 300);
    const Conformity wide = guarded(value, uncertainty + drawn(0, 300), limits);
    RC_ASSERT(wide == Conformity::NotProven || wide == guarded(value, uncertainty, limits));
}

RC_GTEST_PROP(Guarded, WithoutUncertaintyIsAsPrinted, ()) {
    const ToleranceInterval limits{.least = 1.0, .most = 1.5};
    const double value = drawn(500, 2500);
    RC_ASSERT(guarded(value, 0.0, limits) == printed(value, limits));
}

RC_GTEST_PROP(Guarded, IsUndecidedExactlyWhereTheBandHoldsALimit, ()) {
    const ToleranceInterval limits{.least = 1.0, .most = 1.5};
    const Decision decision = decide(drawn(500, 2500), drawn(0, 250), limits, DecisionRule::Guarded);
    RC_ASSERT((decision.conformity == Conformity::NotProven) == decision.close);
}

RC_GTEST_PROP(Guarded, MirrorsAtTheOtherLimit, ()) {
    const double value = drawn(-2000, 2000);
    const double uncertainty = drawn(0, 500);
    RC_ASSERT(guarded(value, uncertainty, {.most = 0.4}) == guarded(-value, uncertainty, {.least = -0.4}));
}

} // namespace gapwise::test
