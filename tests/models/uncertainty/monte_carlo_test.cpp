#include "models/uncertainty/monte_carlo.h"

#include "models/uncertainty/quantiles.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <numbers>

namespace gapwise::test {

namespace {

using Inputs = std::vector<InputQuantity>;

Trials sumOf(const Inputs& inputs, const MonteCarloSettings& settings = {}) {
    return runLinear(inputs, {.coefficients = std::vector<double>(inputs.size(), 1.0)}, settings).trials;
}

Trials drawnFrom(const InputQuantity& input) {
    return sumOf({input});
}

/// The mean of the k-th powers of the values.
double meanPower(const Trials& trials, int k) {
    double sum = 0.0;
    for (const double value : trials.values())
        sum += std::pow(value, k);
    return sum / static_cast<double>(trials.count());
}

double first(std::span<const double> x) {
    return x[0];
}

bool equalValues(const Trials& a, const Trials& b) {
    return std::ranges::equal(a.values(), b.values());
}

/// The largest distance of the drawn values' distribution from a given one, times √N (Kolmogorov).
double kolmogorov(const Trials& trials, const std::function<double(double)>& cumulative) {
    std::vector<double> sorted{trials.values().begin(), trials.values().end()};
    std::ranges::sort(sorted);
    const auto count = static_cast<double>(sorted.size());
    double largest = 0.0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const double share = cumulative(sorted[i]);
        largest = std::max(
            {largest, share - static_cast<double>(i) / count, static_cast<double>(i + 1) / count - share});
    }
    return largest * std::sqrt(count);
}

/// Kolmogorov's statistic exceeds it once in a thousand runs of a right generator.
constexpr double kKolmogorovOnceInAThousand = 1.95;

} // namespace

// Moments of the normal distribution; five standard errors at a million trials.
TEST(Normals, HaveTheMomentsOfTheirDistribution) {
    const Trials trials = drawnFrom(InputQuantity::normal(0.0, 1.0));
    EXPECT_NEAR(meanPower(trials, 1), 0.0, 5e-3);
    EXPECT_NEAR(meanPower(trials, 2), 1.0, 5.0 * std::sqrt(2e-6));
    EXPECT_NEAR(meanPower(trials, 3), 0.0, 5.0 * std::sqrt(15e-6));
    EXPECT_NEAR(meanPower(trials, 4), 3.0, 5.0 * std::sqrt(96e-6));
    EXPECT_NEAR(meanPower(trials, 6), 15.0, 5.0 * std::sqrt(10170e-6));
}

// Tails against Boost's normal distribution, out to one in thirty thousand.
TEST(Normals, HaveItsTails) {
    const Trials trials = drawnFrom(InputQuantity::normal(0.0, 1.0));
    for (const double z : {1.0, 2.0, 3.0, 3.5, 4.0}) {
        const double share = 1.0 - normalCumulative(z);
        const double allowed = 5.0 * std::sqrt(share / 1e6);
        EXPECT_NEAR(trials.probabilityOutside({.most = z}).value, share, allowed);
        EXPECT_NEAR(trials.probabilityOutside({.least = -z}).value, share, allowed);
    }
}

TEST(Normals, FollowTheWholeDistribution) {
    EXPECT_LT(kolmogorov(drawnFrom(InputQuantity::normal(0.0, 1.0)), normalCumulative),
              kKolmogorovOnceInAThousand);
}

TEST(Rectangular, FollowsTheWholeDistribution) {
    const Trials trials = drawnFrom(InputQuantity::rectangular(1.0, 0.5));
    EXPECT_LT(kolmogorov(trials, [](double x) { return std::clamp(x - 0.5, 0.0, 1.0); }),
              kKolmogorovOnceInAThousand);
    EXPECT_EQ(trials.probabilityOutside({.least = 0.5, .most = 1.5}).value, 0.0);
}

TEST(Triangular, FollowsTheWholeDistribution) {
    const auto cumulative = [](double x) {
        return x < 0.0 ? (1.0 + x) * (1.0 + x) / 2.0 : 1.0 - (1.0 - x) * (1.0 - x) / 2.0;
    };
    EXPECT_LT(kolmogorov(drawnFrom(InputQuantity::triangular(0.0, 1.0)), cumulative),
              kKolmogorovOnceInAThousand);
}

TEST(Arcsine, FollowsTheWholeDistribution) {
    const auto cumulative = [](double x) { return 0.5 + std::asin(x) / std::numbers::pi; };
    EXPECT_LT(kolmogorov(drawnFrom(InputQuantity::arcsine(0.0, 1.0)), cumulative),
              kKolmogorovOnceInAThousand);
}

