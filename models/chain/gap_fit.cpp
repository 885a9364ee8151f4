#include "models/chain/gap_fit.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gapwise {

namespace {

/// No reading is better than half a micrometre: keeps the covariance from being singular where c, N_C and
/// N_T, of which one follows from the others, come without an uncertainty.
constexpr double kLeastStandardMm = 0.0005;

Eigen::MatrixXd covarianceOf(const Investigation& seen) {
    const auto size = static_cast<Eigen::Index>(seen.gaps.size());
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(size, size);
    for (Eigen::Index row = 0; row < size; ++row) {
        const double reading = seen.gaps[static_cast<std::size_t>(row)].value.expanded / 2.0;
        covariance(row, row) = std::pow(std::max(reading, kLeastStandardMm), 2);
    }
    Eigen::VectorXd sensitivities{size};
    for (const auto& [id, value] : seen.values) {
        for (Eigen::Index row = 0; row < size; ++row)
            sensitivities(row) = sensitivityOf(*seen.gaps[static_cast<std::size_t>(row)].chain, id);
        covariance += std::pow(value.standardMm, 2) * sensitivities * sensitivities.transpose();
    }
    return covariance;
}

/// The inverse of the lower Cholesky factor, row by row.
std::vector<double> whiteningOf(const Eigen::MatrixXd& covariance) {
    const Eigen::Index size = covariance.rows();
    const Eigen::MatrixXd inverse =
        covariance.llt().matrixL().solve(Eigen::MatrixXd::Identity(size, size).eval());
    std::vector<double> rows;
    for (Eigen::Index row = 0; row < size; ++row)
        for (Eigen::Index column = 0; column < size; ++column)
            rows.push_back(inverse(row, column));
    return rows;
}

double product(std::span<const double> one, std::span<const double> other) {
    return std::inner_product(one.begin(), one.end(), other.begin(), 0.0);
}

} // namespace

GapFit::GapFit(const Investigation& seen)
    : size_{seen.gaps.size()}, whitening_{whiteningOf(covarianceOf(seen))} {
    std::vector<double> deviations;
    for (const ReadGap& gap : seen.gaps)
        deviations.push_back(gap.deviationMm());
    deviations_ = whitened(deviations);
}

std::vector<double> GapFit::whitened(std::span<const double> values) const {
    std::vector<double> result;
    for (std::size_t row = 0; row < size_; ++row)
        result.push_back(product(std::span{whitening_}.subspan(row * size_, size_), values));
    return result;
}

std::optional<LengthFit> GapFit::fit(std::span<const double> effects) const {
    const std::vector<double> seen = whitened(effects);
    const double weight = product(seen, seen);
    if (weight == 0.0)
        return std::nullopt;
    const double length = product(seen, deviations_) / weight;
    const double misfit = product(deviations_, deviations_) - length * length * weight;
    return LengthFit{
        .lengthMm = length, .standardMm = 1.0 / std::sqrt(weight), .misfit = std::max(misfit, 0.0)};
}

double chiSquaredBound(std::size_t degreesOfFreedom, double z) {
    if (degreesOfFreedom == 0)
        return 0.0;
    const auto number = static_cast<double>(degreesOfFreedom);
    const double variance = 2.0 / (9.0 * number);
    return number * std::pow(1.0 - variance + z * std::sqrt(variance), 3);
}

} // namespace gapwise
