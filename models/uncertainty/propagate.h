#pragma once

#include <cstddef>
#include <functional>
#include <span>
#include <vector>

namespace gapwise {

/// A result as a function of its inputs, in their order.
using MeasurementModel = std::function<double(std::span<const double>)>;

/// Values that are known together: each with its standard uncertainty, and how they vary with one another.
struct Estimates {
    std::vector<double> values{};
    std::vector<double> standards{};    ///< One for each value.
    std::vector<double> correlations{}; ///< Row by row, symmetric, 1 on the diagonal; empty: none.

    /// r of two of them, in [−1, 1].
    double correlation(std::size_t a, std::size_t b) const;
};

/// Means of readings that were taken together: `readings[i]` are all those of quantity i, in the order of
/// the sets, at least 2 and as many for each; JCGM 100:2008 5.2.3 and H.2.
Estimates estimatesOf(std::span<const std::vector<double>> readings);

/// How much the result changes with each input (∂f/∂x at the estimates), by central differences of a
/// thousandth of the standard uncertainty; `model` must be defined there.
std::vector<double> sensitivities(const MeasurementModel& model, const Estimates& inputs);

/// The results of functions of the same inputs with uncertainties and correlations, to the first order:
/// JCGM 100:2008 5.2.2 and H.2.
Estimates propagate(std::span<const MeasurementModel> models, const Estimates& inputs);

/// What the second order adds to the variance of a result of independent inputs; may be negative. By
/// differences of a quarter of the standard uncertainty: `model` must be defined within half of it from
/// the estimates. JCGM 100:2008 5.1.2 note and H.1.7.
double secondOrderVariance(const MeasurementModel& model, const Estimates& inputs);

} // namespace gapwise
