#pragma once

#include "models/uncertainty/decision.h"

#include <cstddef>
#include <span>
#include <vector>

namespace gapwise {

/// A figure from drawn trials, and by how much it scatters (one standard deviation) from seed to seed.
struct Estimate {
    double value = 0.0;
    double standardError = 0.0;
};

struct CoverageInterval {
    double least = 0.0;
    double most = 0.0;

    double width() const { return most - least; }
};

/// Counts of values in bins of equal width, the first from `least` on.
struct Histogram {
    double least = 0.0;
    double binWidth = 0.0;
    std::vector<std::size_t> counts{};
};

/// Number, mean and sum of squared deviations of values; two of them join to that of all values.
struct Moments {
    double count = 0.0;
    double mean = 0.0;
    double squares = 0.0;

    void join(const Moments& other);
};

Moments momentsOf(std::span<const double> values);

/// The results of Monte Carlo trials, in the order of drawing: 8 bytes a trial. Nothing is sorted or kept
/// beside; each question reads the values once or twice, and order statistics sort only those they need.
class Trials {
public:
    /// At least 2 finite values.
    explicit Trials(std::vector<double> values);
    /// The same where their moments are known already.
    Trials(std::vector<double> values, const Moments& moments);

    std::size_t count() const { return values_.size(); }
    std::span<const double> values() const { return values_; }

    /// Standard error s/√N.
    Estimate mean() const;

    /// Standard deviation, divisor N − 1. Standard error from the fourth moment; for a normal distribution
    /// it is s/√(2N).
    Estimate deviation() const;

    /// The value below which the share `p`, in (0, 1), of the trials lies (JCGM 101:2008 7.7). Standard error
    /// from the values whose rank is √(p(1−p)N) lower and higher.
    Estimate quantile(double p) const;

    /// The interval that holds the share `p`, in (0, 1), and leaves out as much below as above.
    CoverageInterval centralInterval(double p) const;

    /// The shortest interval that holds the share `p`, in (0, 1) (JCGM 101:2008 5.3.4).
    CoverageInterval shortestInterval(double p) const;

    /// The share beyond either limit; what is on a limit is not outside. Standard error √(p(1−p)/N), of at
    /// least one trial, so that a share of 0 is no certainty.
    Estimate probabilityOutside(const ToleranceInterval& limits) const;

    /// From the smallest to the largest value in so many bins, at least 1.
    Histogram histogram(std::size_t bins) const;

private:
    std::vector<double> values_;
    Moments moments_;
};

} // namespace gapwise
