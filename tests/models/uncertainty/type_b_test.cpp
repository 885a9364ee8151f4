#include "models/uncertainty/type_b.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace gapwise::test {

// JCGM 100:2008 4.3.7, 4.3.9 (UNC-13).
TEST(TypeB, DividesHalfWidthsByTheirShape) {
    EXPECT_NEAR(standardFromRectangular(1.0), 0.57735, 1e-5);
    EXPECT_NEAR(standardFromTriangular(1.0), 0.40825, 1e-5);
    EXPECT_NEAR(standardFromArcsine(1.0), 0.70711, 1e-5);
}

// JCGM 100:2008 F.2.2.1 (UNC-13).
TEST(TypeB, ResolutionIsARectangleOfHalfAStep) {
    EXPECT_NEAR(standardFromResolution(0.01), 2.887e-3, 1e-6);
    EXPECT_NEAR(standardFromResolution(0.001), 0.2887e-3, 1e-7);
    EXPECT_DOUBLE_EQ(standardFromResolution(0.01), standardFromRectangular(0.005));
}

TEST(TypeB, CertificateGivesUOverK) {
    EXPECT_DOUBLE_EQ(standardFromExpanded(0.004, 2.0), 0.002);
    EXPECT_EQ(standardFromExpanded(0.0, 2.0), 0.0);
}

// A published test of a quality program (UNC-35).
TEST(Statistics, OfFiveReadings) {
    const Sample sample = statisticsOf(std::array{10.002, 10.001, 9.999, 10.000, 9.998});
    EXPECT_EQ(sample.count, 5U);
    EXPECT_NEAR(sample.mean, 10.0, 1e-7);
    EXPECT_NEAR(sample.deviation, 0.0015811, 1e-7);
    EXPECT_NEAR(sample.range, 0.004, 1e-7);
    EXPECT_NEAR(sample.standard, 0.0015811 / std::sqrt(5.0), 1e-7);
    EXPECT_EQ(sample.degreesOfFreedom, 4.0);
}

TEST(Statistics, OneReadingTellsNothingOfTheSpread) {
    const Sample sample = statisticsOf(std::array{0.081});
    EXPECT_EQ(sample.count, 1U);
    EXPECT_EQ(sample.mean, 0.081);
    EXPECT_EQ(sample.deviation, 0.0);
    EXPECT_EQ(sample.degreesOfFreedom, 0.0);
}

TEST(Statistics, EqualReadingsDoNotScatter) {
    const Sample sample = statisticsOf(std::array{0.081, 0.081, 0.081});
    EXPECT_NEAR(sample.deviation, 0.0, 1e-15);
    EXPECT_EQ(sample.range, 0.0);
}

} // namespace gapwise::test
