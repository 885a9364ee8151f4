#include "geometry/datum/clock.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <string>
#include <type_traits>
#include <utility>

namespace gapwise {

static_assert(!std::is_convertible_v<double, Clock> && !std::is_convertible_v<double, Degrees>);
static_assert(!std::is_convertible_v<Degrees, Clock>, "a clock is never a bare number");

namespace {

double turbineOf(double compressor) {
    return Clock::seenFrom(Side::Compressor, Degrees{compressor}).from(Side::Turbine).value;
}

double parsedOf(std::string_view text) {
    const Result<Degrees> parsed = parseClockwise(text, "--at");
    return parsed ? parsed->value : -1.0;
}

} // namespace

// Reversal about the vertical, cross products (GEO-03).
TEST(Clock, FromTheOtherSideIsReversedAboutTheVertical) {
    constexpr std::array<std::pair<double, double>, 7> kReversed{
        {{0, 0}, {45, 315}, {90, 270}, {120, 240}, {180, 180}, {270, 90}, {359, 1}}};
    for (const auto& [compressor, turbine] : kReversed)
        EXPECT_NEAR(turbineOf(compressor), turbine, 1e-12) << compressor;
}

// Clock hours: h becomes 12 - h, and 12 stays (GEO-04).
TEST(Clock, HoursFromTheOtherSide) {
    constexpr std::array<std::pair<const char*, const char*>, 6> kHours{{{"1:00", "11:00"},
                                                                         {"3:00", "9:00"},
                                                                         {"4:30", "7:30"},
                                                                         {"6:00", "6:00"},
                                                                         {"10:00", "2:00"},
                                                                         {"12:00", "12:00"}}};
    for (const auto& [here, there] : kHours)
        EXPECT_EQ(hoursAndMinutes(Degrees{turbineOf(parsedOf(here))}), there) << here;
}

// The lower half maps onto itself (GEO-08); nine o'clock becomes three (GEO-09).
TEST(Clock, LowerHalfIsTheSameFromBothSidesAndLeftIsNot) {
    int outside = 0;
    for (int degree = 90; degree <= 270; ++degree)
        outside += turbineOf(degree) < 90.0 || turbineOf(degree) > 270.0 ? 1 : 0;
    EXPECT_EQ(outside, 0);
    EXPECT_EQ(turbineOf(270.0), 90.0);
}

// An involution that keeps distances on the circle (GEO-05).
RC_GTEST_PROP(ClockProperty, ReversalIsAnInvolutionAndKeepsDistances, ()) {
    const double a = *rc::gen::inRange(0, 3600) / 10.0;
    const double b = *rc::gen::inRange(0, 3600) / 10.0;
    RC_ASSERT(apart(Degrees{turbineOf(turbineOf(a))}, Degrees{a}).value < 1e-12);
    RC_ASSERT(std::abs(apart(Degrees{turbineOf(a)}, Degrees{turbineOf(b)}).value -
                       apart(Degrees{a}, Degrees{b}).value) < 1e-12);
}

RC_GTEST_PROP(ClockProperty, ReadsBackWhatWasSaidFromTheSameSide, ()) {
    const double degrees = *rc::gen::inRange(-7200, 7200) / 10.0;
    const Side side = *rc::gen::element(Side::Compressor, Side::Turbine);
    const double back = Clock::seenFrom(side, Degrees{degrees}).from(side).value;
    RC_ASSERT(back >= 0.0 && back < 360.0);
    RC_ASSERT(apart(Degrees{back}, Degrees{degrees}).value < 1e-12);
}

RC_GTEST_PROP(ClockProperty, TurningIsClockwiseForWhoSaysIt, ()) {
    const double start = *rc::gen::inRange(0, 360);
    const double turn = *rc::gen::inRange(-360, 360);
    const Side side = *rc::gen::element(Side::Compressor, Side::Turbine);
    const Clock before = Clock::seenFrom(side, Degrees{start});
    const Clock after = before.turned(side, Degrees{turn});
    RC_ASSERT(apart(after.from(side), Degrees{start + turn}).value < 1e-12);
    RC_ASSERT(apart(after.from(opposite(side)), before.from(opposite(side)) - Degrees{turn}).value < 1e-12);
}

TEST(Clock, TwelveFromTheTurbineSideIsPlainZero) {
    EXPECT_FALSE(std::signbit(Clock::seenFrom(Side::Turbine, Degrees{0.0}).from(Side::Compressor).value));
    EXPECT_FALSE(std::signbit(turbineOf(0.0)));
}

TEST(Clock, DistanceDoesNotDependOnTheSide) {
    const Clock a = Clock::seenFrom(Side::Turbine, Degrees{10.0});
    const Clock b = Clock::seenFrom(Side::Compressor, Degrees{10.0});
    EXPECT_NEAR(apart(a, b).value, 20.0, 1e-12);
}

TEST(ClockText, PrintsHoursAndMinutes) {
    EXPECT_EQ(hoursAndMinutes(Degrees{0.0}), "12:00");
    EXPECT_EQ(hoursAndMinutes(Degrees{90.0}), "3:00");
    EXPECT_EQ(hoursAndMinutes(Degrees{122.0}), "4:04"); // 1 degree is 2 minutes.
    EXPECT_EQ(hoursAndMinutes(Degrees{15.0}), "12:30");
    EXPECT_EQ(hoursAndMinutes(Degrees{359.5}), "11:59");
    EXPECT_EQ(hoursAndMinutes(Degrees{-90.0}), "9:00");
}

TEST(ClockText, RoundsToTheMinuteAndOverTwelve) {
    EXPECT_EQ(hoursAndMinutes(Degrees{0.24}), "12:00");
    EXPECT_EQ(hoursAndMinutes(Degrees{0.25}), "12:01");
    EXPECT_EQ(hoursAndMinutes(Degrees{359.74}), "11:59");
    EXPECT_EQ(hoursAndMinutes(Degrees{359.75}), "12:00");
    EXPECT_EQ(hoursAndMinutes(Degrees{359.999999}), "12:00");
}

// The hour of a clock: half hours round up, so 45 is 2 and 135 is 5 (view vectors of the trade).
TEST(ClockText, NearestHourRoundsHalfUp) {
    constexpr std::array<std::pair<double, int>, 9> kHours{
        {{0, 12}, {14.9, 12}, {15, 1}, {45, 2}, {135, 5}, {344.9, 11}, {345, 12}, {359, 12}, {180, 6}}};
    for (const auto& [degrees, hour] : kHours)
        EXPECT_EQ(nearestHour(Degrees{degrees}), hour) << degrees;
}

TEST(ClockText, EveryMinuteReadsBack) {
    int wrong = 0;
    for (int minute = 0; minute < 720; ++minute)
        wrong += parsedOf(hoursAndMinutes(Degrees{minute * 0.5})) == minute * 0.5 ? 0 : 1;
    EXPECT_EQ(wrong, 0);
}

RC_GTEST_PROP(ClockTextProperty, PrintingLosesAtMostHalfAMinute, ()) {
    const double degrees = *rc::gen::inRange(0, 360000) / 1000.0;
    const double read = parsedOf(hoursAndMinutes(Degrees{degrees}));
    RC_ASSERT(read >= 0.0);
    RC_ASSERT(apart(Degrees{read}, Degrees{degrees}).value <= 0.25);
}

TEST(ClockText, ReadsHoursAndDegrees) {
    EXPECT_EQ(parsedOf("3:00"), 90.0);
    EXPECT_EQ(parsedOf("12:00"), 0.0);
    EXPECT_EQ(parsedOf("12:59"), 29.5);
    EXPECT_EQ(parsedOf("1:30"), 45.0);
    EXPECT_EQ(parsedOf("0deg"), 0.0);
    EXPECT_EQ(parsedOf("90deg"), 90.0);
    EXPECT_EQ(parsedOf("359.75deg"), 359.75);
    EXPECT_FALSE(std::signbit(parsedOf("-0deg")));
}

TEST(ClockText, EveryTruncationOfAGoodClockIsRefused) {
    for (const std::string good : {"10:30", "3:05", "123.5deg"})
        for (std::size_t length = 0; length < good.size(); ++length)
            EXPECT_FALSE(parseClockwise(good.substr(0, length), "--at")) << good.substr(0, length);
}

TEST(ClockText, GarbageIsRefused) {
    for (const std::string_view bad : {"3",
                                       "3:0",
                                       "3:000",
                                       "3:60",
                                       "0:30",
                                       "13:00",
                                       "-3:00",
                                       "+3:00",
                                       "3:-1",
                                       "3:+1",
                                       " 3:00",
                                       "3:00 ",
                                       "3.00",
                                       "3:0a",
                                       "a:00",
                                       ":30",
                                       "::",
                                       "100:00",
                                       "90",
                                       "90 deg",
                                       "90degrees",
                                       "90DEG",
                                       "deg",
                                       "-1deg",
                                       "360deg",
                                       "359.99999999999999999999deg",
                                       "nandeg",
                                       "infdeg",
                                       "1e999deg",
                                       "0x10deg",
                                       "90deg90deg",
                                       "right",
                                       ""})
        EXPECT_FALSE(parseClockwise(bad, "--at")) << '"' << bad << '"';
    EXPECT_FALSE(parseClockwise(std::string_view{"3:00\0", 5}, "--at"));
}

TEST(ClockText, RefusalSaysWhereWhatAndWhatIsAllowed) {
    const Result<Degrees> refused = parseClockwise("25:00", "--drain");
    ASSERT_FALSE(refused);
    ASSERT_EQ(refused.errors().size(), 1U);
    EXPECT_EQ(refused.errors().front().where, "--drain");
    EXPECT_EQ(refused.errors().front().found, "\"25:00\"");
    EXPECT_NE(refused.errors().front().allowed.find("h:mm"), std::string::npos);
}

TEST(SideText, ReadsBothEndsAndNothingElse) {
    for (const Side side : {Side::Compressor, Side::Turbine}) {
        const Result<Side> read = parseSide(nameOf(side), "--from");
        ASSERT_TRUE(read);
        EXPECT_EQ(*read, side);
    }
    for (const std::string_view bad : {"", "Compressor", "comp", "left", "turbine ", "compressors"})
        EXPECT_FALSE(parseSide(bad, "--from")) << bad;
    EXPECT_EQ(parseSide("left", "--from").errors().front().allowed, "compressor or turbine");
}

} // namespace gapwise