// JCGM 100:2008 table G.2: half of 5 % lies beyond t₉₅.
TEST(Student, HasItsTails) {
    for (const double degrees : {4.0, 18.0}) {
        const Trials trials = drawnFrom(InputQuantity::student(2.0, 0.5, degrees));
        const double factor = coverageFactor(0.95, degrees);
        EXPECT_NEAR(trials.probabilityOutside({.most = 2.0 + 0.5 * factor}).value, 0.025, 8e-4);
        EXPECT_NEAR(trials.probabilityOutside({.least = 2.0 - 0.5 * factor}).value, 0.025, 8e-4);
        EXPECT_NEAR(trials.mean().value, 2.0, 5.0 * trials.mean().standardError);
    }
}

// JCGM 101:2008 9.2.2 (UNC-16).
TEST(Sum, OfFourNormals) {
    const Trials trials = sumOf(Inputs(4, InputQuantity::normal(0.0, 1.0)));
    EXPECT_NEAR(trials.deviation().value, 2.00, 0.005);
    EXPECT_NEAR(trials.quantile(0.975).value, 3.92, 0.025);
    EXPECT_NEAR(trials.shortestInterval(0.95).width() / 2.0, 3.92, 0.025);
}

// JCGM 101:2008 9.2.4, from memory and reckoned (UNC-18): the GUM's normal factor would say ± 19.9.
TEST(Sum, WhereOneRectangleRules) {
    const double narrow = std::numbers::sqrt3;
    Inputs inputs(3, InputQuantity::rectangular(0.0, narrow));
    inputs.push_back(InputQuantity::rectangular(0.0, 10.0 * narrow));
    const Trials trials = sumOf(inputs);
    EXPECT_NEAR(trials.deviation().value, 10.15, 0.05);
    const CoverageInterval interval = trials.centralInterval(0.95);
    EXPECT_NEAR(interval.most, 17.0, 0.05);
    EXPECT_NEAR(interval.least, -17.0, 0.05);
    EXPECT_NEAR(coverageFactor(0.95, std::numeric_limits<double>::infinity()) * std::sqrt(103.0), 19.9, 0.05);
}

// The normal law (STK-05): links of ± t taken as three standard deviations.
TEST(Sum, LeavesTheRootSumOfSquaresOnceIn370) {
    const std::array tolerances{0.20, 0.10, 0.15};
    Inputs inputs;
    for (const double tolerance : tolerances)
        inputs.push_back(InputQuantity::normal(0.0, tolerance / 3.0));
    const double band = std::sqrt(0.20 * 0.20 + 0.10 * 0.10 + 0.15 * 0.15);
    EXPECT_NEAR(sumOf(inputs).probabilityOutside({.least = -band, .most = band}).value, 0.0027, 2e-4);
}

// Reckoned (STK-03): ten links of ± 0.1.
TEST(Sum, OfTenLinksSpreadsAsTheirRootSumOfSquares) {
    const Trials trials = sumOf(Inputs(10, InputQuantity::normal(0.0, 0.1 / 3.0)));
    EXPECT_NEAR(3.0 * trials.deviation().value, 0.316, 0.001);
}

// Reckoned (STK-04).
TEST(Sum, OfThreeUnequalLinks) {
    const Trials trials =
        sumOf({InputQuantity::normal(0.0, 0.20 / 3.0), InputQuantity::normal(0.0, 0.10 / 3.0),
               InputQuantity::normal(0.0, 0.15 / 3.0)});
    EXPECT_NEAR(3.0 * trials.deviation().value, 0.269, 0.001);
}

// Reckoned (STK-07): σ = t·√(n/3); five standard errors.
TEST(Sum, OfRectangularLinks) {
    const Trials trials = sumOf(Inputs(4, InputQuantity::rectangular(0.0, 1.0)));
    EXPECT_NEAR(trials.deviation().value, 1.1547, 5.0 * trials.deviation().standardError);
    EXPECT_NEAR(2.0 * InputQuantity::rectangular(0.0, 1.0).standard(), 1.1547, 1e-4);
}

// NPL report DEM-ES-011 §9.2 (UNC-21).
TEST(Logarithm, WhereThePropagationOfUncertaintyFails) {
    const Inputs inputs{InputQuantity::rectangular(0.6, 0.5)};
    const Trials trials = runModel(inputs, [](std::span<const double> x) { return std::log(x[0]); }).trials;
    EXPECT_NEAR(trials.mean().value, -0.665, 0.003);
    EXPECT_NEAR(trials.deviation().value, 0.606, 0.002);
    const CoverageInterval interval = trials.shortestInterval(0.95);
    EXPECT_NEAR(interval.least, -1.895, 0.006);
    EXPECT_NEAR(interval.most, 0.095, 0.002);
}

