#include "models/chain/prediction.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Each dimension of the chain once, with how often it counts.
std::map<QuantityId, int> countsOf(const Chain& chain) {
    std::map<QuantityId, int> counts;
    for (const Term& link : chain.links)
        counts[link.of] += link.sign;
    return counts;
}

LinkShare linkOf(const Term& link, const DimensionValue& value) {
    return {.of = link.of,
            .sign = link.sign,
            .valueMm = value.valueMm,
            .halfWidthMm = value.halfWidthMm,
            .measured = value.measured};
}

void addLinks(Prediction& prediction, const Chain& chain,
              const std::map<QuantityId, DimensionValue>& values) {
    for (const Term& link : chain.links) {
        const DimensionValue& value = values.at(link.of);
        prediction.drawingMm += link.sign * value.dimension->nominalMm;
        prediction.valueMm += link.sign * value.valueMm;
        prediction.measured = prediction.measured || value.measured;
        prediction.links.push_back(linkOf(link, value));
    }
}

/// The shares of the links of one dimension, which together brings so much of the variance.
void shareOut(Prediction& prediction, const QuantityId& dimension, double share) {
    const auto isOfIt = [&](const LinkShare& link) { return link.of == dimension; };
    const auto number = std::ranges::count_if(prediction.links, isOfIt);
    for (LinkShare& link : prediction.links)
        if (isOfIt(link))
            link.share = share / static_cast<double>(number);
}

} // namespace

int sensitivityOf(const Chain& chain, const QuantityId& dimension) {
    int count = 0;
    for (const Term& link : chain.links)
        if (link.of == dimension)
            count += link.sign;
    return count;
}

Prediction predict(const Chain& chain, const std::map<QuantityId, DimensionValue>& values) {
    Prediction prediction{.chain = chain.id};
    addLinks(prediction, chain, values);
    const std::map<QuantityId, int> counts = countsOf(chain);
    double squares = 0.0;
    double variance = 0.0;
    for (const auto& [id, count] : counts) {
        const DimensionValue& value = values.at(id);
        prediction.worstMm += std::abs(count) * value.halfWidthMm;
        squares += std::pow(count * value.halfWidthMm, 2);
        variance += std::pow(count * value.standardMm, 2);
    }
    prediction.rssMm = std::sqrt(squares);
    prediction.standardMm = std::sqrt(variance);
    if (variance > 0.0)
        for (const auto& [id, count] : counts)
            shareOut(prediction, id, std::pow(count * values.at(id).standardMm, 2) / variance);
    return prediction;
}

Window windowOf(const Frame& frame, const QuantityId& chain) {
    const Frame::FoundQuantity found = frame.quantity(chain);
    if (found.quantity != nullptr && !found.quantity->limits.fresh.empty())
        return found.quantity->limits.fresh;
    const Chain* own = frame.chain(chain);
    return own != nullptr ? own->window : Window{};
}

} // namespace gapwise
