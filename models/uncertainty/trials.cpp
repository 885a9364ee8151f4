#include "models/uncertainty/trials.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <iterator>
#include <numeric>
#include <utility>

namespace gapwise {

namespace {

/// Sorts values into bins of equal width, so that bins keep the order of the values in them.
class Bins {
public:
    Bins(std::span<const double> values, std::size_t number)
        : least_{std::ranges::min(values)}, counts_(number) {
        const double range = std::ranges::max(values) - least_;
        width_ = range / static_cast<double>(number);
        for (const double value : values)
            ++counts_[binOf(value)];
    }

    std::size_t binOf(double value) const {
        if (width_ <= 0.0)
            return 0;
        return std::min(static_cast<std::size_t>((value - least_) / width_), counts_.size() - 1);
    }

    double least() const { return least_; }
    double width() const { return width_; }
    const std::vector<std::size_t>& counts() const { return counts_; }

private:
    double least_ = 0.0;
    double width_ = 0.0;
    std::vector<std::size_t> counts_;
};

/// A bin and how many values lie in those before it.
struct Found {
    std::size_t bin = 0;
    std::size_t before = 0;
};

Found binOfRank(const Bins& bins, std::size_t rank) {
    Found found;
    while (found.before + bins.counts()[found.bin] <= rank)
        found.before += bins.counts()[found.bin++];
    return found;
}

/// The values of the ranks `first` to `last` (0 is the smallest), in rising order. Sorts only what lies in
/// the bins of these ranks.
std::vector<double> orderedBetween(std::span<const double> values, std::size_t first, std::size_t last) {
    constexpr std::size_t kBins = 4096;
    const Bins bins{values, kBins};
    const Found from = binOfRank(bins, first);
    const Found to = binOfRank(bins, last);
    std::vector<double> found;
    found.reserve(to.before + bins.counts()[to.bin] - from.before);
    std::ranges::copy_if(values, std::back_inserter(found), [&](double value) {
        const std::size_t bin = bins.binOf(value);
        return bin >= from.bin && bin <= to.bin;
    });
    std::ranges::sort(found);
    const auto begin = found.begin() + static_cast<std::ptrdiff_t>(first - from.before);
    return {begin, begin + static_cast<std::ptrdiff_t>(last - first + 1)};
}

std::size_t rankOf(double p, std::size_t count) {
    return std::min(static_cast<std::size_t>(p * static_cast<double>(count)), count - 1);
}

} // namespace

void Moments::join(const Moments& other) {
    const double all = count + other.count;
    if (all <= 0.0)
        return;
    const double step = other.mean - mean;
    mean += step * other.count / all;
    squares += other.squares + step * step * count * other.count / all;
    count = all;
}

Moments momentsOf(std::span<const double> values) {
    if (values.empty())
        return {};
    // Sums of four interleaved parts wait less for one another, and about a value among them lose nothing.
    constexpr std::size_t kParts = 4;
    const double centre = values.front();
    std::array<double, kParts> sums{};
    std::array<double, kParts> squares{};
    const auto add = [&](std::size_t part, double value) {
        sums[part] += value - centre;
        squares[part] += (value - centre) * (value - centre);
    };
    std::size_t i = 0;
    for (; i + kParts <= values.size(); i += kParts)
        for (std::size_t part = 0; part < kParts; ++part)
            add(part, values[i + part]);
    for (; i < values.size(); ++i)
        add(0, values[i]);
    const double sum = std::accumulate(sums.begin(), sums.end(), 0.0);
    const double square = std::accumulate(squares.begin(), squares.end(), 0.0);
    const auto count = static_cast<double>(values.size());
    return {
        .count = count, .mean = centre + sum / count, .squares = std::max(0.0, square - sum * sum / count)};
}

Trials::Trials(std::vector<double> values) : values_{std::move(values)}, moments_{momentsOf(values_)} {
    assert(values_.size() >= 2);
}

Trials::Trials(std::vector<double> values, const Moments& moments)
    : values_{std::move(values)}, moments_{moments} {
    assert(values_.size() >= 2 && static_cast<double>(values_.size()) == moments.count);
}

Estimate Trials::mean() const {
    const double deviation = std::sqrt(moments_.squares / (moments_.count - 1.0));
    return {.value = moments_.mean, .standardError = deviation / std::sqrt(moments_.count)};
}

Estimate Trials::deviation() const {
    const double variance = moments_.squares / (moments_.count - 1.0);
    if (variance <= 0.0)
        return {};
    double fourth = 0.0;
    for (const double value : values_) {
        const double square = (value - moments_.mean) * (value - moments_.mean);
        fourth += square * square / moments_.count;
    }
    // Var(s²) ≈ (μ₄ − σ⁴)/N, and s = √s² halves it relatively.
    const double varianceError = std::sqrt(std::max(0.0, fourth - variance * variance) / moments_.count);
    const double deviation = std::sqrt(variance);
    return {.value = deviation, .standardError = varianceError / (2.0 * deviation)};
}

Estimate Trials::quantile(double p) const {
    assert(p > 0.0 && p < 1.0);
    const std::size_t rank = rankOf(p, count());
    const auto reach = static_cast<std::size_t>(std::ceil(std::sqrt(p * (1.0 - p) * moments_.count)));
    const std::size_t first = rank - std::min(rank, reach);
    const std::size_t last = std::min(rank + reach, count() - 1);
    const std::vector<double> near = orderedBetween(values_, first, last);
    return {.value = near[rank - first], .standardError = (near.back() - near.front()) / 2.0};
}

CoverageInterval Trials::centralInterval(double p) const {
    return {.least = quantile((1.0 - p) / 2.0).value, .most = quantile((1.0 + p) / 2.0).value};
}

CoverageInterval Trials::shortestInterval(double p) const {
    assert(p > 0.0 && p < 1.0);
    const std::size_t held =
        std::min(static_cast<std::size_t>(std::llround(p * moments_.count)), count() - 1);
    const std::vector<double> lower = orderedBetween(values_, 0, count() - 1 - held);
    const std::vector<double> upper = orderedBetween(values_, held, count() - 1);
    CoverageInterval shortest{.least = lower.front(), .most = upper.front()};
    for (std::size_t i = 1; i < lower.size(); ++i)
        if (upper[i] - lower[i] < shortest.width())
            shortest = {.least = lower[i], .most = upper[i]};
    return shortest;
}

Estimate Trials::probabilityOutside(const ToleranceInterval& limits) const {
    const auto outside = static_cast<double>(
        std::ranges::count_if(values_, [&](double value) { return !within(value, limits); }));
    const double least = std::clamp(outside, 1.0, moments_.count - 1.0) / moments_.count;
    return {.value = outside / moments_.count,
            .standardError = std::sqrt(least * (1.0 - least) / moments_.count)};
}

Histogram Trials::histogram(std::size_t bins) const {
    assert(bins > 0);
    const Bins counted{values_, bins};
    return {.least = counted.least(), .binWidth = counted.width(), .counts = counted.counts()};
}

} // namespace gapwise