namespace {

/// A rectangle whose ends are known to ± `slack` only, from two rectangular draws r₁, r₂ in [0, 1]; JCGM
/// 101:2008 6.4.3.4.
double looseRectangle(double halfWidth, double slack, const double* drawn) {
    const double start = -halfWidth - slack + 2.0 * slack * drawn[0];
    return start - 2.0 * start * drawn[1];
}

/// JCGM 101:2008 9.5.2, nanometres and kelvins: l_S, D, d₁, d₂, α_S, θ₀, Δ, then four draws for δα and δθ.
Inputs gaugeBlockInputs() {
    Inputs inputs{InputQuantity::student(50'000'623.0, 25.0, 18),
                  InputQuantity::student(215.0, 6.0, 24),
                  InputQuantity::student(0.0, 4.0, 5),
                  InputQuantity::student(0.0, 7.0, 8),
                  InputQuantity::rectangular(11.5e-6, 2.0e-6),
                  InputQuantity::normal(-0.1, 0.2),
                  InputQuantity::arcsine(0.0, 0.5)};
    inputs.resize(inputs.size() + 4, InputQuantity::rectangular(0.5, 0.5));
    return inputs;
}

double gaugeBlockLength(std::span<const double> x) {
    const double apartAlpha = looseRectangle(1.0e-6, 0.1e-6, &x[7]);
    const double apartTheta = looseRectangle(0.050, 0.025, &x[9]);
    const double theta = x[5] + x[6];
    return x[0] + x[1] + x[2] + x[3] - x[0] * (apartAlpha * theta + x[4] * apartTheta);
}

} // namespace

