#include "models/measure/expect.h"

#include "models/gauging/bush.h"
#include "models/gauging/lever.h"
#include "models/measure/lever_of.h"
#include "models/measure/numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// A reading that is off by more points to the assembly or to a part reading.
constexpr double kAgreesMm = 0.02;

std::string sourceWords(const Prediction& prediction) {
    const auto measured = std::ranges::count_if(prediction.links, &LinkShare::measured);
    const auto drawn = std::ssize(prediction.links) - measured;
    if (measured == 0)
        return "from drawing sizes";
    return drawn == 0 ? fmt::format("from {} measured sizes", measured)
                      : fmt::format("from {} measured and {} drawing sizes", measured, drawn);
}

Predicted fromChain(const Prediction& prediction) {
    return {.value = prediction.valueMm,
            .least = prediction.valueMm - prediction.rssMm,
            .most = prediction.valueMm + prediction.rssMm,
            .chain = prediction,
            .words = sourceWords(prediction)};
}

std::optional<Predicted> fromLever(const Frame& frame, const QuantityId& id,
                                   std::span<const Prediction> chains) {
    if (!frame.lever || (id != frame.lever->noseReading && id != frame.lever->turbineReading))
        return std::nullopt;
    const std::optional<PartPlays> plays = partPlays(frame, chains);
    if (!plays)
        return std::nullopt;
    const EndBands bands = predictedBand(leverOf(*frame.lever), {plays->compressor, plays->turbine});
    const Band& band = id == frame.lever->noseReading ? bands.nose : bands.turbine;
    return Predicted{.value = (band.least + band.most) / 2.0,
                     .least = band.least,
                     .most = band.most,
                     .words =
                         fmt::format("by the lever, from play {} at the compressor bearing and {} at the "
                                     "turbine bearing",
                                     plainNumber(plays->compressor, 3), plainNumber(plays->turbine, 3))};
}

Predicted fromPin(const PinPlayPlan& plan) {
    const double turn =
        pinPlay({.notchMm = plan.notchMm, .pinMm = plan.pinMm, .radiusMm = plan.radiusMm}).value;
    return {.value = turn, .least = turn, .most = turn, .words = "from notch and pin"};
}

} // namespace

const Prediction* predictionOf(std::span<const Prediction> chains, const QuantityId& id) {
    const auto found = std::ranges::find(chains, id, &Prediction::chain);
    return found == chains.end() ? nullptr : &*found;
}

std::optional<PartPlays> partPlays(const Frame& frame, std::span<const Prediction> chains) {
    if (!frame.lever)
        return std::nullopt;
    const Prediction* compressor = predictionOf(chains, frame.lever->compressorPlay);
    const Prediction* turbine = predictionOf(chains, frame.lever->turbinePlay);
    if (!compressor || !turbine)
        return std::nullopt;
    return PartPlays{compressor->valueMm, turbine->valueMm, compressor->measured && turbine->measured};
}

std::optional<Predicted> predictedFor(const Frame& frame, const Quantity& quantity,
                                      std::span<const Prediction> chains) {
    if (const Prediction* chain = predictionOf(chains, quantity.id))
        return fromChain(*chain);
    if (std::optional<Predicted> lever = fromLever(frame, quantity.id, chains))
        return lever;
    if (quantity.pinPlay)
        return fromPin(*quantity.pinPlay);
    if (quantity.agrees)
        if (const Prediction* other = predictionOf(chains, quantity.agrees->with))
            return fromChain(*other);
    return std::nullopt;
}

bool disagrees(const Evaluated& read, const Predicted& predicted, Unit unit) {
    if (unit != Unit::Millimetres)
        return false;
    if (!predicted.chain)
        return read.value < predicted.least - read.expanded - kRounding ||
               read.value > predicted.most + read.expanded + kRounding;
    const double both = std::hypot(read.expanded, 2.0 * predicted.chain->standardMm);
    return std::abs(read.value - predicted.value) > std::max(kAgreesMm, both) + kRounding;
}

} // namespace gapwise
