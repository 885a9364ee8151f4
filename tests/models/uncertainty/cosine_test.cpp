#include "models/uncertainty/cosine.h"

#include <gtest/gtest.h>

#include <utility>

namespace gapwise::test {

// A gauge maker's guide (UNC-40); it prints 0.87 or 0.86 for 30°.
TEST(LeverIndicator, ReadsTooMuchByTheCosine) {
    const std::pair<double, double> published[] = {{10, 0.98}, {20, 0.94}, {30, 0.87},
                                                   {40, 0.77}, {50, 0.64}, {60, 0.50}};
    for (const auto& [degrees, factor] : published)
        EXPECT_NEAR(trueReading(1.0, Degrees{degrees}), factor, 0.01);
}

// The same guide (UNC-40).
TEST(LeverIndicator, AFifthOfAMillimetreAslant) {
    EXPECT_NEAR(trueReading(0.200, Degrees{10.0}), 0.196, 0.0015);
    EXPECT_NEAR(trueReading(0.200, Degrees{20.0}), 0.188, 0.0005);
    EXPECT_NEAR(trueReading(0.200, Degrees{30.0}), 0.174, 0.001);
}

// Worked examples (UNC-41 in inches, UNC-42 with the factor 0.87).
TEST(LeverIndicator, WorkedExamples) {
    EXPECT_NEAR(trueReading(0.004, Degrees{60.0}), 0.002, 1e-15);
    EXPECT_NEAR(trueReading(0.05, Degrees{30.0}), 0.0435, 0.0005);
}

TEST(Cosine, StraightReadsTrueAndEitherLeanAlike) {
    EXPECT_EQ(trueReading(0.081, Degrees{0.0}), 0.081);
    EXPECT_EQ(trueReading(0.081, Degrees{25.0}), trueReading(0.081, Degrees{-25.0}));
}

// Common practice, no source: the stem parallel to the axis; 10° off costs 1.5 %.
TEST(Cosine, TenDegreesOffTheAxisCostOneAndAHalfPercent) {
    EXPECT_NEAR(cosineError(Degrees{10.0}), 0.015, 0.0005);
    EXPECT_EQ(cosineError(Degrees{0.0}), 0.0);
    EXPECT_NEAR(trueReading(0.080 * (1.0 + cosineError(Degrees{10.0})), Degrees{10.0}), 0.080, 1e-15);
}

} // namespace gapwise::test
