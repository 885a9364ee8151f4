#include "models/uncertainty/monte_carlo.h"
#include "tests/benchmarks/median.h"

#include <benchmark/benchmark.h>
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>

#include <chrono>
#include <cmath>
#include <cstddef>
#include <random>
#include <vector>

namespace {

using namespace gapwise;

constexpr std::size_t kTrials = 1'000'000;

/// A chain of dimensions that scatter normally: tolerances of three standard deviations.
struct Chain {
    std::vector<InputQuantity> inputs{};
    LinearModel model{};
};

/// Alder's axial clearance L_S + h_A + h_B − t_T.
Chain alder() {
    return {.inputs = {InputQuantity::normal(5.070, 0.005 / 3.0), InputQuantity::fixed(0.0),
                       InputQuantity::fixed(0.0), InputQuantity::normal(5.000, 0.010 / 3.0)},
            .model = {.coefficients = {1.0, 1.0, 1.0, -1.0}}};
}

/// Birch's, with four links that scatter.
Chain birch() {
    return {.inputs = {InputQuantity::normal(8.650, 0.010 / 3.0), InputQuantity::normal(0.250, 0.008 / 3.0),
                       InputQuantity::normal(0.250, 0.008 / 3.0), InputQuantity::normal(9.000, 0.012 / 3.0)},
            .model = {.coefficients = {1.0, 1.0, 1.0, -1.0}}};
}

/// What was drawn: kept, with mean and standard deviation, as runLinear does.
struct Drawn {
    std::vector<double> values{};
    double mean = 0.0;
    double deviation = 0.0;
};

/// What anyone would write: one loop on one core over the trials, drawing each link that scatters.
template <typename Engine, typename Normal>
Drawn plainLoop(const Chain& chain) {
    Engine engine{1};
    std::vector<Normal> normals;
    std::vector<double> signs;
    double offset = 0.0;
    for (std::size_t i = 0; i < chain.inputs.size(); ++i) {
        const InputQuantity& input = chain.inputs[i];
        if (input.width > 0.0) {
            normals.emplace_back(input.mean, input.width);
            signs.push_back(chain.model.coefficients[i]);
        } else
            offset += chain.model.coefficients[i] * input.mean;
    }
    Drawn drawn{.values = std::vector<double>(kTrials)};
    double sum = 0.0;
    double squares = 0.0;
    for (double& value : drawn.values) {
        value = offset;
        for (std::size_t i = 0; i < normals.size(); ++i)
            value += signs[i] * normals[i](engine);
        sum += value;
        squares += value * value;
    }
    drawn.mean = sum / kTrials;
    drawn.deviation = std::sqrt(squares / kTrials - drawn.mean * drawn.mean);
    return drawn;
}

void ours(const Chain& chain) {
    const MonteCarloResult result = runLinear(chain.inputs, chain.model, {.trials = kTrials});
    benchmark::DoNotOptimize(result.trials.mean().value + result.trials.values().back());
}

void plainOfStd(const Chain& chain) {
    benchmark::DoNotOptimize(plainLoop<std::mt19937_64, std::normal_distribution<double>>(chain));
}

void plainOfOurGenerator(const Chain& chain) {
    benchmark::DoNotOptimize(
        plainLoop<boost::random::mt19937_64, boost::random::normal_distribution<double>>(chain));
}

double seconds(void (*work)(const Chain&), const Chain& chain) {
    const auto start = std::chrono::steady_clock::now();
    work(chain);
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// One after the other in every round, so that what else the machine does meets all three; the ratio of each
/// round, and of all rounds the middle one.
void drawn(benchmark::State& state, const Chain& chain) {
    std::vector<double> own;
    std::vector<double> ofStd;
    std::vector<double> ofOurs;
    for (auto _ : state) {
        own.push_back(seconds(ours, chain));
        ofStd.push_back(own.back() / seconds(plainOfStd, chain));
        ofOurs.push_back(own.back() / seconds(plainOfOurGenerator, chain));
        state.SetIterationTime(own.back());
    }
    state.counters["ms"] = 1e3 * bench::medianOf(own);
    state.counters["to_std_loop"] = bench::medianOf(ofStd);
    state.counters["to_loop_of_our_generator"] = bench::medianOf(ofOurs);
}

BENCHMARK_CAPTURE(drawn, alder, alder())->Iterations(41)->UseManualTime()->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(drawn, birch, birch())->Iterations(41)->UseManualTime()->Unit(benchmark::kMillisecond);

/// The questions that a chart and a card ask of a million trials.
void asked(benchmark::State& state) {
    const Chain chain = birch();
    const MonteCarloResult result = runLinear(chain.inputs, chain.model, {.trials = kTrials});
    for (auto _ : state) {
        benchmark::DoNotOptimize(result.trials.shortestInterval(0.95));
        benchmark::DoNotOptimize(result.trials.probabilityOutside({.least = 0.110, .most = 0.190}));
        benchmark::DoNotOptimize(result.trials.histogram(60));
    }
}

BENCHMARK(asked)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
