#include "models/chain/prediction.h"
#include "tests/support/chain_frame.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace gapwise::test {

namespace {

ChainTrials drawn(const Frame& frame, const std::string& chain, const TrialPlan& plan,
                  const Window& window = {}) {
    return drawTrials(chainOf(frame, chain), dimensionValues(frame, {}), window, plan);
}

} // namespace

TEST(Trials, NormalLinksComeToTheRootSumOfSquares) {
    const Frame frame = birchChainFrame();
    const Prediction predicted = predict(chainOf(frame, "c"), dimensionValues(frame, {}));
    const ChainTrials trials = drawn(frame, "c", {.trials = 400'000});
    // Five standard errors each.
    EXPECT_NEAR(trials.meanMm, predicted.valueMm, 5.0 * predicted.standardMm / std::sqrt(4e5));
    EXPECT_NEAR(trials.standardMm, predicted.standardMm, 5.0 * predicted.standardMm / std::sqrt(8e5));
    EXPECT_NEAR(trials.standardMm, predicted.rssMm / 3.0, 1e-4);
    EXPECT_NEAR(trials.most95Mm - trials.least95Mm, 2.0 * 1.96 * predicted.standardMm, 1e-4);
}

// STK-05: where each tolerance is three standard deviations, the root sum of squares holds 99.73 %.
TEST(Trials, TheRootSumOfSquaresHoldsThreeStandardDeviations) {
    const Frame frame = alderChainFrame();
    const Prediction predicted = predict(chainOf(frame, "c"), dimensionValues(frame, {}));
    const ChainTrials trials =
        drawn(frame, "c", {.trials = 1'000'000},
              {predicted.valueMm - predicted.rssMm, predicted.valueMm + predicted.rssMm});
    EXPECT_NEAR(trials.below + trials.above, 0.0027, 2e-4);
    EXPECT_NEAR(trials.below, 0.00135, 2e-4);
}

// STK-07, and the sum of four equal rectangles is bounded by the worst case.
TEST(Trials, RectangularLinksAddByTheirVariances) {
    const auto scatter = Scatter::Rectangular;
    const Frame frame = stackFrame({{"a", 1, 0, 1, scatter},
                                    {"b", 1, 0, 1, scatter},
                                    {"c", -1, 0, 1, scatter},
                                    {"d", -1, 0, 1, scatter}});
    const ChainTrials trials = drawn(frame, "gap", {.trials = 400'000}, {-4.0, 4.0});
    EXPECT_NEAR(trials.standardMm, 1.1547, 0.005);
    EXPECT_EQ(trials.below + trials.above, 0.0);
}

TEST(Trials, TriangularLinksAddByTheirVariances) {
    const Frame frame =
        stackFrame({{"a", 1, 5, 1, Scatter::Triangular}, {"b", -1, 5, 1, Scatter::Triangular}});
    EXPECT_NEAR(drawn(frame, "gap", {.trials = 400'000}).standardMm, std::sqrt(2.0 / 6.0), 0.003);
}

TEST(Trials, TheSameSeedGivesTheSameOnAnyNumberOfThreads) {
    const Frame frame = alderChainFrame();
    const ChainTrials one = drawn(frame, "N_C", {.trials = 50'000, .seed = 7, .threads = 1});
    const ChainTrials two = drawn(frame, "N_C", {.trials = 50'000, .seed = 7, .threads = 2});
    const ChainTrials other = drawn(frame, "N_C", {.trials = 50'000, .seed = 8, .threads = 1});
    EXPECT_EQ(one.meanMm, two.meanMm);
    EXPECT_EQ(one.least95Mm, two.least95Mm);
    EXPECT_EQ(one.histogram.front().share, two.histogram.front().share);
    EXPECT_NE(one.meanMm, other.meanMm);
}

TEST(Trials, BarsAreAsWideAsOneAnotherAndHoldEveryTrial) {
    const ChainTrials trials = drawn(alderChainFrame(), "c", {.trials = 20'000});
    ASSERT_EQ(trials.histogram.size(), 40U);
    double sum = 0.0;
    for (const Bar& bar : trials.histogram)
        sum += bar.share;
    EXPECT_NEAR(sum, 1.0, 1e-9);
    const double width = trials.histogram[1].leastMm - trials.histogram[0].leastMm;
    EXPECT_NEAR(trials.histogram[39].leastMm - trials.histogram[38].leastMm, width, 1e-12);
}

TEST(Trials, AnOpenWindowLeavesNothingOutside) {
    const ChainTrials trials = drawn(alderChainFrame(), "c", {.trials = 20'000}, {std::nullopt, 0.070});
    EXPECT_EQ(trials.below, 0.0);
    EXPECT_NEAR(trials.above, 0.5, 0.02);
}

TEST(Trials, WhatDoesNotScatterIsOneBar) {
    const Frame frame = stackFrame({{"a", 1, 5.0, 0.0}, {"b", -1, 4.0, 0.0}});
    const ChainTrials trials = drawn(frame, "gap", {.trials = 1'000}, {1.0, 1.0});
    EXPECT_EQ(trials.meanMm, 1.0);
    EXPECT_EQ(trials.standardMm, 0.0);
    EXPECT_EQ(trials.histogram.size(), 1U);
    EXPECT_EQ(trials.below + trials.above, 0.0);
}

TEST(Trials, ADimensionPassedTwiceIsDrawnOnce) {
    Frame frame = stackFrame({{"a", 1, 5.0, 0.3}});
    frame.chains.front().links.push_back({.of = QuantityId{"a"}, .sign = 1});
    EXPECT_NEAR(drawn(frame, "gap", {.trials = 200'000}).standardMm, 0.2, 0.002);
}

} // namespace gapwise::test
