#include "models/uncertainty/trials.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gapwise::test {

namespace {

Trials oneToTen() {
    return Trials{{7, 3, 10, 1, 5, 9, 2, 8, 6, 4}};
}

std::vector<double> drawnValues() {
    std::vector<double> values;
    for (int number = *rc::gen::inRange(2, 400); number > 0; --number)
        values.push_back(*rc::gen::inRange(-1000, 1000) / 100.0);
    return values;
}

} // namespace

TEST(Trials, MeanAndDeviation) {
    EXPECT_DOUBLE_EQ(oneToTen().mean().value, 5.5);
    EXPECT_NEAR(oneToTen().deviation().value, 3.02765, 1e-5);
    EXPECT_NEAR(oneToTen().mean().standardError, 3.02765 / std::sqrt(10.0), 1e-5);
}

TEST(Trials, QuantilesAreDrawnValues) {
    EXPECT_EQ(oneToTen().quantile(0.001).value, 1.0);
    EXPECT_EQ(oneToTen().quantile(0.5).value, 6.0);
    EXPECT_EQ(oneToTen().quantile(0.999).value, 10.0);
}

TEST(Trials, CentralIntervalLeavesOutAsMuchOnEitherSide) {
    const CoverageInterval interval = oneToTen().centralInterval(0.6);
    EXPECT_EQ(interval.least, 3.0);
    EXPECT_EQ(interval.most, 9.0);
}

TEST(Trials, ShortestIntervalLiesWhereValuesAreDense) {
    const CoverageInterval interval = Trials{{0, 50, 51, 52, 53, 54, 55, 56, 100, 200}}.shortestInterval(0.6);
    EXPECT_EQ(interval.least, 50.0);
    EXPECT_EQ(interval.most, 56.0);
}

TEST(Trials, OnALimitIsNotOutside) {
    EXPECT_DOUBLE_EQ(oneToTen().probabilityOutside({.least = 2.0, .most = 8.0}).value, 0.3);
    EXPECT_DOUBLE_EQ(oneToTen().probabilityOutside({.most = 8.0}).value, 0.2);
    EXPECT_EQ(oneToTen().probabilityOutside({}).value, 0.0);
}

TEST(Trials, AShareOfNothingIsNoCertainty) {
    EXPECT_NEAR(oneToTen().probabilityOutside({}).standardError, std::sqrt(0.1 * 0.9 / 10.0), 1e-12);
    EXPECT_GT(oneToTen().probabilityOutside({.most = 0.0}).standardError, 0.0);
}

TEST(Trials, HistogramCountsAllOfThem) {
    const Histogram histogram = oneToTen().histogram(3);
    EXPECT_EQ(histogram.least, 1.0);
    EXPECT_EQ(histogram.binWidth, 3.0);
    EXPECT_EQ(histogram.counts, (std::vector<std::size_t>{3, 3, 4}));
}

TEST(Trials, ThatAllAgreeHaveNoWidth) {
    const Trials trials{{0.07, 0.07, 0.07}};
    EXPECT_EQ(trials.deviation().value, 0.0);
    EXPECT_EQ(trials.quantile(0.9).value, 0.07);
    EXPECT_EQ(trials.shortestInterval(0.9).width(), 0.0);
    EXPECT_EQ(trials.histogram(4).counts, (std::vector<std::size_t>{3, 0, 0, 0}));
}

TEST(Moments, OfAFarMeanLoseNothing) {
    const Trials trials{{1e9 + 1, 1e9 + 2, 1e9 + 3}};
    EXPECT_DOUBLE_EQ(trials.mean().value, 1e9 + 2);
    EXPECT_DOUBLE_EQ(trials.deviation().value, 1.0);
}

RC_GTEST_PROP(Moments, JoinToThoseOfAllValues, ()) {
    const std::vector<double> values = drawnValues();
    const std::span<const double> all{values};
    const auto cut = *rc::gen::inRange<std::size_t>(0, values.size() + 1);
    Moments joined = momentsOf(all.first(cut));
    joined.join(momentsOf(all.subspan(cut)));
    RC_ASSERT(joined.count == static_cast<double>(values.size()));
    RC_ASSERT(std::abs(joined.mean - momentsOf(all).mean) < 1e-12);
    RC_ASSERT(std::abs(joined.squares - momentsOf(all).squares) < 1e-8);
}

// The slow exact answer: everything sorted.
RC_GTEST_PROP(Trials, AnswerAsSortedValuesDo, ()) {
    const std::vector<double> values = drawnValues();
    std::vector<double> sorted = values;
    std::ranges::sort(sorted);
    const Trials trials{values};
    const double p = *rc::gen::inRange(1, 100) / 100.0;
    const auto rank = static_cast<std::size_t>(p * static_cast<double>(values.size()));
    RC_ASSERT(trials.quantile(p).value == sorted[std::min(rank, sorted.size() - 1)]);
    const auto held = std::min(static_cast<std::size_t>(std::llround(p * static_cast<double>(values.size()))),
                               values.size() - 1);
    double shortest = sorted.back() - sorted.front();
    for (std::size_t i = 0; i + held < sorted.size(); ++i)
        shortest = std::min(shortest, sorted[i + held] - sorted[i]);
    RC_ASSERT(trials.shortestInterval(p).width() == shortest);
}

RC_GTEST_PROP(Trials, HistogramKeepsTheNumber, ()) {
    const std::vector<double> values = drawnValues();
    const Histogram histogram = Trials{values}.histogram(*rc::gen::inRange<std::size_t>(1, 50));
    RC_ASSERT(std::accumulate(histogram.counts.begin(), histogram.counts.end(), std::size_t{0}) ==
              values.size());
}

} // namespace gapwise::test
