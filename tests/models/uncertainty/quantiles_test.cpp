#include "models/uncertainty/quantiles.h"

#include <gtest/gtest.h>

#include <limits>

namespace gapwise::test {

namespace {

constexpr double kInfinite = std::numeric_limits<double>::infinity();

} // namespace

// JCGM 100:2008 table G.2 (UNC-12).
TEST(CoverageFactor, IsThePrintedFactorOfTableG2) {
    EXPECT_NEAR(coverageFactor(0.6827, 1), 1.84, 0.005);
    EXPECT_NEAR(coverageFactor(0.95, 1), 12.71, 0.005);
    EXPECT_NEAR(coverageFactor(0.95, 10), 2.23, 0.005);
    EXPECT_NEAR(coverageFactor(0.90, 20), 1.72, 0.005);
    EXPECT_NEAR(coverageFactor(0.99, 16), 2.92, 0.005);
    EXPECT_NEAR(coverageFactor(0.9973, 5), 5.51, 0.005);
    EXPECT_NEAR(coverageFactor(0.9545, 50), 2.05, 0.005);
    EXPECT_NEAR(coverageFactor(0.9973, kInfinite), 3.00, 0.005);
}

// JCGM 100:2008 table G.1: the normal distribution.
TEST(CoverageFactor, WithoutEndOfDegreesIsTheNormalFactor) {
    EXPECT_NEAR(coverageFactor(0.6827, kInfinite), 1.0, 5e-5);
    EXPECT_NEAR(coverageFactor(0.90, kInfinite), 1.645, 5e-4);
    EXPECT_NEAR(coverageFactor(0.95, kInfinite), 1.960, 5e-4);
    EXPECT_NEAR(coverageFactor(0.99, kInfinite), 2.576, 5e-4);
    EXPECT_NEAR(coverageFactor(0.95, 1e7), coverageFactor(0.95, kInfinite), 1e-6);
}

// ISO 14253-1:2017, from memory (UNC-27).
TEST(NormalQuantile, Of95PercentIs16449) {
    EXPECT_NEAR(normalQuantile(0.95), 1.6449, 5e-5);
    EXPECT_NEAR(normalQuantile(0.5), 0.0, 1e-15);
    EXPECT_NEAR(normalQuantile(0.05), -normalQuantile(0.95), 1e-12);
}

TEST(NormalCumulative, InvertsTheQuantile) {
    for (const double p : {1e-9, 0.00135, 0.1, 0.5, 0.9, 0.99865})
        EXPECT_NEAR(normalCumulative(normalQuantile(p)), p, 1e-12);
}

TEST(NormalCumulative, EndsAtNothingAndAll) {
    EXPECT_EQ(normalCumulative(-kInfinite), 0.0);
    EXPECT_EQ(normalCumulative(kInfinite), 1.0);
}

TEST(StudentQuantile, IsOddAboutTheMedian) {
    EXPECT_NEAR(studentQuantile(0.5, 4), 0.0, 1e-12);
    EXPECT_NEAR(studentQuantile(0.025, 4), -studentQuantile(0.975, 4), 1e-12);
}

} // namespace gapwise::test
