#include "models/measure/evaluate.h"

#include "tests/models/measure/small_measures.h"

#include <gmock/gmock.h>

#include <cmath>

namespace gapwise {

namespace {

using testing::HasSubstr;

/// A report of these readings, in place.
class Measured : public testing::Test {
protected:
    void read(std::vector<Reading> readings, const std::string& today = "") {
        held_.build.readings = std::move(readings);
        small::measure(held_, today);
    }
    Reading odd(const std::string& quantity, std::vector<double> values, void (*change)(Reading&)) const {
        Reading reading = small::reading(quantity, std::move(values));
        change(reading);
        return reading;
    }
    std::string words(const std::string& quantity) const { return held_.read(quantity).flags.front().words; }

    small::Held held_{small::frame(), small::build({})};
};

using Evaluation = Measured;
using Flags = Measured;

} // namespace

TEST_F(Evaluation, APointReadOnceHasAMeanAndNoSpread) {
    read({small::reading("d", {11.993, 11.992, 11.994, 11.993})});
    const Evaluated& d = held_.read("d");
    EXPECT_DOUBLE_EQ(d.value, 11.993);
    EXPECT_DOUBLE_EQ(d.judged, 11.992) << "the least of a shaft";
    EXPECT_DOUBLE_EQ(d.spread, 0.0);
    EXPECT_NEAR(*d.ovality, 0.001, 1e-9);
    EXPECT_NEAR(*d.taper, 0.001, 1e-9);
    EXPECT_DOUBLE_EQ(d.expanded, 0.003) << "the instrument alone";
    EXPECT_EQ(d.decimals, 3);
}

// JCGM 100:2008 4.2: the mean of repeats is known to s/√n; JCGM 100 5.1.2: variances add.
TEST_F(Evaluation, RepeatsOfOnePlaceWidenU) {
    read({small::reading("c", {0.067, 0.069, 0.068})});
    const Evaluated& c = held_.read("c");
    EXPECT_DOUBLE_EQ(c.value, 0.068);
    EXPECT_NEAR(c.spread, 0.002, 1e-12);
    EXPECT_NEAR(c.expanded, 2.0 * std::hypot(0.003, 0.001 / std::sqrt(3.0)), 1e-12);
}

TEST_F(Evaluation, RoundsOverThePointsAreRepeats) {
    read({small::reading("d", {11.992, 11.993, 11.994, 11.993, 11.994, 11.993, 11.992, 11.993})});
    const Evaluated& d = held_.read("d");
    EXPECT_DOUBLE_EQ(d.judged, 11.993) << "every point's mean is 11.993";
    EXPECT_NEAR(d.spread, 0.002, 1e-9);
    EXPECT_NEAR(*d.ovality, 0.0, 1e-9);
    EXPECT_GT(d.expanded, 0.003);
}

TEST_F(Evaluation, LessThanARoundTellsNoForm) {
    read({small::reading("d", {11.993})});
    EXPECT_DOUBLE_EQ(held_.read("d").value, 11.993);
    EXPECT_FALSE(held_.read("d").ovality);
}

// ISO 1: lengths are stated at 20 °C.
TEST_F(Evaluation, AWarmPartIsCorrectedTo20AndKnownLess) {
    Reading warm = small::reading("a", {3.501});
    warm.temperatureC = 35.0;
    read({warm});
    EXPECT_NEAR(held_.read("a").correctedBy, -3.501 * 12e-6 * 15.0, 1e-6);
    EXPECT_NEAR(held_.read("a").value, 3.501 + held_.read("a").correctedBy, 1e-12);
    EXPECT_GT(held_.read("a").expanded, 0.003);
    Reading both = warm;
    both.gaugeTemperatureC = 35.0;
    read({both});
    EXPECT_NEAR(held_.read("a").correctedBy, 0.0, 1e-4) << "part and gauge grow alike";
}

TEST_F(Evaluation, WhatNobodyReadIsReckonedFromItsTerms) {
    read({small::reading("hub", {3.500}), small::reading("a", {3.480, 3.484})});
    const Evaluated& track = held_.read("track");
    EXPECT_EQ(track.reading, nullptr);
    EXPECT_NEAR(track.value, 0.018, 1e-12) << "of means";
    EXPECT_NEAR(track.judged, 0.020, 1e-12) << "at the deepest place";
    EXPECT_NEAR(track.expanded, std::hypot(held_.read("hub").expanded, held_.read("a").expanded), 1e-12);
}

TEST_F(Evaluation, TheLastReadingCountsAndTheEarlierStay) {
    read({small::reading("c", {0.155}), small::reading("c", {0.100}), small::reading("c", {0.070})});
    EXPECT_DOUBLE_EQ(held_.read("c").value, 0.070);
    ASSERT_EQ(held_.of("c").earlier.size(), 2U);
    EXPECT_DOUBLE_EQ(held_.of("c").earlier[0].value, 0.155);
}

TEST_F(Evaluation, AReadingWithAFaultIsPassedOver) {
    read({odd("c", {0.07}, [](Reading& r) { r.unit = "inch"; })});
    EXPECT_EQ(held_.of("c").standing, Standing::NotRead);
}

TEST_F(Flags, AReadingThatSaysEverythingHasNone) {
    read({small::reading("c", {0.068}), small::reading("d", {11.993, 11.993, 11.993, 11.993})});
    EXPECT_EQ(held_.flags("c"), "");
    EXPECT_EQ(held_.flags("d"), "");
}

// Common practice, no source: a reading without instrument, method and position is not a reading.
TEST_F(Flags, MethodAndInstrumentMustBeSaid) {
    read({odd("c", {0.068}, [](Reading& r) { r.method = r.instrument = ""; })});
    EXPECT_EQ(held_.flags("c"), "no_method no_instrument");
    EXPECT_DOUBLE_EQ(held_.read("c").expanded, 0.008) << "as is usual for a dial";
    EXPECT_EQ(held_.of("c").standing, Standing::NotJudged);
}

TEST_F(Flags, AnotherMethodIsShownAndNotJudged) {
    read({odd("c", {0.068}, [](Reading& r) { r.method = "upright"; })});
    EXPECT_EQ(held_.flags("c"), "other_method");
    EXPECT_EQ(held_.of("c").standing, Standing::NotJudged);
}

// Common practice, no source: a flat anvil bridges a worn track and reads full thickness.
TEST_F(Flags, ABlindMethodSaysSoInWhatIsReckonedToo) {
    read({odd("a", {3.5},
              [](Reading& r) {
                  r.method = "flat";
                  r.instrument = "MIC";
              }),
          small::reading("hub", {3.5})});
    EXPECT_EQ(held_.flags("a"), "other_method blind");
    EXPECT_EQ(held_.flags("track"), "blind");
    EXPECT_EQ(held_.of("track").standing, Standing::NotJudged);
}

TEST_F(Flags, TheInstrumentIsKnownAndOfTheRightKind) {
    read({odd("a", {3.5}, [](Reading& r) { r.instrument = "MIC-99"; })});
    EXPECT_EQ(held_.flags("a"), "unknown_instrument");
    EXPECT_EQ(held_.of("a").standing, Standing::Within);
    read({odd("a", {3.5}, [](Reading& r) { r.instrument = "MIC"; })});
    EXPECT_EQ(held_.flags("a"), "wrong_instrument");
    EXPECT_EQ(held_.of("a").standing, Standing::NotJudged);
}

TEST_F(Flags, AnInstrumentHasItsRangeAndItsStep) {
    read({odd("c", {3.5}, [](Reading& r) { r.instrument = "DIAL"; })});
    EXPECT_THAT(held_.flags("c"), HasSubstr("out_of_range"));
    read({small::reading("a", {3.5005})});
    EXPECT_EQ(held_.flags("a"), "coarse");
    EXPECT_THAT(words("a"), HasSubstr("finer than BALL resolves"));
}

TEST_F(Flags, ACalibrationRunsOutByTheDayOfTheReading) {
    read({odd("c", {0.068}, [](Reading& r) { r.on = "2027-01-01"; })});
    EXPECT_EQ(held_.flags("c"), "overdue");
    read({odd("c", {0.068}, [](Reading& r) { r.on = "2026-12-31"; })});
    EXPECT_EQ(held_.flags("c"), "") << "the last day is one of them";
    read({odd("c", {0.068}, [](Reading& r) { r.on = ""; })}, "2027-06-01");
    EXPECT_EQ(held_.flags("c"), "overdue") << "by today";
    read({odd("c", {0.068}, [](Reading& r) { r.on = ""; })});
    EXPECT_EQ(held_.flags("c"), "") << "nobody knows the day";
}

TEST_F(Flags, RepeatsTooFarApartAreReadAgain) {
    read({small::reading("c", {0.060, 0.070})});
    EXPECT_EQ(held_.flags("c"), "") << "the boundary holds";
    read({small::reading("c", {0.060, 0.071})});
    EXPECT_EQ(held_.flags("c"), "spread");
}

TEST_F(Flags, AnOvalJournalIsBeyondItsLimit) {
    read({small::reading("d", {11.990, 11.996, 11.993, 11.993})});
    EXPECT_EQ(held_.flags("d"), "out_of_round");
    EXPECT_EQ(held_.of("d").standing, Standing::Beyond);
}

TEST_F(Flags, ASlipOfTenOrOfInchesIsAskedAbout) {
    read({small::reading("c", {0.68})});
    EXPECT_EQ(held_.flags("c"), "implausible");
    EXPECT_THAT(words("c"), HasSubstr("did you mean 0.068"));
    read({odd("d", {0.4722}, [](Reading& r) { r.instrument = ""; })});
    EXPECT_THAT(held_.flags("d"), HasSubstr("implausible")) << "inches";
}

TEST_F(Flags, AClearanceIsReadOnTheAssembly) {
    held_.build.seatings.pop_back();
    read({small::reading("c", {0.068}), small::reading("a", {3.5})});
    EXPECT_EQ(held_.flags("c"), "part_not_placed");
    EXPECT_THAT(words("c"), HasSubstr("COLLAR"));
    EXPECT_EQ(held_.of("c").standing, Standing::NotJudged);
    EXPECT_EQ(held_.flags("a"), "") << "a part is read on the bench";
    read({odd("c", {0.068}, [](Reading& r) { r.occasion = Occasion::Before; })});
    EXPECT_TRUE(held_.of("c").before->flags.empty());
}

} // namespace gapwise
