#include "models/chain/gap_fit.h"

#include "tests/support/chain_frame.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace gapwise::test {

namespace {

/// Two gaps, `one` = a + s and `two` = b + s, that share the dimension s.
Frame twoGaps(double shared) {
    Frame frame = stackFrame({{"a", 1, 1.0, 0.0}, {"b", 1, 2.0, 0.0}, {"s", 1, 3.0, shared}});
    const auto chain = [](const char* id, const char* own) {
        return Chain{.id = QuantityId{id},
                     .name = id,
                     .links = {{.of = QuantityId{own}, .sign = 1}, {.of = QuantityId{"s"}, .sign = 1}}};
    };
    frame.chains = {chain("one", "a"), chain("two", "b")};
    return frame;
}

LengthFit fitOf(const Frame& frame, const std::vector<MeasuredValue>& gaps, std::array<double, 2> effects) {
    const CaseFile known{.gaps = gaps};
    return GapFit{investigate(frame, known)}.fit(effects).value();
}

} // namespace

TEST(GapFit, IndependentGapsAreWeighedByTheirUncertainty) {
    // Ordinary weighted mean of 0.10 (u = 0.01) and 0.04 (u = 0.02): weights 4 and 1.
    const std::vector<MeasuredValue> gaps{read("one", 4.10, 0.02), read("two", 5.04, 0.04)};
    const LengthFit fit = fitOf(twoGaps(0.0), gaps, {1.0, 1.0});
    EXPECT_NEAR(fit.lengthMm, 0.088, 1e-9);
    EXPECT_NEAR(fit.standardMm, 0.01 / std::sqrt(1.25), 1e-9);
    EXPECT_NEAR(fit.misfit, std::pow(0.012 / 0.01, 2) + std::pow(0.048 / 0.02, 2), 1e-6);
}

TEST(GapFit, GapsThatShareAnUncertainSizeMayDeviateTogether) {
    // Both 0.10 off and s known to ±0.3 only: what moves one alone is contradicted by less than the readings
    // alone say, and the difference of the gaps counts as sharply as ever.
    const std::vector<MeasuredValue> gaps{read("one", 4.10, 0.02), read("two", 5.10, 0.02)};
    EXPECT_LT(fitOf(twoGaps(0.3), gaps, {1.0, 1.0}).misfit, 1e-6);
    EXPECT_NEAR(fitOf(twoGaps(0.3), gaps, {1.0, 0.0}).misfit, 1.0 / (1.0 + 0.01), 0.01);
    EXPECT_NEAR(fitOf(twoGaps(0.0), gaps, {1.0, 0.0}).misfit, 100.0, 1e-6);
}

TEST(GapFit, AChangeThatMovesNoGapHasNoFit) {
    const Frame frame = twoGaps(0.0);
    const CaseFile known{.gaps = readings({{"one", 4.1}})};
    const std::array effects{0.0};
    EXPECT_FALSE(GapFit{investigate(frame, known)}.fit(effects));
}

TEST(GapFit, ReadingsWithoutUncertaintyAndOneThatFollowsFromTheOthersStillFit) {
    const Frame frame = alderChainFrame();
    const CaseFile known{.gaps = readings({{"c", 0.155}, {"N_C", 34.915}, {"N_T", 35.070}}, 0.0)};
    const std::array effects{1.0, -1.0, 0.0};
    const LengthFit fit = GapFit{investigate(frame, known)}.fit(effects).value();
    EXPECT_NEAR(fit.lengthMm, 0.085, 1e-9);
    EXPECT_LT(fit.misfit, 1e-6);
}

// Tables of chi-squared, 99 and 99.9 %.
TEST(ChiSquared, BoundIsNearTheTables) {
    EXPECT_EQ(chiSquaredBound(0, 2.326), 0.0);
    EXPECT_NEAR(chiSquaredBound(1, 2.326), 6.635, 0.07);
    EXPECT_NEAR(chiSquaredBound(5, 2.326), 15.086, 0.05);
    EXPECT_NEAR(chiSquaredBound(5, 3.090), 20.515, 0.25);
    EXPECT_NEAR(chiSquaredBound(10, 2.326), 23.209, 0.05);
}

} // namespace gapwise::test
