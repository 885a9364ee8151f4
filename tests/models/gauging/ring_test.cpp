#include "models/gauging/ring.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace gapwise::test {

namespace {

RingHeat anyHeat() {
    return {.boreMm = *rc::gen::inRange(10, 120) / 1.0,
            .coldGapMm = *rc::gen::inRange(5, 60) / 100.0,
            .ringPerK = *rc::gen::inRange(80, 180) / 1e7,
            .borePerK = *rc::gen::inRange(80, 180) / 1e7,
            .ringRiseK = *rc::gen::inRange(0, 600) / 1.0,
            .boreRiseK = *rc::gen::inRange(0, 600) / 1.0};
}

} // namespace

// Common practice, no source: ring side clearance is groove width less ring width. Invented sizes.
TEST(RingGroove, SideClearanceIsGrooveLessRing) {
    EXPECT_NEAR(sideClearanceMm(1.60, 1.50), 0.10, 1e-12);
    EXPECT_NEAR(sideClearanceMm(1.50, 1.52), -0.02, 1e-12);
}

// DIN 472, reckoned (RNG-25): groove m H13 (+0.14), ring s 0/−0.06.
TEST(RingGroove, ASnapRingHasATenthToThreeTenths) {
    const Band small = sideClearance({1.1, 1.24}, {0.94, 1.0});
    EXPECT_NEAR(small.least, 0.10, 1e-12);
    EXPECT_NEAR(small.most, 0.30, 1e-12);
    const Band large = sideClearance({1.3, 1.44}, {1.14, 1.2});
    EXPECT_NEAR(large.least, 0.10, 1e-12);
    EXPECT_NEAR(large.most, 0.30, 1e-12);
}

TEST(RingGroove, FlareIsRimLessRoot) {
    EXPECT_NEAR(flareMm(1.66, 1.60), 0.06, 1e-12);
}

// Geometry (SR-13); common practice, no source: the gap grows by π times the wear of the bore.
TEST(RingGap, GrowsByPiTimesTheBore) {
    EXPECT_NEAR(gapGrowthMm(0.01), 0.0314, 2e-5);
    EXPECT_DOUBLE_EQ(gapGrowthMm(1.0), std::numbers::pi);
}

// Reckoned (SR-09): a ring warmer by 100 K in a rigid bore.
TEST(RingGap, ClosesByTheGrowthOfTheRing) {
    const RingHeat heat{.boreMm = 100, .coldGapMm = 0.5, .ringPerK = 10e-6, .ringRiseK = 100};
    EXPECT_NEAR(heat.coldGapMm - hotGapFirstOrderMm(heat), 0.3142, 1e-4);
    // The exact form leaves out that the gap itself holds no ring: 0.5 · 0.001 less.
    EXPECT_NEAR(heat.coldGapMm - hotGapMm(heat), 0.3142 - 0.0005, 1e-4);
}

// Reckoned (SR-10), cast iron as in TH-02.
TEST(RingGap, OfCastIronInCastIron) {
    const RingHeat heat{.boreMm = 20,
                        .coldGapMm = 0.25,
                        .ringPerK = 11.4e-6,
                        .borePerK = 11.4e-6,
                        .ringRiseK = 180,
                        .boreRiseK = 120};
    EXPECT_NEAR(hotGapMm(heat), 0.2075, 1e-4);
    EXPECT_NEAR(hotGapFirstOrderMm(heat), 0.2070, 1e-4);
    EXPECT_FALSE(endsButt(heat));
}

// Reckoned (SR-11).
TEST(RingGap, OfAHotterRing) {
    const RingHeat heat{.boreMm = 20,
                        .coldGapMm = 0.20,
                        .ringPerK = 11.4e-6,
                        .borePerK = 11.4e-6,
                        .ringRiseK = 300,
                        .boreRiseK = 250};
    EXPECT_NEAR(hotGapMm(heat), 0.1649, 1e-4);
    EXPECT_NEAR(hotGapFirstOrderMm(heat), 0.1642, 1e-4);
}

// A worked problem in inches and °F (SR-08): the ring grows by 0.616 in, more than its gap.
TEST(RingGap, EndsButtWhenTheRingOutgrowsIt) {
    constexpr double kInch = 25.4;
    const RingHeat heat{.boreMm = 9.625 * kInch,
                        .coldGapMm = 0.136 * kInch,
                        .ringPerK = 8.9e-5 * 1.8,
                        .ringRiseK = 230.0 / 1.8};
    EXPECT_NEAR(std::numbers::pi * 9.625, 30.238, 1e-3);
    EXPECT_NEAR((heat.coldGapMm - hotGapMm(heat)) / kInch, 0.616, 1e-3);
    EXPECT_TRUE(endsButt(heat));
}

// From memory (SR-15).
TEST(RingJoint, AStraightOneLeaksASteppedOneWhenItsOverlapHasGone) {
    EXPECT_TRUE(leaksThrough(JointForm::Straight, 0.16, 0.0));
    EXPECT_FALSE(leaksThrough(JointForm::Stepped, 0.14, 1.5));
    EXPECT_FALSE(leaksThrough(JointForm::Stepped, 1.49, 1.5));
    EXPECT_TRUE(leaksThrough(JointForm::Stepped, 1.5, 1.5));
    EXPECT_FALSE(leaksThrough(JointForm::Straight, 0.0, 0.0));
    EXPECT_NEAR(leakAreaMm2(JointForm::Straight, 0.2, 0.0, 1.5), 0.3, 1e-12);
    EXPECT_EQ(leakAreaMm2(JointForm::Stepped, 0.2, 1.5, 1.5), 0.0);
}

// One material, one temperature (SR-12): the gap only scales.
RC_GTEST_PROP(RingGap, OfOneMaterialNeverCloses, ()) {
    RingHeat heat = anyHeat();
    heat.borePerK = heat.ringPerK;
    heat.boreRiseK = heat.ringRiseK;
    const double scale = 1.0 + heat.ringPerK * heat.ringRiseK;
    RC_ASSERT(std::abs(hotGapMm(heat) - heat.coldGapMm * scale) < 1e-12 * heat.boreMm);
    RC_ASSERT(!endsButt(heat));
}

RC_GTEST_PROP(RingGap, TheColdGapForAHotOneIsItsInverse, ()) {
    const RingHeat heat = anyHeat();
    RC_ASSERT(std::abs(coldGapForMm(heat, hotGapMm(heat)) - heat.coldGapMm) < 1e-12 * heat.boreMm);
}

// First order leaves out the gap's share of the ring: g₀·α·ΔT.
RC_GTEST_PROP(RingGap, FirstOrderDiffersByTheGrowthOfTheGap, ()) {
    const RingHeat heat = anyHeat();
    const double missing = heat.coldGapMm * heat.ringPerK * heat.ringRiseK;
    RC_ASSERT(std::abs(hotGapMm(heat) - hotGapFirstOrderMm(heat) - missing) < 1e-12 * heat.boreMm);
}

} // namespace gapwise::test
