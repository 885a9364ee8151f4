#include "models/uncertainty/monte_carlo.h"

#include "models/uncertainty/blocks.h"

#include <boost/random/mersenne_twister.hpp>
#include <boost/random/normal_distribution.hpp>
#include <boost/random/student_t_distribution.hpp>
#include <boost/random/uniform_01.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>
#include <random>

namespace gapwise {

namespace {

using Engine = boost::random::mt19937_64;

constexpr std::size_t kBlockTrials = 16'384;

/// The generator of a block: std::seed_seq spreads the seed's and the block's bits over the whole state.
Engine engineOf(std::uint64_t seed, std::uint64_t block) {
    constexpr int kHalf = 32;
    std::seed_seq words{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> kHalf),
                        static_cast<std::uint32_t>(block), static_cast<std::uint32_t>(block >> kHalf)};
    return Engine{words};
}

/// Calls `act` with a function that draws from the quantity's distribution about 0, in units of its width;
/// not at all where it is fixed. The choice is made once, not at every draw.
template <typename Act>
void withDrawer(const InputQuantity& input, Engine& engine, const Act& act) {
    boost::random::uniform_01<double> uniform;
    switch (input.distribution) {
    case Distribution::Fixed: break;
    case Distribution::Normal: {
        boost::random::normal_distribution<double> normal; // Ziggurat of Marsaglia and Tsang
        act([&] { return normal(engine); });
        break;
    }
    case Distribution::Rectangular: act([&] { return 2.0 * uniform(engine) - 1.0; }); break;
    case Distribution::Triangular: act([&] { return uniform(engine) + uniform(engine) - 1.0; }); break;
    case Distribution::Arcsine: act([&] { return std::cos(std::numbers::pi * uniform(engine)); }); break;
    case Distribution::Student: {
        boost::random::student_t_distribution<double> student{input.degreesOfFreedom};
        act([&] { return student(engine); });
        break;
    }
    }
}

/// A block's part of all trials.
std::span<double> blockOf(std::vector<double>& values, std::size_t block) {
    const std::size_t first = block * kBlockTrials;
    return std::span{values}.subspan(first, std::min(kBlockTrials, values.size() - first));
}

std::size_t blocksOf(const MonteCarloSettings& settings) {
    return (settings.trials + kBlockTrials - 1) / kBlockTrials;
}

template <typename Part>
Part joined(const std::vector<Part>& parts) {
    Part all = parts.front();
    for (std::size_t i = 1; i < parts.size(); ++i)
        all.join(parts[i]);
    return all;
}

double meanOf(std::span<const InputQuantity> inputs, const LinearModel& model) {
    double mean = model.offset;
    for (std::size_t i = 0; i < inputs.size(); ++i)
        mean += model.coefficients[i] * inputs[i].mean;
    return mean;
}

std::vector<double> linearShares(std::span<const InputQuantity> inputs, const LinearModel& model) {
    std::vector<double> shares;
    double sum = 0.0;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        const double part = model.coefficients[i] * inputs[i].standard();
        shares.push_back(part * part);
        sum += part * part;
    }
    if (sum > 0.0)
        for (double& share : shares)
            share /= sum;
    return shares;
}

/// Sums over trials from which the correlation of one input with the result follows.
struct CrossSums {
    double input = 0.0;  ///< Of the input's departure from its mean.
    double square = 0.0; ///< Of its square.
    double cross = 0.0;  ///< Of its product with the result.
};

/// What a block of trials of any function brings.
struct ModelBlock {
    Moments moments{};
    std::vector<CrossSums> inputs{};

    void join(const ModelBlock& other) {
        moments.join(other.moments);
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            inputs[i].input += other.inputs[i].input;
            inputs[i].square += other.inputs[i].square;
            inputs[i].cross += other.inputs[i].cross;
        }
    }
};

double squaredCorrelation(const CrossSums& sums, const Moments& moments) {
    const double ofInput = sums.square - sums.input * sums.input / moments.count;
    const double together = sums.cross - sums.input * moments.mean;
    if (ofInput <= 0.0 || moments.squares <= 0.0)
        return 0.0;
    return together * together / (ofInput * moments.squares);
}

/// The inputs of a block's trials, one input after the other.
std::vector<double> drawnInputs(std::span<const InputQuantity> inputs, std::size_t trials, Engine& engine) {
    std::vector<double> drawn;
    drawn.reserve(inputs.size() * trials);
    for (const InputQuantity& input : inputs) {
        const std::size_t first = drawn.size();
        drawn.resize(first + trials, input.mean);
        withDrawer(input, engine, [&](const auto& draw) {
            for (double& value : std::span{drawn}.subspan(first))
                value += input.width * draw();
        });
    }
    return drawn;
}

ModelBlock evaluate(std::span<const InputQuantity> inputs, const MeasurementModel& model, Engine engine,
                    std::span<double> results) {
    const std::vector<double> drawn = drawnInputs(inputs, results.size(), engine);
    ModelBlock block{.inputs = std::vector<CrossSums>(inputs.size())};
    std::vector<double> arguments(inputs.size());
    for (std::size_t trial = 0; trial < results.size(); ++trial) {
        for (std::size_t i = 0; i < inputs.size(); ++i)
            arguments[i] = drawn[i * results.size() + trial];
        const double result = model(arguments);
        assert(std::isfinite(result));
        results[trial] = result;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            const double departure = arguments[i] - inputs[i].mean;
            block.inputs[i].input += departure;
            block.inputs[i].square += departure * departure;
            block.inputs[i].cross += departure * result;
        }
    }
    block.moments = momentsOf(results);
    return block;
}

} // namespace

MonteCarloResult runLinear(std::span<const InputQuantity> inputs, const LinearModel& model,
                           const MonteCarloSettings& settings) {
    assert(inputs.size() == model.coefficients.size() && settings.trials >= 2);
    const double mean = meanOf(inputs, model);
    std::vector<double> values(settings.trials);
    std::vector<Moments> blocks(blocksOf(settings));
    forEachBlock(blocks.size(), settings.threads, [&](std::size_t number) {
        Engine engine = engineOf(settings.seed, number);
        const std::span<double> results = blockOf(values, number);
        std::ranges::fill(results, mean);
        for (std::size_t i = 0; i < inputs.size(); ++i)
            withDrawer(inputs[i], engine, [&](const auto& draw) {
                const double scale = model.coefficients[i] * inputs[i].width;
                for (double& result : results)
                    result += scale * draw();
            });
        blocks[number] = momentsOf(results);
    });
    return {.trials = Trials{std::move(values), joined(blocks)}, .shares = linearShares(inputs, model)};
}

MonteCarloResult runModel(std::span<const InputQuantity> inputs, const MeasurementModel& model,
                          const MonteCarloSettings& settings) {
    assert(model && settings.trials >= 2);
    std::vector<double> values(settings.trials);
    std::vector<ModelBlock> blocks(blocksOf(settings));
    forEachBlock(blocks.size(), settings.threads, [&](std::size_t number) {
        blocks[number] = evaluate(inputs, model, engineOf(settings.seed, number), blockOf(values, number));
    });
    const ModelBlock all = joined(blocks);
    std::vector<double> shares;
    for (const CrossSums& sums : all.inputs)
        shares.push_back(squaredCorrelation(sums, all.moments));
    return {.trials = Trials{std::move(values), all.moments}, .shares = std::move(shares)};
}

} // namespace gapwise
