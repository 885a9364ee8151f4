#include "models/gauging/unbalance.h"

#include "tests/support/print_error.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace gapwise::test {

namespace {

PlaneShares sharesOf(double total, const BalancePlanes& planes) {
    return splitOverPlanes(total, planes, "planes").value();
}

Error refusalOf(const BalancePlanes& planes) {
    return splitOverPlanes(1.0, planes, "f#/unbalance").errors().front();
}

} // namespace

// ISO 21940-11 (BAL-01) as the trade writes it: 9549·G·m/n. Common practice, no source, for the rounded
// number.
TEST(Unbalance, TheConstantIsThirtyThousandOverPi) {
    EXPECT_NEAR(permissibleUnbalanceGmm(1.0, 1.0, 1.0), 9549.0, 0.5);
    EXPECT_NEAR(permissibleUnbalanceGmm(1.0, 1.0, 1.0), 30000.0 / std::numbers::pi, 1e-9);
}

// The form in ounces, inches and pounds (BAL-02), and MIL-STD-167's 4W/n as a grade (BAL-16).
TEST(Unbalance, AgreesWithTheFormInOuncesAndInches) {
    constexpr double kPoundKg = 0.45359237;
    constexpr double kOunceInchGmm = 28.349523 * 25.4;
    const double perGrade = permissibleUnbalanceGmm(1.0, kPoundKg, 1.0) / kOunceInchGmm;
    EXPECT_NEAR(perGrade, 6.015, 0.001);
    EXPECT_NEAR(4.0 / perGrade, 0.665, 0.001);
}

// ISO 21940-11 (BAL-03): a grade is e·Ω in mm/s.
TEST(Unbalance, TheGradeIsSpeedOfTheAxisOfMass) {
    EXPECT_NEAR(permissibleEccentricityUm(2.5, 3000), 7.958, 0.01);
    EXPECT_NEAR(permissibleEccentricityUm(1.0, 150'000), 0.0637, 5e-5);
}

// Reckoned by that law (BAL-04, BAL-06, BAL-07, BAL-08).
TEST(Unbalance, OfRotorsLargeAndSmall) {
    EXPECT_NEAR(permissibleUnbalanceGmm(2.5, 100, 3000), 795.8, 0.1);
    EXPECT_NEAR(permissibleUnbalanceGmm(6.3, 1000, 1500), 40'106, 2);
    EXPECT_NEAR(permissibleUnbalanceGmm(6.3, 0.25, 90'000), 0.1671, 1e-4);
    EXPECT_NEAR(permissibleUnbalanceGmm(2.5, 0.25, 90'000), 0.0663, 1e-4);
    EXPECT_NEAR(permissibleUnbalanceGmm(1.0, 0.25, 90'000), 0.0265, 1e-4);
    EXPECT_NEAR(permissibleUnbalanceGmm(1.0, 0.15, 150'000), 0.009'55, 1e-5);
}

// Worked by hand for the rotors of two invented frames.
TEST(Unbalance, OfTheDemoRotors) {
    EXPECT_NEAR(permissibleUnbalanceGmm(2.5, 0.50, 130'000), 0.092, 5e-4);
    EXPECT_NEAR(permissibleUnbalanceGmm(2.5, 4.43, 62'000), 1.71, 5e-3);
}

// ISO 21940-11 (BAL-09): planes 30 and 45 mm from the centre of gravity.
TEST(Unbalance, TheNearerPlaneHasTheGreaterShare) {
    const PlaneShares shares = sharesOf(0.066'313, {.centreMm = 0.0, .aMm = -30.0, .bMm = 45.0});
    EXPECT_NEAR(shares.aGmm, 0.039'788, 1e-6);
    EXPECT_NEAR(shares.bGmm, 0.026'525, 1e-6);
}

// ISO 21940-11 (BAL-10, BAL-11): raw 0.9 and 0.1 of the total.
TEST(Unbalance, NoPlaneHasMoreThanSevenTenths) {
    const PlaneShares shares = sharesOf(1.0, {.centreMm = 10.0, .aMm = 0.0, .bMm = 100.0});
    EXPECT_NEAR(shares.aGmm, 0.7, 1e-12);
    EXPECT_NEAR(shares.bGmm, 0.3, 1e-12);
}

// ISO 21940-11 (BAL-12).
TEST(Unbalance, OfASymmetricRotorIsHalved) {
    const PlaneShares shares = sharesOf(2.0, {.centreMm = -50.0, .aMm = -13.0, .bMm = -87.0});
    EXPECT_NEAR(shares.aGmm, 1.0, 1e-12);
    EXPECT_NEAR(shares.bGmm, 1.0, 1e-12);
}

// ISO 21940-11 table 1 (BAL-13): the ratio 2.5, rounded.
TEST(Unbalance, GradesAreASeries) {
    ASSERT_EQ(kBalanceGrades.size(), 11U);
    EXPECT_EQ(kBalanceGrades.front(), 0.4);
    EXPECT_EQ(kBalanceGrades.back(), 4000.0);
    for (std::size_t at = 1; at < kBalanceGrades.size(); ++at)
        EXPECT_NEAR(kBalanceGrades.at(at) / kBalanceGrades.at(at - 1), 2.5, 0.05);
}

// Stations of an invented rotor whose compressor wheel is off: it tips to the turbine.
TEST(Unbalance, OfAnOverhungRotorIsNotSplit) {
    const Error error = refusalOf({.centreMm = -72.0, .aMm = -13.0, .bMm = -57.0});
    EXPECT_EQ(error.where, "f#/unbalance");
    EXPECT_EQ(error.found, "a centre of gravity at -72 mm");
    EXPECT_EQ(error.allowed,
              "one between the planes, -57 to -13 mm: an overhung rotor is not split by this rule");
    EXPECT_EQ(refusalOf({.centreMm = 5.0, .aMm = 5.0, .bMm = 5.0}).allowed,
              "two planes apart from each other");
}

RC_GTEST_PROP(Unbalance, SharesAddUpAndStayWithinTheirBounds, ()) {
    const double length = *rc::gen::inRange(1, 1000) / 1.0;
    const double at = *rc::gen::inRange(0, 1001) / 1000.0;
    const double total = *rc::gen::inRange(1, 100'000) / 1000.0;
    const PlaneShares shares = sharesOf(total, {.centreMm = at * length, .aMm = 0.0, .bMm = length});
    RC_ASSERT(std::abs(shares.aGmm + shares.bGmm - total) < 1e-12 * total);
    RC_ASSERT(shares.aGmm >= 0.3 * total * (1 - 1e-12) && shares.aGmm <= 0.7 * total * (1 + 1e-12));
    RC_ASSERT((at <= 0.5) == (shares.aGmm >= shares.bGmm) || std::abs(at - 0.5) < 1e-9);
}

} // namespace gapwise::test
