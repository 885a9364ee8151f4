#include "viewer/scene/section.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

Section at(Section::Kind kind, double fromCompressor) {
    return {.kind = kind, .removed = Clock::seenFrom(Side::Compressor, Degrees{fromCompressor})};
}

double openedAt(const Vec3& toEye, Section::Kind kind) {
    return openedToward(toEye, kind).removed.from(Side::Compressor).value;
}

constexpr auto kHalf = Section::Kind::Half;
constexpr auto kQuarter = Section::Kind::Quarter;

} // namespace

// A clock from the other side is 360° less it: clock.h.
TEST(SectionWords, NameTheClockAndTheSide) {
    EXPECT_EQ(wordsOf(at(kHalf, 90.0), Side::Compressor), "the half at 3:00 seen from the compressor side");
    EXPECT_EQ(wordsOf(at(kHalf, 90.0), Side::Turbine), "the half at 9:00 seen from the turbine side");
    EXPECT_EQ(wordsOf(at(kQuarter, 45.0), Side::Compressor),
              "the quarter from 12:00 to 3:00 seen from the compressor side");
    EXPECT_EQ(wordsOf(at(kQuarter, 45.0), Side::Turbine),
              "the quarter from 9:00 to 12:00 seen from the turbine side");
}

// In the datum axes +X is 3:00 from the compressor side, +Y is 12:00.
TEST(OpenedToward, TakesTheHalfAwayThatHidesThePlaneThroughThePorts) {
    EXPECT_EQ(openedAt({0.9, 0.3, 0.3}, kHalf), 90.0);
    EXPECT_EQ(openedAt({-0.9, 0.3, 0.3}, kHalf), 270.0);
    EXPECT_EQ(openedAt({-0.6, -0.9, 0.3}, kHalf), 270.0) << "at a slant the ports are worth more";
}

TEST(OpenedToward, ShowsNoPlaneFromItsEdge) {
    EXPECT_EQ(openedAt({0.0, -0.98, 0.17}, kHalf), 180.0);
    EXPECT_EQ(openedAt({0.3, 0.9, 0.17}, kHalf), 0.0);
}

TEST(OpenedToward, TakesTheQuarterAwayThatTheEyeLooksInto) {
    EXPECT_EQ(openedAt({0.6, 0.6, 0.2}, kQuarter), 45.0);
    EXPECT_EQ(openedAt({0.6, -0.6, 0.2}, kQuarter), 135.0);
    EXPECT_EQ(openedAt({-0.6, -0.6, 0.2}, kQuarter), 225.0);
    EXPECT_EQ(openedAt({-0.6, 0.6, 0.2}, kQuarter), 315.0);
    EXPECT_EQ(openedAt({-1.0, 0.0, 0.0}, kQuarter), 315.0) << "level with the shaft: the upper one";
}

TEST(OpenedToward, AlongTheShaftIsTheUsualSide) {
    for (const double side : {1.0, -1.0}) {
        EXPECT_EQ(openedToward({0.0, 0.0, side}, kHalf), Section{});
        EXPECT_EQ(openedAt({0.0, 0.0, side}, kQuarter), 45.0);
    }
}

} // namespace gapwise
