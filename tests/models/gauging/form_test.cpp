#include "models/gauging/form.h"

#include <gtest/gtest.h>

#include <array>
#include <vector>

namespace gapwise::test {

namespace {

/// A size that is known, not a tolerance.
Band known(double sizeMm) {
    return {sizeMm, sizeMm};
}

} // namespace

// Invented readings: two planes, two directions.
TEST(DiameterForm, TellsOvalityOfAPlaneAndTaperBetweenPlanes) {
    const std::vector<PlaneReadings> planes{{11.993, 11.990}, {11.989, 11.988}};
    const DiameterForm form = formOf(planes);
    EXPECT_EQ(form.leastMm, 11.988);
    EXPECT_EQ(form.mostMm, 11.993);
    EXPECT_NEAR(form.meanMm, 11.990, 1e-9);
    EXPECT_NEAR(form.ovalityMm, 0.003, 1e-9);
    EXPECT_NEAR(form.taperMm, 0.003, 1e-9);
}

TEST(DiameterForm, OfOneReadingHasNone) {
    const DiameterForm form = formOf(std::vector<PlaneReadings>{{11.993}});
    EXPECT_EQ(form.meanMm, 11.993);
    EXPECT_EQ(form.ovalityMm, 0.0);
    EXPECT_EQ(form.taperMm, 0.0);
}

TEST(DiameterForm, CountsEveryReadingOfUnevenPlanesOnce) {
    const DiameterForm form = formOf(std::vector<PlaneReadings>{{10.0, 10.0, 10.0}, {10.4}});
    EXPECT_NEAR(form.meanMm, 10.1, 1e-12);
    EXPECT_NEAR(form.taperMm, 0.4, 1e-12);
}

TEST(Form, RangeIsGreatestLessLeast) {
    EXPECT_NEAR(rangeMm(std::array{5.002, 4.998, 5.000, 5.001}), 0.004, 1e-12);
    EXPECT_EQ(rangeMm(std::array{5.0}), 0.0);
}

// An invented job: a flat anvil read 3.500 all over, a ball anvil found the track.
TEST(Form, TheTrackIsAsDeepAsItsDeepestPlace) {
    const std::array hub{3.500, 3.500, 3.500, 3.500};
    EXPECT_NEAR(trackDepthMm(hub, std::array{3.417, 3.415, 3.420, 3.416}), 0.085, 1e-9);
    EXPECT_NEAR(trackDepthMm(hub, hub), 0.0, 1e-12);
}

// Tolerances of two invented frames.
TEST(BearingClearances, RunFromTheClosestPairToTheLoosest) {
    const BearingClearances small =
        clearancesOf({{11.990, 11.995}, {12.030, 12.040}, {18.900, 18.910}, {19.000, 19.012}});
    EXPECT_NEAR(small.inner.least, 0.035, 1e-9);
    EXPECT_NEAR(small.inner.most, 0.050, 1e-9);
    EXPECT_NEAR(small.outer.least, 0.090, 1e-9);
    EXPECT_NEAR(small.outer.most, 0.112, 1e-9);
    EXPECT_NEAR(small.total.least, 0.125, 1e-9);
    EXPECT_NEAR(small.total.most, 0.162, 1e-9);
    const BearingClearances large =
        clearancesOf({{25.985, 25.995}, {26.070, 26.085}, {37.880, 37.895}, {38.000, 38.016}});
    EXPECT_NEAR(large.total.least, 0.180, 1e-9);
    EXPECT_NEAR(large.total.most, 0.236, 1e-9);
}

// Measured sizes of an invented job.
TEST(BearingClearances, OfKnownPartsAreNumbers) {
    const auto play = [](double journal, double inside, double outside, double bore) {
        return clearancesOf({known(journal), known(inside), known(outside), known(bore)}).total;
    };
    EXPECT_NEAR(play(11.993, 12.034, 18.905, 19.005).least, 0.141, 1e-9);
    EXPECT_NEAR(play(11.992, 12.036, 18.904, 19.007).most, 0.147, 1e-9);
    EXPECT_NEAR(play(25.990, 26.076, 37.889, 38.006).most, 0.203, 1e-9);
    EXPECT_NEAR(play(25.989, 26.079, 37.887, 38.009).most, 0.212, 1e-9);
}

// Geometry, reckoned (JB-32); common practice, no source: total play is inner plus outer clearance.
TEST(BearingClearances, AddInnerAndOuter) {
    const BearingClearances clearances = clearancesOf({known(10.0), known(10.03), known(15.0), known(15.07)});
    EXPECT_NEAR(clearances.inner.most, 0.03, 1e-9);
    EXPECT_NEAR(clearances.outer.most, 0.07, 1e-9);
    EXPECT_NEAR(clearances.total.most, 0.10, 1e-9);
}

// Invented limits: journal from 11.980, bore to 19.030, bearing as new; play up to 0.185.
TEST(BearingClearances, PartsEachInsideTheirLimitsMayBeOutsideAsAPair) {
    const BearingClearances pair = clearancesOf({known(11.980), known(12.040), known(18.900), known(19.030)});
    EXPECT_NEAR(pair.total.most, 0.190, 1e-9);
    EXPECT_FALSE(holds({0.0, 0.185}, pair.total.most));
}

} // namespace gapwise::test
