#include "models/gauging/four_point.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace gapwise::test {

namespace {

/// The lengths of two invented practice frames.
constexpr Lever kSmall{.spanMm = 44.0, .noseMm = 62.0, .turbineMm = 56.0, .bearingLengthMm = 9.0};
constexpr Lever kLarge{.spanMm = 92.0, .noseMm = 128.0, .turbineMm = 112.0, .bearingLengthMm = 20.0};

struct Gauged {
    FourGaps gaps;
    double mean, right, up, eccentricity, direction, consistency;

    friend void PrintTo(const Gauged& row, std::ostream* out) {
        *out << row.gaps.at12Mm << '/' << row.gaps.at3Mm << '/' << row.gaps.at6Mm << '/' << row.gaps.at9Mm;
    }
};

/// Gaps of a round casing round a rotor that stands off.
FourGaps gapsOf(double mean, const Offset& offset) {
    return {mean - offset.upMm, mean - offset.rightMm, mean + offset.upMm, mean + offset.rightMm};
}

struct Sunk {
    Lever lever;
    Plays plays;
    double inducerMm, exducerMm; ///< Planes outboard of the bearings.
    double sagInducer, sagExducer, rockInducer, rockExducer;

    friend void PrintTo(const Sunk& row, std::ostream* out) {
        *out << row.plays.compressorMm << '/' << row.plays.turbineMm;
    }
};

Offset anyOffset() {
    return {.rightMm = *rc::gen::inRange(-300, 300) / 1000.0, .upMm = *rc::gen::inRange(-300, 300) / 1000.0};
}

} // namespace

class FourPoints : public ::testing::TestWithParam<Gauged> {};

TEST_P(FourPoints, TellMeanOffsetAndConsistency) {
    const Gauged& row = GetParam();
    const FourPoint told = fourPointOf(row.gaps, Side::Turbine);
    EXPECT_NEAR(told.meanMm, row.mean, 1e-12);
    EXPECT_NEAR(told.offset.rightMm, row.right, 1e-12);
    EXPECT_NEAR(told.offset.upMm, row.up, 1e-12);
    EXPECT_NEAR(told.eccentricityMm, row.eccentricity, 5e-4);
    ASSERT_TRUE(told.direction.has_value());
    EXPECT_NEAR(told.direction->from(Side::Turbine).value, row.direction, 0.05);
    EXPECT_NEAR(told.consistencyMm, row.consistency, 1e-12);
    EXPECT_NEAR(told.leastMm, row.mean - row.eccentricity, 5e-4);
}

// Worked by hand from invented readings.
INSTANTIATE_TEST_SUITE_P(
    HandWorked, FourPoints,
    ::testing::Values(Gauged{{0.42, 0.36, 0.32, 0.38}, 0.370, 0.010, -0.050, 0.051, 168.7, 0.00},
                      Gauged{{0.51, 0.43, 0.36, 0.44}, 0.435, 0.005, -0.075, 0.075, 176.2, 0.00},
                      Gauged{{0.50, 0.44, 0.36, 0.42}, 0.430, -0.010, -0.070, 0.071, 188.1, 0.00},
                      Gauged{{0.62, 0.60, 0.50, 0.54}, 0.565, -0.030, -0.060, 0.067, 206.6, -0.02},
                      Gauged{{0.75, 0.62, 0.55, 0.66}, 0.645, 0.020, -0.100, 0.102, 168.7, 0.02},
                      Gauged{{0.40, 0.40, 0.26, 0.26}, 0.330, -0.070, -0.070, 0.099, 225.0, 0.00}));

class SunkRotors : public ::testing::TestWithParam<Sunk> {};

TEST_P(SunkRotors, LieLowByTheLever) {
    const Sunk& row = GetParam();
    EXPECT_NEAR(restSagMm(row.lever, row.plays, Side::Compressor, row.inducerMm), row.sagInducer, 6e-5);
    EXPECT_NEAR(restSagMm(row.lever, row.plays, Side::Turbine, row.exducerMm), row.sagExducer, 6e-5);
}

TEST_P(SunkRotors, RockByTheLever) {
    const Sunk& row = GetParam();
    EXPECT_NEAR(rockAmplitudeMm(row.lever, row.plays, Side::Compressor, row.inducerMm), row.rockInducer,
                6e-5);
    EXPECT_NEAR(rockAmplitudeMm(row.lever, row.plays, Side::Turbine, row.exducerMm), row.rockExducer, 6e-5);
}

// Worked by hand; plays and planes are invented.
INSTANTIATE_TEST_SUITE_P(
    HandWorked, SunkRotors,
    ::testing::Values(Sunk{kSmall, {0.140, 0.140}, 58, 48, 0.0700, 0.0700, 0.2545, 0.2227},
                      Sunk{kSmall, {0.140, 0.205}, 58, 48, 0.0272, 0.1380, 0.2974, 0.2907},
                      Sunk{kSmall, {0.141, 0.147}, 58, 48, 0.0665, 0.0768, 0.2603, 0.2306},
                      Sunk{kSmall, {0.210, 0.210}, 58, 48, 0.1050, 0.1050, 0.3818, 0.3341},
                      Sunk{kLarge, {0.205, 0.205}, 114, 94, 0.1025, 0.1025, 0.3565, 0.3120},
                      Sunk{kLarge, {0.203, 0.212}, 114, 94, 0.0959, 0.1106, 0.3586, 0.3180},
                      Sunk{kLarge, {0.300, 0.300}, 114, 94, 0.1500, 0.1500, 0.5217, 0.4565}));

