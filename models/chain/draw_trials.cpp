#include "models/chain/prediction.h"
#include "models/uncertainty/monte_carlo.h"

#include <algorithm>

namespace gapwise {

namespace {

constexpr std::size_t kBars = 40;

/// A dimension as it scatters; one that was measured as its reading may be off.
InputQuantity inputOf(const DimensionValue& value) {
    if (value.standardMm == 0.0)
        return InputQuantity::fixed(value.valueMm);
    if (value.measured)
        return InputQuantity::normal(value.valueMm, value.standardMm);
    switch (value.dimension->scatter) {
    case Scatter::Normal: return InputQuantity::normal(value.valueMm, value.standardMm);
    case Scatter::Rectangular: return InputQuantity::rectangular(value.valueMm, value.halfWidthMm);
    case Scatter::Triangular: return InputQuantity::triangular(value.valueMm, value.halfWidthMm);
    }
    return InputQuantity::fixed(value.valueMm);
}

Trials draw(const Chain& chain, const std::map<QuantityId, DimensionValue>& values, const TrialPlan& plan) {
    std::vector<InputQuantity> inputs;
    LinearModel model;
    for (const auto& [id, value] : values)
        if (const int sensitivity = sensitivityOf(chain, id); sensitivity != 0) {
            inputs.push_back(inputOf(value));
            model.coefficients.push_back(sensitivity);
        }
    return runLinear(inputs, model, {.trials = plan.trials, .seed = plan.seed, .threads = plan.threads})
        .trials;
}

/// Bars of the drawn values as shares of all.
std::vector<Bar> barsOf(const Trials& trials, std::size_t bars) {
    const Histogram histogram = trials.histogram(bars);
    std::vector<Bar> shares;
    for (std::size_t i = 0; i < histogram.counts.size(); ++i)
        shares.push_back(
            {.leastMm = histogram.least + static_cast<double>(i) * histogram.binWidth,
             .share = static_cast<double>(histogram.counts[i]) / static_cast<double>(trials.count())});
    return shares;
}

} // namespace

ChainTrials drawTrials(const Chain& chain, const std::map<QuantityId, DimensionValue>& values,
                       const Window& window, const TrialPlan& plan) {
    const Trials trials = draw(chain, values, plan);
    const CoverageInterval shortest = trials.shortestInterval(0.95);
    ChainTrials drawn{.trials = trials.count(),
                      .meanMm = trials.mean().value,
                      .standardMm = trials.deviation().value,
                      .least95Mm = shortest.least,
                      .most95Mm = shortest.most};
    if (window.least)
        drawn.below = trials.probabilityOutside({.least = window.least, .most = {}}).value;
    if (window.most)
        drawn.above = trials.probabilityOutside({.least = {}, .most = window.most}).value;
    drawn.histogram = barsOf(trials, predict(chain, values).standardMm > 0.0 ? kBars : 1);
    return drawn;
}

} // namespace gapwise
