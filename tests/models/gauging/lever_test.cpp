#include "models/gauging/lever.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <ostream>

namespace gapwise::test {

namespace {

/// The lengths of two invented practice frames, one small, one large.
constexpr Lever kSmall{.spanMm = 44.0, .noseMm = 62.0, .turbineMm = 56.0, .bearingLengthMm = 9.0};
constexpr Lever kLarge{.spanMm = 92.0, .noseMm = 128.0, .turbineMm = 112.0, .bearingLengthMm = 20.0};

struct Rocked {
    const char* name;
    Lever lever;
    Plays plays;
    EndReadings readings;

    friend void PrintTo(const Rocked& row, std::ostream* out) { *out << row.name; }
};

Lever anyLever() {
    const double length = *rc::gen::inRange(0, 300) / 10.0;
    return {.spanMm = length + *rc::gen::inRange(1, 3000) / 10.0,
            .noseMm = length + *rc::gen::inRange(0, 3000) / 10.0,
            .turbineMm = length + *rc::gen::inRange(0, 3000) / 10.0,
            .bearingLengthMm = length};
}

Plays anyPlays() {
    return {.compressorMm = *rc::gen::inRange(0, 1000) / 1000.0,
            .turbineMm = *rc::gen::inRange(0, 1000) / 1000.0};
}

} // namespace

class Levers : public ::testing::TestWithParam<Rocked> {};

TEST_P(Levers, ReadThePlayOfBothBearings) {
    const Rocked& row = GetParam();
    const EndReadings readings = rockingReadings(row.lever, row.plays);
    EXPECT_NEAR(readings.noseMm, row.readings.noseMm, 5e-5);
    EXPECT_NEAR(readings.turbineMm, row.readings.turbineMm, 5e-5);
}

TEST_P(Levers, GiveThePlaysBackExactly) {
    const Rocked& row = GetParam();
    const Plays plays = playsFrom(row.lever, rockingReadings(row.lever, row.plays));
    EXPECT_NEAR(plays.compressorMm, row.plays.compressorMm, 1e-12);
    EXPECT_NEAR(plays.turbineMm, row.plays.turbineMm, 1e-12);
}

// Worked by hand from D(1 + p) + D′p; the plays are invented.
INSTANTIATE_TEST_SUITE_P(
    HandWorked, Levers,
    ::testing::Values(Rocked{"small, new", kSmall, {0.140, 0.140}, {0.5345, 0.4964}},
                      Rocked{"small, turbine worn", kSmall, {0.140, 0.205}, {0.6261, 0.6441}},
                      Rocked{"large, new", kLarge, {0.205, 0.205}, {0.7754, 0.7041}},
                      Rocked{"large, turbine worn", kLarge, {0.205, 0.280}, {0.8798, 0.8704}}));

// Rigid-rotor geometry, reckoned (STK-08): C 0.10, S 30, a 20.
TEST(Lever, RockingTravelsTheLeverAndPureLiftThePlay) {
    const Lever lever{.spanMm = 30.0, .noseMm = 20.0, .turbineMm = 20.0};
    EXPECT_NEAR(rockingReadings(lever, {0.10, 0.10}).noseMm, 0.2333, 1e-4);
    for (const double inboard : {0.0, 15.0, 30.0})
        EXPECT_NEAR(equalLiftReadingMm(lever, {0.10, 0.10}, inboard), 0.10, 1e-12);
}

TEST(Lever, AnEqualLiftReadsBetweenTheTwoPlays) {
    EXPECT_NEAR(equalLiftReadingMm(kSmall, {0.140, 0.205}, 0.0), 0.140, 1e-12);
    EXPECT_NEAR(equalLiftReadingMm(kSmall, {0.140, 0.205}, 22.0), 0.1725, 1e-12);
    EXPECT_NEAR(equalLiftReadingMm(kSmall, {0.140, 0.205}, 44.0), 0.205, 1e-12);
}

// Common practice, no source: in these sizes the shaft end shows three to four times the play of the bearing.
TEST(Lever, TheShaftEndShowsThreeToFourTimesThePlay) {
    for (const Lever& lever : {kSmall, kLarge}) {
        const EndReadings readings = rockingReadings(lever, {0.1, 0.1});
        for (const double reading : {readings.noseMm, readings.turbineMm}) {
            EXPECT_GT(reading, 0.3);
            EXPECT_LT(reading, 0.4);
        }
    }
}

// Worked by hand: s + ℓ, a − ℓ/2, b − ℓ/2 at the invented nominal plays.
TEST(Lever, AtTheEdgesOfTheBearingsReadsLess) {
    const EndReadings small = rockingReadings(atBearingEdges(kSmall), {0.140, 0.140});
    EXPECT_NEAR(small.noseMm, 0.444, 5e-4);
    EXPECT_NEAR(small.turbineMm, 0.412, 5e-4);
    const EndReadings large = rockingReadings(atBearingEdges(kLarge), {0.205, 0.205});
    EXPECT_NEAR(large.noseMm, 0.637, 5e-4);
    EXPECT_NEAR(large.turbineMm, 0.578, 5e-4);
}

// Plays that the parts of an invented job give, and what a dial then read.
TEST(Lever, PredictsABandAndSeparatesOne) {
    const EndBands predicted = predictedBand(kSmall, {0.141, 0.147});
    EXPECT_NEAR(predicted.nose.least, 0.453, 5e-4);
    EXPECT_NEAR(predicted.nose.most, 0.547, 5e-4);
    EXPECT_NEAR(predicted.turbine.least, 0.427, 5e-4);
    EXPECT_NEAR(predicted.turbine.most, 0.514, 5e-4);
    const PlayBands separated = separatedBand(kSmall, {.noseMm = 0.50, .turbineMm = 0.47});
    EXPECT_NEAR(separated.compressor.least, 0.129, 5e-4);
    EXPECT_NEAR(separated.compressor.most, 0.156, 5e-4);
    EXPECT_NEAR(separated.turbine.least, 0.135, 5e-4);
    EXPECT_NEAR(separated.turbine.most, 0.162, 5e-4);
    EXPECT_TRUE(holds(separated.compressor, 0.141));
    EXPECT_TRUE(holds(separated.turbine, 0.147));
    EXPECT_FALSE(contradicts(separated));
}

TEST(Lever, PredictsTheBandOfTheLargeFrame) {
    const EndBands predicted = predictedBand(kLarge, {0.203, 0.212});
    EXPECT_NEAR(predicted.nose.least, 0.640, 5e-4);
    EXPECT_NEAR(predicted.nose.most, 0.780, 5e-4);
    EXPECT_NEAR(predicted.turbine.least, 0.590, 5e-4);
    EXPECT_NEAR(predicted.turbine.most, 0.717, 5e-4);
}

// Invented windows: they hold every new pair, the tightest by the edges, the loosest by the mid-planes.
TEST(Lever, TheWindowsHoldEveryNewPair) {
    const auto expectEnds = [](const Lever& lever, Band plays, EndBands ends) {
        const EndReadings least = rockingReadings(atBearingEdges(lever), {plays.least, plays.least});
        const EndReadings most = rockingReadings(lever, {plays.most, plays.most});
        EXPECT_NEAR(least.noseMm, ends.nose.least, 5e-4);
        EXPECT_NEAR(least.turbineMm, ends.turbine.least, 5e-4);
        EXPECT_NEAR(most.noseMm, ends.nose.most, 5e-4);
        EXPECT_NEAR(most.turbineMm, ends.turbine.most, 5e-4);
    };
    expectEnds(kSmall, {0.125, 0.162}, {{0.396, 0.619}, {0.368, 0.574}});
    expectEnds(kLarge, {0.180, 0.236}, {{0.559, 0.893}, {0.508, 0.811}});
}

// An invented limit of 0.75 at the small frame's nose.
TEST(Lever, ALimitOnAReadingIsABandOfPlay) {
    const Band play = equalPlayFor(kSmall, Side::Compressor, 0.75);
    EXPECT_NEAR(play.least, 0.196, 5e-4);
    EXPECT_NEAR(play.most, 0.237, 5e-4);
    EXPECT_EQ(bandWords(play, 3), "0.196–0.237 mm");
    EXPECT_NEAR(equalPlayFor(kSmall, Side::Turbine, 0.4964).least, 0.140, 5e-5);
}

// Worked by hand: readings to 0.01 carry plays to 0.01, no finer.
TEST(Lever, RoundedReadingsGivePlaysToAHundredth) {
    const Plays plays = playsFrom(kSmall, {.noseMm = 0.63, .turbineMm = 0.64});
    EXPECT_NEAR(plays.compressorMm, 0.144, 5e-4);
    EXPECT_NEAR(plays.turbineMm, 0.201, 5e-4);
    EXPECT_EQ(playWords({.compressor = {0.129, 0.156}, .turbine = {0.136, 0.162}}),
              "compressor bearing 0.13–0.16 mm, turbine bearing 0.14–0.16 mm");
}

TEST(Lever, ReadingsThatNoShaftGivesContradict) {
    EXPECT_TRUE(contradicts(separatedBand(kSmall, {.noseMm = 1.0, .turbineMm = 0.1})));
    EXPECT_TRUE(contradicts(separatedBand(kSmall, {.noseMm = 0.1, .turbineMm = 1.0})));
    EXPECT_FALSE(contradicts(separatedBand(kSmall, rockingReadings(kSmall, {0.0, 0.1}))));
}

// Common practice, no source: a fifth of difference between two planes is too much.
TEST(Lever, TwoPlanesDifferByMoreThanAFifth) {
    EXPECT_FALSE(planesDiffer(0.55, 0.45)); // Exactly a fifth of the mean.
    EXPECT_TRUE(planesDiffer(0.56, 0.45));
    EXPECT_TRUE(planesDiffer(0.45, 0.56));
    EXPECT_FALSE(planesDiffer(0.5, 0.5));
}

TEST(Lever, RefusesLengthsThatCannotBe) {
    EXPECT_TRUE(leverErrors(kSmall, "f#/lever").empty());
    const Errors span = leverErrors({.spanMm = 0.0, .noseMm = 62.0, .turbineMm = 56.0}, "f#/lever");
    ASSERT_EQ(span.size(), 1U);
    EXPECT_EQ(describe(span[0]), "f#/lever/span_mm: found 0; allowed: a length above 0 mm");
    Lever lever = kSmall;
    lever.noseMm = 4.0;
    lever.turbineMm = std::numeric_limits<double>::quiet_NaN();
    const Errors dials = leverErrors(lever, "f#/lever");
    ASSERT_EQ(dials.size(), 2U);
    EXPECT_EQ(dials[0].where, "f#/lever/nose_mm");
    EXPECT_EQ(dials[0].allowed, "outboard of the bearing: 4.5 mm or more from its mid-plane");
    EXPECT_EQ(dials[1].found, "nan");
    lever.bearingLengthMm = -1.0;
    EXPECT_EQ(leverErrors(lever, "f#/lever").size(), 1U);
}

RC_GTEST_PROP(Lever, SeparationUndoesTheLever, ()) {
    const Lever lever = anyLever();
    const Plays plays = anyPlays();
    const Plays back = playsFrom(lever, rockingReadings(lever, plays));
    const double scale = 1.0 + (lever.noseMm + lever.turbineMm) / lever.spanMm;
    RC_ASSERT(std::abs(back.compressorMm - plays.compressorMm) < 1e-13 * scale);
    RC_ASSERT(std::abs(back.turbineMm - plays.turbineMm) < 1e-13 * scale);
}

// Whatever was read, the play that either model makes of it lies in the band; so a play that the parts give
// and a healthy reading meet.
RC_GTEST_PROP(Lever, AReadingBetweenTheModelsSeparatesRoundThePlay, ()) {
    const Lever lever = anyLever();
    const double play = *rc::gen::inRange(1, 1000) / 1000.0;
    const EndBands bands = predictedBand(lever, {play, play});
    const double share = *rc::gen::inRange(0, 100) / 100.0;
    const auto between = [share](const Band& band) { return band.least + share * (band.most - band.least); };
    RC_ASSERT(holds(equalPlayFor(lever, Side::Compressor, between(bands.nose)), play));
    RC_ASSERT(holds(equalPlayFor(lever, Side::Turbine, between(bands.turbine)), play));
}

} // namespace gapwise::test