// The same rotor seen from both ends: left and right change places, up does not.
TEST(FourPoint, FromTheOtherEndRightIsLeft) {
    const FourPoint compressor = fourPointOf({0.50, 0.40, 0.36, 0.46}, Side::Compressor);
    const FourPoint turbine = fourPointOf({0.50, 0.46, 0.36, 0.40}, Side::Turbine);
    const DatumOffset inDatumC = inDatum(compressor.offset, Side::Compressor);
    EXPECT_GT(inDatumC.xMm, 0.0);
    EXPECT_EQ(inDatumC, inDatum(turbine.offset, Side::Turbine));
    EXPECT_LT(apart(compressor.direction.value(), turbine.direction.value()).value, 1e-9);
}

TEST(FourPoint, ARotorInTheMiddlePointsNowhere) {
    const FourPoint told = fourPointOf({0.43, 0.43, 0.43, 0.43}, Side::Compressor);
    EXPECT_FALSE(told.direction.has_value());
    EXPECT_EQ(offsetWords(told.offset, Side::Compressor), "centred");
    EXPECT_EQ(offsetWords({0.0004, 0.0}, Side::Compressor), "centred");
}

TEST(FourPoint, SaysWhichWayFromTheSideThatLooks) {
    EXPECT_EQ(offsetWords({-0.010, -0.070}, Side::Compressor),
              "0.071 mm low, 8° past 6:00 seen from the compressor side");
    EXPECT_EQ(offsetWords({0.010, -0.050}, Side::Turbine),
              "0.051 mm low, 11° before 6:00 seen from the turbine side");
    EXPECT_EQ(offsetWords({0.0, 0.05}, Side::Turbine), "0.050 mm high, at 12:00 seen from the turbine side");
    EXPECT_EQ(offsetWords({-0.01, 0.05}, Side::Turbine),
              "0.051 mm high, 11° before 12:00 seen from the turbine side");
    EXPECT_EQ(offsetWords({0.05, 0.0}, Side::Compressor),
              "0.050 mm to the right, at 3:00 seen from the compressor side");
    EXPECT_EQ(offsetWords({-0.05, 0.01}, Side::Compressor),
              "0.051 mm to the left, 11° past 9:00 seen from the compressor side");
}

// Readings of an invented job. Judged without the sag it would be called 0.07 eccentric.
TEST(FourPoint, LessTheSagTheCasingIsConcentric) {
    const FourPoint told = fourPointOf({0.50, 0.44, 0.36, 0.42}, Side::Compressor);
    const Offset equalPlay =
        casingError(told.offset, restSagMm(kSmall, {0.140, 0.140}, Side::Compressor, 58));
    EXPECT_NEAR(equalPlay.rightMm, -0.010, 1e-12);
    EXPECT_NEAR(equalPlay.upMm, 0.000, 1e-12);
    const Offset parts = casingError(told.offset, restSagMm(kSmall, {0.141, 0.147}, Side::Compressor, 58));
    EXPECT_NEAR(eccentricityMm(parts), 0.011, 5e-4);
}

TEST(FourPoint, LessTheSagTheTurbineIsConcentricToo) {
    const FourPoint told = fourPointOf({0.57, 0.51, 0.43, 0.49}, Side::Turbine);
    const double sag = restSagMm(kSmall, {0.141, 0.147}, Side::Turbine, 48);
    EXPECT_NEAR(sag, 0.077, 5e-4);
    EXPECT_NEAR(eccentricityMm(casingError(told.offset, sag)), 0.012, 5e-4);
}

TEST(FourPoint, OfTheLargeFrameAgreesAtBothEnds) {
    const Plays plays{0.203, 0.212};
    const FourPoint compressor = fourPointOf({0.76, 0.65, 0.56, 0.65}, Side::Compressor);
    const FourPoint turbine = fourPointOf({0.96, 0.86, 0.76, 0.84}, Side::Turbine);
    const double sagC = restSagMm(kLarge, plays, Side::Compressor, 114);
    const double sagT = restSagMm(kLarge, plays, Side::Turbine, 94);
    EXPECT_NEAR(eccentricityMm(casingError(compressor.offset, sagC)), 0.004, 5e-4);
    EXPECT_NEAR(eccentricityMm(casingError(turbine.offset, sagT)), 0.015, 5e-4);
}

// Half the near bearing's play alone would report errors of 0.043 and 0.035 that are not there.
TEST(FourPoint, HalfThePlayIsNoSagOfUnequalBearings) {
    const Plays plays{0.140, 0.205};
    EXPECT_NEAR(plays.compressorMm / 2 - restSagMm(kSmall, plays, Side::Compressor, 58), 0.043, 5e-4);
    EXPECT_NEAR(restSagMm(kSmall, plays, Side::Turbine, 48) - plays.turbineMm / 2, 0.035, 6e-4);
}

