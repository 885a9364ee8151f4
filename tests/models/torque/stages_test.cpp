#include "models/torque/stages.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

namespace gapwise::test {

// Invented torques; the percentages of the last case as in ASME PCC-1 appendix F (TQ-32), about 30, 60 to 70,
// 100.
TEST(Stages, ArePartsOfTheFinalTorque) {
    EXPECT_THAT(stageTorquesNm(22.0, std::vector{45.0, 100.0}),
                ::testing::ElementsAre(::testing::DoubleNear(9.9, 1e-12), 22.0));
    EXPECT_THAT(stageTorquesNm(65.0, std::vector{40.0, 70.0, 100.0}),
                ::testing::ElementsAre(26.0, ::testing::DoubleNear(45.5, 1e-12), 65.0));
    EXPECT_TRUE(areStages(std::vector{30.0, 70.0, 100.0}));
}

TEST(Stages, RiseToTheWhole) {
    EXPECT_TRUE(areStages(std::vector{100.0}));
    EXPECT_FALSE(areStages(std::vector<double>{}));
    EXPECT_FALSE(areStages(std::vector{45.0, 90.0}));
    EXPECT_FALSE(areStages(std::vector{70.0, 40.0, 100.0}));
    EXPECT_FALSE(areStages(std::vector{45.0, 45.0, 100.0}));
    EXPECT_FALSE(areStages(std::vector{0.0, 100.0}));
    EXPECT_FALSE(areStages(std::vector{50.0, std::numeric_limits<double>::quiet_NaN(), 100.0}));
}

} // namespace gapwise::test
