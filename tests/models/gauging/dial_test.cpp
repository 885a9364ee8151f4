#include "models/gauging/dial.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>

namespace gapwise::test {

// Definition, reckoned (ENG-12). Common practice, no source: read while pushing and pulling.
TEST(Dial, AxialClearanceIsTheTravelWhateverTheZero) {
    EXPECT_NEAR(axialClearanceMm({.towardTurbineMm = 0.031, .towardCompressorMm = 0.112}), 0.081, 1e-12);
    EXPECT_NEAR(axialClearanceMm({.towardTurbineMm = 0.112, .towardCompressorMm = 0.031}), 0.081, 1e-12);
    EXPECT_NEAR(axialClearanceMm({.towardTurbineMm = 0.0, .towardCompressorMm = 0.081}), 0.081, 1e-12);
}

TEST(Dial, SeveralPushesAndPullsAreAveraged) {
    const std::array reads{PushPull{0.000, 0.153}, PushPull{0.010, 0.165}, PushPull{-0.002, 0.152}};
    const Repeats clearance = axialClearance(reads); // Invented readings.
    EXPECT_NEAR(clearance.mean, 0.154, 1e-12);
    EXPECT_NEAR(clearance.spread, 0.002, 1e-12);
}

// Common practice, no source.
TEST(Dial, SpringingBackByMoreThanAHundredthIsRemarked) {
    EXPECT_FALSE(springsBack(0.070, 0.060));
    EXPECT_TRUE(springsBack(0.070, 0.059));
    EXPECT_TRUE(springsBack(0.059, 0.070));
}

// Definition, reckoned (ENG-13).
TEST(Dial, ATotalReadingIsTwiceTheEccentricity) {
    EXPECT_EQ(totalReadingMm(0.010), 0.020);
    EXPECT_EQ(eccentricityFromTotalMm(0.020), 0.010);
}

// A gauge maker's table (UNC-40, UNC-41, UNC-42), and worked by hand: 1.5 % at 10°.
TEST(Dial, AskewItReadsTooMuch) {
    struct Row {
        double degrees, factor;
    };
    for (const Row& row :
         {Row{10, 0.98}, Row{20, 0.94}, Row{30, 0.87}, Row{40, 0.77}, Row{50, 0.64}, Row{60, 0.50}})
        EXPECT_NEAR(alongAxisMm(1.0, Degrees{row.degrees}), row.factor, 0.01);
    EXPECT_NEAR(alongAxisMm(0.004, Degrees{60.0}), 0.002, 1e-12);
    EXPECT_NEAR(alongAxisMm(0.05, Degrees{30.0}), 0.0435, 5e-4);
    EXPECT_NEAR(1.0 - alongAxisMm(1.0, Degrees{10.0}), 0.015, 5e-4);
}

TEST(NoseDepth, IsTheMeanOfTwoWaysRoundOfTheBridge) {
    EXPECT_NEAR(noseDepthMm(34.990, 35.010), 35.000, 1e-12);
}

// Common practice, no source: the difference of nose depths is the axial clearance. Invented readings.
TEST(NoseDepth, DifferenceAgreesWithTheDial) {
    const NoseCheck check = noseCheck(35.068, 35.000, 0.068);
    EXPECT_NEAR(check.clearanceMm, 0.068, 1e-9);
    EXPECT_NEAR(check.offMm, 0.0, 1e-9);
    EXPECT_TRUE(check.agrees);
    EXPECT_TRUE(noseCheck(64.853, 64.699, 0.154).agrees);
    EXPECT_TRUE(noseCheck(35.090, 35.000, 0.070).agrees);
    EXPECT_FALSE(noseCheck(35.091, 35.000, 0.070).agrees);
    EXPECT_FALSE(noseCheck(35.049, 35.000, 0.070).agrees);
}

// A rotor that goes deeper when it is pushed to the compressor was read the wrong way about.
TEST(NoseDepth, ReadTheWrongWayAboutDisagrees) {
    EXPECT_FALSE(noseCheck(35.000, 35.070, 0.070).agrees);
}

RC_GTEST_PROP(Dial, TheZeroDoesNotMatter, ()) {
    const double zero = *rc::gen::inRange(-5000, 5000) / 1000.0;
    const double travel = *rc::gen::inRange(0, 300) / 1000.0;
    RC_ASSERT(std::abs(axialClearanceMm({zero, zero + travel}) - travel) < 1e-12);
    RC_ASSERT(std::abs(axialClearanceMm({zero, zero - travel}) - travel) < 1e-12);
}

} // namespace gapwise::test
