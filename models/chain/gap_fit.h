#pragma once

#include "models/chain/investigation.h"

#include <optional>
#include <span>
#include <vector>

namespace gapwise {

/// A length of one change that explains deviations best, and what it leaves.
struct LengthFit {
    double lengthMm = 0.0;
    double standardMm = 0.0;
    double misfit = 0.0; ///< Chi-squared of what is left.
};

/// What the measured gaps deviate from their predictions by, weighed with how well each is known: by
/// generalised least squares. Two chains that share a dimension deviate together when that dimension is not
/// what it is taken to be; the covariance knows it.
class GapFit {
public:
    explicit GapFit(const Investigation& seen);

    /// The length of a change with these effects on the gaps, in their order; nothing where it moves none.
    std::optional<LengthFit> fit(std::span<const double> effects) const;

private:
    std::vector<double> whitened(std::span<const double> values) const;

    std::size_t size_ = 0;
    /// Row by row: turns deviations into independent ones of standard deviation 1.
    std::vector<double> whitening_{};
    std::vector<double> deviations_{}; ///< Whitened.
};

/// A chi-squared of so many degrees of freedom stays below this with the given probability's normal quantile
/// `z`: E. B. Wilson and M. M. Hilferty (1931), within about 1 % from one degree of freedom on. 0 of none.
double chiSquaredBound(std::size_t degreesOfFreedom, double z);

} // namespace gapwise
