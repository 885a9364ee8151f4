#include "models/gauging/repeats.h"

#include <gtest/gtest.h>

#include <array>

namespace gapwise::test {

TEST(Repeats, TellMeanAndSpread) {
    const Repeats repeats = repeatsOf(std::array{0.067, 0.069, 0.068}); // Invented readings.
    EXPECT_EQ(repeats.count, 3U);
    EXPECT_NEAR(repeats.mean, 0.068, 1e-12);
    EXPECT_EQ(repeats.least, 0.067);
    EXPECT_EQ(repeats.most, 0.069);
    EXPECT_NEAR(repeats.spread, 0.002, 1e-12);
}

TEST(Repeats, MayLieAsFarApartAsIsAllowed) {
    EXPECT_TRUE(repeatable(repeatsOf(std::array{0.060, 0.070}), 0.010));
    EXPECT_FALSE(repeatable(repeatsOf(std::array{0.060, 0.0701}), 0.010));
    EXPECT_TRUE(repeatable(repeatsOf(std::array{0.068}), 0.0));
}

} // namespace gapwise::test
