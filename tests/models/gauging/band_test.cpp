#include "models/gauging/band.h"

#include <gtest/gtest.h>

namespace gapwise::test {

TEST(Band, LiesBetweenTwoNumbersInEitherOrder) {
    EXPECT_EQ(bandOf(0.1, 0.3), (Band{0.1, 0.3}));
    EXPECT_EQ(bandOf(0.3, 0.1), (Band{0.1, 0.3}));
}

TEST(Band, HoldsItsEndsAndNothingBeyond) {
    const Band band{0.05, 0.09};
    EXPECT_TRUE(holds(band, 0.05));
    EXPECT_TRUE(holds(band, 0.09));
    EXPECT_TRUE(holds(band, 0.03 + 0.06)); // 0.09 with the noise of an addition.
    EXPECT_FALSE(holds(band, 0.09004));    // Would be printed 0.090 (ENG-16).
    EXPECT_FALSE(holds(band, 0.04999));
}

TEST(Band, OverlapsWhereSomethingLiesInBoth) {
    EXPECT_TRUE(overlap({0.1, 0.2}, {0.2, 0.3}));
    EXPECT_TRUE(overlap({0.1, 0.4}, {0.2, 0.3}));
    EXPECT_TRUE(overlap({0.2, 0.3}, {0.1, 0.4}));
    EXPECT_FALSE(overlap({0.1, 0.2}, {0.21, 0.3}));
    EXPECT_FALSE(overlap({0.21, 0.3}, {0.1, 0.2}));
}

TEST(Band, IsSaidWithSoManyDecimals) {
    EXPECT_EQ(bandWords({0.196, 0.237}, 3), "0.196–0.237 mm");
    EXPECT_EQ(bandWords({0.196, 0.237}, 2), "0.20–0.24 mm");
    EXPECT_EQ(bandWords({0.201, 0.202}, 2), "0.20 mm");
}

} // namespace gapwise::test
