#include "geometry/datum/words.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(Words, AClockNamesItsSide) {
    EXPECT_EQ(clockSeenFrom(Degrees{90.0}, Side::Compressor), "3:00 seen from the compressor side");
    EXPECT_EQ(clockSeenFrom(Degrees{0.0}, Side::Turbine), "12:00 seen from the turbine side");
}

TEST(Words, BenchPhrasesOfAnUprightPieceSpeakToThePerson) {
    EXPECT_EQ(benchPhrase(Degrees{0.0}, EndUp::Turbine), "away from you");
    EXPECT_EQ(benchPhrase(Degrees{90.0}, EndUp::Turbine), "to your right");
    EXPECT_EQ(benchPhrase(Degrees{180.0}, EndUp::Compressor), "toward you");
    EXPECT_EQ(benchPhrase(Degrees{270.0}, EndUp::Compressor), "to your left");
    EXPECT_EQ(benchPhrase(Degrees{45.0}, EndUp::Turbine), "away from you and to your right");
    EXPECT_EQ(benchPhrase(Degrees{225.0}, EndUp::Turbine), "toward you and to your left");
}

TEST(Words, BenchPhrasesOfALevelPieceSpeakOfUpAndDown) {
    EXPECT_EQ(benchPhrase(Degrees{0.0}, EndUp::Level), "up");
    EXPECT_EQ(benchPhrase(Degrees{90.0}, EndUp::Level), "to your right");
    EXPECT_EQ(benchPhrase(Degrees{135.0}, EndUp::Level), "down and to your right");
    EXPECT_EQ(benchPhrase(Degrees{180.0}, EndUp::Level), "down");
}

TEST(Words, AnAttitudeSaysWhereTheDrainIs) {
    EXPECT_EQ(describe(uprightAttitude(Side::Turbine, Degrees{270.0})), "turbine end up, drain at 9:00");
    EXPECT_EQ(describe(levelAttitude(Side::Turbine, Degrees{180.0})),
              "level, drain at 6:00 seen from the turbine side");
}

TEST(Words, EveryEndUpHasItsNameBothWays) {
    for (const EndUp up : {EndUp::Compressor, EndUp::Turbine, EndUp::Level}) {
        const Result<EndUp> read = parseEndUp(nameOf(up), "--up");
        ASSERT_TRUE(read);
        EXPECT_EQ(*read, up);
    }
    const Result<EndUp> bad = parseEndUp("upright", "--up");
    ASSERT_FALSE(bad);
    EXPECT_EQ(describe(bad.errors().front()),
              "--up: found \"upright\"; allowed: compressor, turbine or level");
}

} // namespace gapwise
