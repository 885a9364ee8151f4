#include "geometry/datum/angle.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <numbers>

namespace gapwise {

namespace {

/// Angle between two unit vectors in the plane: the slow exact answer.
double betweenVectors(double a, double b) {
    const double ax = std::cos(a * std::numbers::pi / 180.0), ay = std::sin(a * std::numbers::pi / 180.0);
    const double bx = std::cos(b * std::numbers::pi / 180.0), by = std::sin(b * std::numbers::pi / 180.0);
    return std::atan2(std::abs(ax * by - ay * bx), ax * bx + ay * by) * 180.0 / std::numbers::pi;
}

/// A tenth of a degree over several turns either way.
double drawnAngle() {
    return *rc::gen::inRange(-20000, 20000) / 10.0;
}

} // namespace

TEST(Angle, WrapsIntoOneTurn) {
    EXPECT_EQ(wrapped(Degrees{0.0}).value, 0.0);
    EXPECT_EQ(wrapped(Degrees{360.0}).value, 0.0);
    EXPECT_EQ(wrapped(Degrees{-1.0}).value, 359.0);
    EXPECT_EQ(wrapped(Degrees{725.0}).value, 5.0);
    EXPECT_EQ(wrapped(Degrees{-360.0}).value, 0.0);
}

TEST(Angle, JustBelowZeroStaysBelowAWholeTurn) {
    EXPECT_LT(wrapped(Degrees{-1e-20}).value, 360.0);
    EXPECT_LT(wrapped(Degrees{-std::numeric_limits<double>::denorm_min()}).value, 360.0);
    EXPECT_LT(wrapped(Degrees{-2e-14}).value, 360.0);
}

// Minus zero is equal to zero but is written "-0" in JSON and on screens.
TEST(Angle, ZeroNeverCarriesASign) {
    for (const double zero : {-0.0, -360.0, -720.0, 360.0})
        EXPECT_FALSE(std::signbit(wrapped(Degrees{zero}).value)) << zero;
    EXPECT_FALSE(std::signbit(wrappedHalf(Degrees{-0.0}).value));
    EXPECT_FALSE(std::signbit(apart(Degrees{0.0}, Degrees{-0.0}).value));
}

TEST(Angle, HalfTurnsAreCountedClockwise) {
    EXPECT_EQ(wrappedHalf(Degrees{180.0}).value, 180.0);
    EXPECT_EQ(wrappedHalf(Degrees{-180.0}).value, 180.0);
    EXPECT_EQ(wrappedHalf(Degrees{181.0}).value, -179.0);
    EXPECT_GT(wrappedHalf(Degrees{std::nextafter(180.0, 360.0)}).value, -180.0);
}

TEST(Angle, DifferenceCrossesTwelve) {
    EXPECT_EQ(apart(Degrees{359.0}, Degrees{1.0}).value, 2.0);
    EXPECT_EQ(apart(Degrees{350.0}, Degrees{170.0}).value, 180.0);
}

TEST(Angle, BoundaryOfAToleranceHolds) {
    EXPECT_TRUE(within(Degrees{100.0}, Degrees{120.0}, Degrees{20.0}));
    EXPECT_TRUE(within(Degrees{350.0}, Degrees{10.0}, Degrees{20.0}));
    EXPECT_TRUE(within(Degrees{140.0 + 9e-10}, Degrees{120.0}, Degrees{20.0}));
    EXPECT_FALSE(within(Degrees{140.0 + 2e-9}, Degrees{120.0}, Degrees{20.0}));
    // 0.1 + 0.2 is a little more than 0.3.
    EXPECT_TRUE(within(Degrees{0.1 + 0.2}, Degrees{0.0}, Degrees{0.3}));
}

TEST(Angle, WhatIsNoNumberIsWithinNothing) {
    const Degrees none{std::numeric_limits<double>::quiet_NaN()};
    EXPECT_FALSE(within(none, Degrees{0.0}, Degrees{180.0}));
}

// ISO 80000-3: 1 rad = 180/pi degrees (GEO-18).
TEST(Angle, RadianIsFiftySevenDegrees) {
    EXPECT_NEAR(degreesFromRadians(1.0).value, 57.295780, 1e-6);
    EXPECT_NEAR(radians(Degrees{180.0}), std::numbers::pi, 1e-15);
}

RC_GTEST_PROP(AngleProperty, WrappingKeepsTheDirection, ()) {
    const double angle = drawnAngle();
    const double turned = wrapped(Degrees{angle}).value;
    RC_ASSERT(turned >= 0.0 && turned < 360.0);
    RC_ASSERT(betweenVectors(angle, turned) < 1e-9);
    const double half = wrappedHalf(Degrees{angle}).value;
    RC_ASSERT(half > -180.0 && half <= 180.0);
    RC_ASSERT(betweenVectors(angle, half) < 1e-9);
}

RC_GTEST_PROP(AngleProperty, ApartIsTheAngleBetweenVectors, ()) {
    const double a = drawnAngle();
    const double b = drawnAngle();
    RC_ASSERT(std::abs(apart(Degrees{a}, Degrees{b}).value - betweenVectors(a, b)) < 1e-6);
    RC_ASSERT(std::abs(apart(Degrees{a}, Degrees{b}).value - apart(Degrees{b}, Degrees{a}).value) < 1e-9);
}

} // namespace gapwise