// JCGM 101:2008 9.5 (UNC-19); the length is 50 mm + 838 nm.
TEST(GaugeBlock, ByMonteCarlo) {
    const Trials trials = runModel(gaugeBlockInputs(), gaugeBlockLength, {.trials = 500'000}).trials;
    EXPECT_NEAR(trials.mean().value - 50e6, 838.0, 0.5);
    EXPECT_NEAR(trials.deviation().value, 36.0, 0.5);
    const CoverageInterval interval = trials.shortestInterval(0.99);
    EXPECT_NEAR(interval.least - 50e6, 745.0, 2.0);
    EXPECT_NEAR(interval.most - 50e6, 932.0, 2.0);
}

// Order statistics (UNC-22): one million of N(0, 1).
TEST(StandardErrors, OfAMillionTrials) {
    const Trials trials = drawnFrom(InputQuantity::normal(0.0, 1.0));
    EXPECT_NEAR(trials.mean().standardError, 1.0e-3, 0.02e-3);
    EXPECT_NEAR(trials.deviation().standardError, 7.1e-4, 0.1e-4);
    EXPECT_NEAR(trials.quantile(0.975).standardError, 2.7e-3, 0.3e-3);
    EXPECT_NEAR(trials.probabilityOutside({.most = 1.959964}).standardError, std::sqrt(0.025 * 0.975 / 1e6),
                1e-6);
}

namespace {

/// How the mean scatters over repeats with different seeds.
double scatterOfTheMean(std::size_t trials) {
    constexpr std::uint64_t kRepeats = 400;
    std::vector<double> means;
    for (std::uint64_t seed = 1; seed <= kRepeats; ++seed)
        means.push_back(
            sumOf({InputQuantity::normal(0.0, 1.0)}, {.trials = trials, .seed = seed}).mean().value);
    return Trials{means}.deviation().value;
}

} // namespace

// Property (UNC-23).
TEST(Convergence, FourTimesTheTrialsHalveTheScatter) {
    EXPECT_NEAR(scatterOfTheMean(500) / scatterOfTheMean(2000), 2.0, 0.3);
}

// Property (UNC-23).
TEST(Seed, GivesTheSameOnAnyNumberOfThreads) {
    const Inputs inputs{InputQuantity::normal(8.65, 0.01), InputQuantity::rectangular(0.25, 0.008),
                        InputQuantity::triangular(0.25, 0.008)};
    const LinearModel chain{.coefficients = {1.0, 1.0, -1.0}};
    const MonteCarloResult one = runLinear(inputs, chain, {.trials = 50'001, .seed = 7, .threads = 1});
    for (const unsigned threads : {0U, 2U, 5U}) {
        const MonteCarloResult more =
            runLinear(inputs, chain, {.trials = 50'001, .seed = 7, .threads = threads});
        EXPECT_TRUE(equalValues(one.trials, more.trials));
        EXPECT_EQ(one.trials.mean().value, more.trials.mean().value);
        EXPECT_EQ(one.trials.deviation().value, more.trials.deviation().value);
    }
}

TEST(Seed, GivesTheSameForAnyModelOnAnyNumberOfThreads) {
    const Inputs inputs{InputQuantity::normal(1.0, 0.1), InputQuantity::arcsine(0.0, 0.2)};
    const MeasurementModel product = [](std::span<const double> x) { return x[0] * x[1]; };
    const MonteCarloResult one = runModel(inputs, product, {.trials = 30'000, .seed = 3, .threads = 1});
    const MonteCarloResult more = runModel(inputs, product, {.trials = 30'000, .seed = 3, .threads = 4});
    EXPECT_TRUE(equalValues(one.trials, more.trials));
    EXPECT_EQ(one.shares, more.shares);
}

TEST(Seed, AnotherGivesOthers) {
    const Inputs inputs{InputQuantity::normal(0.0, 1.0)};
    const Trials one = sumOf(inputs, {.trials = 1000, .seed = 1});
    EXPECT_FALSE(equalValues(one, sumOf(inputs, {.trials = 1000, .seed = 2})));
    EXPECT_FALSE(equalValues(one, sumOf(inputs, {.trials = 1000, .seed = 1 + (std::uint64_t{1} << 32)})));
}

// Blocks of trials come from generators of their own: one must not repeat another.
TEST(Seed, BlocksAreNotAlike) {
    const Trials trials = sumOf({InputQuantity::normal(0.0, 1.0)}, {.trials = 32'768, .seed = 5});
    const std::span<const double> values = trials.values();
    double cross = 0.0;
    for (std::size_t i = 0; i < 16'384; ++i)
        cross += values[i] * values[i + 16'384] / 16384.0;
    EXPECT_NEAR(cross, 0.0, 5.0 / std::sqrt(16384.0));
}

TEST(Shares, OfAChainFollowFromItsVariances) {
    const Inputs inputs{InputQuantity::normal(3.0, 0.1), InputQuantity::fixed(2.0),
                        InputQuantity::normal(1.0, 0.2)};
    const MonteCarloResult result =
        runLinear(inputs, {.coefficients = {1.0, 5.0, -1.0}, .offset = 0.5}, {.trials = 20'000});
    EXPECT_NEAR(result.trials.mean().value, 12.5, 0.01);
    EXPECT_NEAR(result.shares[0], 0.2, 1e-12);
    EXPECT_EQ(result.shares[1], 0.0);
    EXPECT_NEAR(result.shares[2], 0.8, 1e-12);
}

TEST(Shares, OfALinearModelAgreeWithThoseOfTheChain) {
    const Inputs inputs{InputQuantity::normal(3.0, 0.1), InputQuantity::fixed(2.0),
                        InputQuantity::rectangular(1.0, 0.3)};
    const MeasurementModel chain = [](std::span<const double> x) { return x[0] + x[1] - 2.0 * x[2]; };
    const MonteCarloResult drawn = runModel(inputs, chain, {.trials = 200'000});
    const MonteCarloResult exact = runLinear(inputs, {.coefficients = {1.0, 1.0, -2.0}}, {.trials = 2});
    for (std::size_t i = 0; i < inputs.size(); ++i)
        EXPECT_NEAR(drawn.shares[i], exact.shares[i], 0.01);
}

TEST(FixedInputs, GiveTheFixedResult) {
    const Inputs inputs{InputQuantity::fixed(8.65), InputQuantity::fixed(9.0)};
    const MonteCarloResult result =
        runLinear(inputs, {.coefficients = {1.0, -1.0}, .offset = 0.42}, {.trials = 10});
    EXPECT_NEAR(result.trials.mean().value, 0.07, 1e-12);
    EXPECT_EQ(result.trials.deviation().value, 0.0);
    EXPECT_EQ(result.shares, (std::vector<double>{0.0, 0.0}));
    EXPECT_EQ(runModel(inputs, first, {.trials = 10}).shares, (std::vector<double>{0.0, 0.0}));
}

TEST(InputQuantity, KnowsItsStandardUncertainty) {
    EXPECT_EQ(InputQuantity::fixed(3.0).standard(), 0.0);
    EXPECT_EQ(InputQuantity::normal(0.0, 0.3).standard(), 0.3);
    EXPECT_NEAR(InputQuantity::rectangular(0.0, 1.0).standard(), 0.57735, 1e-5);
    EXPECT_NEAR(InputQuantity::triangular(0.0, 1.0).standard(), 0.40825, 1e-5);
    EXPECT_NEAR(InputQuantity::arcsine(0.0, 1.0).standard(), 0.70711, 1e-5);
    EXPECT_NEAR(InputQuantity::student(0.0, 1.0, 18).standard(), std::sqrt(18.0 / 16.0), 1e-12);
}

} // namespace gapwise::test
