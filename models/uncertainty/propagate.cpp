#include "models/uncertainty/propagate.h"

#include "models/uncertainty/type_b.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <initializer_list>
#include <limits>

namespace gapwise {

namespace {

/// An input and by how much it is moved from its estimate.
struct Move {
    std::size_t input = 0;
    double step = 0.0;
};

double movedBy(const MeasurementModel& model, std::vector<double> values, std::initializer_list<Move> moves) {
    for (const Move& move : moves)
        values[move.input] += move.step;
    return model(values);
}

/// Small enough for the curvature, large enough for the rounding of value and result.
double differenceStep(double value, double standard) {
    const double least = std::cbrt(std::numeric_limits<double>::epsilon());
    const double step = std::max(standard / 1000.0, least * std::abs(value));
    return step > 0.0 ? step : least;
}

/// Covariance of two sets of sensitivities: Σᵢ Σⱼ aᵢ·bⱼ·uᵢ·uⱼ·rᵢⱼ.
double covariance(std::span<const double> a, std::span<const double> b, const Estimates& inputs) {
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < b.size(); ++j)
            sum += a[i] * b[j] * inputs.standards[i] * inputs.standards[j] * inputs.correlation(i, j);
    return sum;
}

double correlationOf(std::span<const double> a, std::span<const double> b) {
    const Sample first = statisticsOf(a);
    const Sample second = statisticsOf(b);
    double sum = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        sum += (a[i] - first.mean) * (b[i] - second.mean);
    const double scale = first.deviation * second.deviation * first.degreesOfFreedom;
    return scale > 0.0 ? std::clamp(sum / scale, -1.0, 1.0) : 0.0;
}

/// Row by row from a function of two numbers; 1 on the diagonal.
template <typename Function>
std::vector<double> matrixOf(std::size_t size, const Function& entry) {
    std::vector<double> matrix(size * size, 1.0);
    for (std::size_t row = 0; row < size; ++row)
        for (std::size_t column = 0; column < row; ++column)
            matrix[row * size + column] = matrix[column * size + row] = entry(row, column);
    return matrix;
}

/// Differences of a model about its estimates, in steps that are a part of the standard uncertainties.
class Differences {
public:
    Differences(const MeasurementModel& model, const Estimates& inputs) : model_{model}, inputs_{inputs} {}

    /// f at the estimates with two inputs moved by so many steps (the moves add up where it is one input).
    double at(std::size_t i, double iSteps, std::size_t j, double jSteps) const {
        return movedBy(model_, inputs_.values, {{i, iSteps * step(i)}, {j, jSteps * step(j)}});
    }

    /// ∂f/∂xᵢ · uᵢ.
    double first(std::size_t i) const { return (at(i, 1, i, 0) - at(i, -1, i, 0)) / (2 * kPart); }

    /// ∂²f/∂xᵢ∂xⱼ · uᵢ·uⱼ.
    double second(std::size_t i, std::size_t j) const {
        if (i == j)
            return (at(i, 1, i, 0) - 2 * at(i, 0, i, 0) + at(i, -1, i, 0)) / (kPart * kPart);
        return (at(i, 1, j, 1) - at(i, 1, j, -1) - at(i, -1, j, 1) + at(i, -1, j, -1)) / (4 * kPart * kPart);
    }

    /// ∂³f/∂xᵢ∂xⱼ² · uᵢ·uⱼ².
    double third(std::size_t i, std::size_t j) const {
        const double after = at(i, 1, j, 1) - 2 * at(i, 1, j, 0) + at(i, 1, j, -1);
        const double before = at(i, -1, j, 1) - 2 * at(i, -1, j, 0) + at(i, -1, j, -1);
        return (after - before) / (2 * kPart * kPart * kPart);
    }

private:
    static constexpr double kPart = 0.25; ///< Of the standard uncertainty.

    double step(std::size_t i) const { return kPart * inputs_.standards[i]; }

    const MeasurementModel& model_;
    const Estimates& inputs_;
};

} // namespace

double Estimates::correlation(std::size_t a, std::size_t b) const {
    assert(a < values.size() && b < values.size());
    if (correlations.empty())
        return a == b ? 1.0 : 0.0;
    assert(correlations.size() == values.size() * values.size());
    return correlations[a * values.size() + b];
}

Estimates estimatesOf(std::span<const std::vector<double>> readings) {
    Estimates estimates;
    for (const std::vector<double>& column : readings) {
        assert(column.size() >= 2 && column.size() == readings.front().size());
        const Sample sample = statisticsOf(column);
        estimates.values.push_back(sample.mean);
        estimates.standards.push_back(sample.standard);
    }
    estimates.correlations = matrixOf(readings.size(), [&](std::size_t a, std::size_t b) {
        return correlationOf(readings[a], readings[b]);
    });
    return estimates;
}

std::vector<double> sensitivities(const MeasurementModel& model, const Estimates& inputs) {
    assert(inputs.values.size() == inputs.standards.size());
    std::vector<double> result;
    for (std::size_t i = 0; i < inputs.values.size(); ++i) {
        const double step = differenceStep(inputs.values[i], inputs.standards[i]);
        result.push_back(
            (movedBy(model, inputs.values, {{i, step}}) - movedBy(model, inputs.values, {{i, -step}})) /
            (2.0 * step));
    }
    return result;
}

Estimates propagate(std::span<const MeasurementModel> models, const Estimates& inputs) {
    Estimates results;
    std::vector<std::vector<double>> slopes;
    for (const MeasurementModel& model : models) {
        slopes.push_back(sensitivities(model, inputs));
        results.values.push_back(model(inputs.values));
        results.standards.push_back(
            std::sqrt(std::max(0.0, covariance(slopes.back(), slopes.back(), inputs))));
    }
    results.correlations = matrixOf(models.size(), [&](std::size_t a, std::size_t b) {
        const double scale = results.standards[a] * results.standards[b];
        return scale > 0.0 ? std::clamp(covariance(slopes[a], slopes[b], inputs) / scale, -1.0, 1.0) : 0.0;
    });
    return results;
}

double secondOrderVariance(const MeasurementModel& model, const Estimates& inputs) {
    assert(inputs.values.size() == inputs.standards.size() && inputs.correlations.empty());
    const Differences differences{model, inputs};
    double variance = 0.0;
    for (std::size_t i = 0; i < inputs.values.size(); ++i)
        for (std::size_t j = 0; j < inputs.values.size(); ++j) {
            const double second = differences.second(i, j);
            variance += second * second / 2.0 + differences.first(i) * differences.third(i, j);
        }
    return variance;
}

} // namespace gapwise
