#include "models/chain/investigation.h"

#include <algorithm>
#include <cmath>
#include <ranges>

namespace gapwise {

namespace {

std::vector<MeasuredValue> sizesOf(const CaseFile& known) {
    std::vector<MeasuredValue> sizes;
    std::ranges::transform(known.parts, std::back_inserter(sizes), &PartEvidence::value);
    return sizes;
}

} // namespace

double ReadGap::expandedMm() const {
    return std::hypot(value.expanded, 2.0 * predicted.standardMm);
}

double ReadGap::allowedMm() const {
    return std::max(expandedMm(), kMovedLeastMm);
}

bool ReadGap::moved() const {
    constexpr double kRoundingMm = 1e-9;
    return std::abs(deviationMm()) > allowedMm() + kRoundingMm;
}

const PartEvidence* Investigation::part(const QuantityId& dimension) const {
    for (const PartEvidence& evidence : std::views::reverse(known.parts))
        if (evidence.value.id == dimension)
            return &evidence;
    return nullptr;
}

const ReadGap* Investigation::gap(const QuantityId& chain) const {
    const auto found = std::ranges::find_if(gaps, [&](const ReadGap& gap) { return gap.chain->id == chain; });
    return found != gaps.end() ? &*found : nullptr;
}

Investigation investigate(const Frame& frame, const CaseFile& known) {
    Investigation seen{
        .frame = frame, .known = known, .values = dimensionValues(frame, sizesOf(known)), .gaps = {}};
    for (const Chain& chain : frame.chains)
        for (const MeasuredValue& value : std::views::reverse(known.gaps))
            if (value.id == chain.id && seen.gap(chain.id) == nullptr)
                seen.gaps.push_back(
                    {.chain = &chain, .value = value, .predicted = predict(chain, seen.values)});
    return seen;
}

} // namespace gapwise