// An invented job: 0.36 − (0.260 − 0.067).
TEST(FourPoint, TheSagIsNotCountedTwiceWhenRocked) {
    const Plays plays{0.141, 0.147};
    const double amplitude = rockAmplitudeMm(kSmall, plays, Side::Compressor, 58);
    const double left = leftWhenRockedMm(0.36, amplitude, restSagMm(kSmall, plays, Side::Compressor, 58));
    EXPECT_NEAR(left, 0.17, 0.005);
    EXPECT_EQ(rockingOutcome(left, plays, 0.210), Rocking::Clear);
    EXPECT_EQ(rockingWords(Rocking::Clear, left), "0.17 mm is left when it is rocked by hand");
}

// Common practice, no source: contact by hand with a play inside its limit is a remark, not a rub.
TEST(FourPoint, ContactByHandInsideTheLimitIsARemark) {
    EXPECT_EQ(rockingOutcome(0.0, {0.210, 0.200}, 0.210), Rocking::Remark);
    EXPECT_EQ(rockingOutcome(-0.03, {0.150, 0.211}, 0.210), Rocking::BeyondLimit);
    EXPECT_EQ(rockingOutcome(-0.03, {0.211, 0.150}, 0.210), Rocking::BeyondLimit);
    EXPECT_EQ(rockingOutcome(-0.03, {0.5, 0.5}, std::nullopt), Rocking::Remark);
    EXPECT_NE(rockingWords(Rocking::Remark, -0.03).find("not a rub"), std::string::npos);
    EXPECT_NE(rockingWords(Rocking::BeyondLimit, -0.03).find("look at the bearings"), std::string::npos);
}

TEST(FourPoint, TheLeastOfFourIsReadNotReckoned) {
    EXPECT_EQ(leastOf({0.50, 0.44, 0.36, 0.42}), 0.36);
    EXPECT_EQ(leastOf({0.30, 0.44, 0.36, 0.42}), 0.30);
}

// Common practice, no source: opposite tip clearances differ by twice the eccentricity.
RC_GTEST_PROP(FourPoint, OppositeGapsDifferByTwiceTheEccentricity, ()) {
    const double off = *rc::gen::inRange(1, 300) / 1000.0;
    const Offset offset = *rc::gen::arbitrary<bool>() ? Offset{off, 0.0} : Offset{0.0, -off};
    const FourGaps gaps = gapsOf(0.45, offset);
    const double difference = std::max(std::abs(gaps.at12Mm - gaps.at6Mm), std::abs(gaps.at3Mm - gaps.at9Mm));
    RC_ASSERT(std::abs(difference - 2.0 * fourPointOf(gaps, Side::Compressor).eccentricityMm) < 1e-12);
}

RC_GTEST_PROP(FourPoint, GivesTheOffsetBackWithNoInconsistency, ()) {
    const Offset offset = anyOffset();
    const FourPoint told = fourPointOf(gapsOf(0.45, offset), Side::Turbine);
    RC_ASSERT(std::abs(told.offset.rightMm - offset.rightMm) < 1e-12);
    RC_ASSERT(std::abs(told.offset.upMm - offset.upMm) < 1e-12);
    RC_ASSERT(std::abs(told.consistencyMm) < 1e-12);
    RC_ASSERT(std::abs(told.meanMm - 0.45) < 1e-12);
}

// Common practice, no source: a resting rotor sits low by half the play at each bearing.
RC_GTEST_PROP(FourPoint, AtTheBearingsTheSagIsHalfThePlay, ()) {
    const Plays plays{*rc::gen::inRange(0, 500) / 1000.0, *rc::gen::inRange(0, 500) / 1000.0};
    RC_ASSERT(std::abs(restSagMm(kSmall, plays, Side::Compressor, 0.0) - plays.compressorMm / 2.0) < 1e-12);
    RC_ASSERT(std::abs(restSagMm(kSmall, plays, Side::Turbine, 0.0) - plays.turbineMm / 2.0) < 1e-12);
    // Carried on to the other bearing, the line meets that one's bottom.
    RC_ASSERT(std::abs(restSagMm(kSmall, plays, Side::Compressor, -44.0) - plays.turbineMm / 2.0) < 1e-12);
}

// Rocking is what the lever reads, half of it either way.
RC_GTEST_PROP(FourPoint, RockingIsHalfTheTravelOfTheLever, ()) {
    const Plays plays{*rc::gen::inRange(0, 500) / 1000.0, *rc::gen::inRange(0, 500) / 1000.0};
    const EndReadings travel = rockingReadings(kLarge, plays);
    RC_ASSERT(std::abs(2.0 * rockAmplitudeMm(kLarge, plays, Side::Compressor, kLarge.noseMm) -
                       travel.noseMm) < 1e-12);
    RC_ASSERT(std::abs(2.0 * rockAmplitudeMm(kLarge, plays, Side::Turbine, kLarge.turbineMm) -
                       travel.turbineMm) < 1e-12);
}

} // namespace gapwise::test
