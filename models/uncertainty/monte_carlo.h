#pragma once

#include "models/uncertainty/input_quantity.h"
#include "models/uncertainty/propagate.h"
#include "models/uncertainty/trials.h"

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace gapwise {

/// How to draw. The same seed and number of trials give the same values, whatever the number of threads: each
/// block of trials has its own generator, seeded from the seed and the block's number.
struct MonteCarloSettings {
    std::size_t trials = 1'000'000; ///< At least 2.
    std::uint64_t seed = 1;
    unsigned threads = 0; ///< 0: as many as the machine has cores.
};

/// offset + Σ coefficient · input.
struct LinearModel {
    std::vector<double> coefficients{}; ///< One for each input.
    double offset = 0.0;
};

struct MonteCarloResult {
    Trials trials;
    /// The part of the result's variance that each input brings, in the order of the inputs; all 0 where
    /// nothing varies.
    std::vector<double> shares{};
};

/// Draws inputs and adds them up, as a chain of dimensions does (JCGM 101:2008 clause 7). The shares are
/// exact: from the variances of the inputs, not from the drawn values; they sum to 1.
MonteCarloResult runLinear(std::span<const InputQuantity> inputs, const LinearModel& model,
                           const MonteCarloSettings& settings = {});

/// The same for any function. It is called from several threads at once, must not throw and must be finite
/// wherever inputs are drawn. The shares are squared correlations of input and result in the drawn values:
/// what an input explains by a straight line; they sum to 1 only for a model that is nearly linear.
MonteCarloResult runModel(std::span<const InputQuantity> inputs, const MeasurementModel& model,
                          const MonteCarloSettings& settings = {});

} // namespace gapwise
