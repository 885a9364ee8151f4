#include "models/chain/effects.h"

#include "models/chain/prediction.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Effects are small fractions; differences of sums of sizes carry the rounding of the sizes.
double withoutRounding(double effect) {
    constexpr double kPerUnit = 1e9;
    return std::round(effect * kPerUnit) / kPerUnit + 0.0; // + 0.0: no −0
}

/// The values of the chain's own links.
std::map<QuantityId, DimensionValue> linksOf(const Chain& chain,
                                             const std::map<QuantityId, DimensionValue>& values) {
    std::map<QuantityId, DimensionValue> links;
    for (const Term& link : chain.links)
        links.insert(*values.find(link.of));
    return links;
}

bool movedByAny(const EffectTable& table, std::size_t column) {
    return std::ranges::any_of(table.rows, [&](const EffectRow& row) { return row.effects[column] != 0.0; });
}

/// The table without the chains that nothing moves.
EffectTable withoutUnmoved(const EffectTable& table) {
    EffectTable left;
    for (const EffectRow& row : table.rows)
        left.rows.push_back({.change = row.change});
    for (std::size_t column = 0; column < table.chains.size(); ++column) {
        if (!movedByAny(table, column))
            continue;
        left.chains.push_back(table.chains[column]);
        for (std::size_t row = 0; row < table.rows.size(); ++row)
            left.rows[row].effects.push_back(table.rows[row].effects[column]);
    }
    return left;
}

} // namespace

std::map<QuantityId, DimensionValue> movedBy(const Change& change, double lengthMm,
                                             std::map<QuantityId, DimensionValue> values) {
    for (const Term& move : change.moves)
        if (const auto found = values.find(move.of); found != values.end())
            found->second.valueMm += move.sign * lengthMm;
    return values;
}

double effectOn(const Chain& chain, const Change& change,
                const std::map<QuantityId, DimensionValue>& values) {
    constexpr double kStepMm = 1.0;
    const std::map<QuantityId, DimensionValue> links = linksOf(chain, values);
    const double before = predict(chain, links).valueMm;
    const double after = predict(chain, movedBy(change, kStepMm, links)).valueMm;
    return withoutRounding((after - before) / kStepMm);
}

EffectTable effectTable(const Frame& frame) {
    const std::map<QuantityId, DimensionValue> drawn = dimensionValues(frame, {});
    EffectTable all;
    for (const Chain& chain : frame.chains)
        all.chains.push_back(&chain);
    for (const Change& change : frame.changes) {
        EffectRow& row = all.rows.emplace_back(EffectRow{.change = &change});
        for (const Chain* chain : all.chains)
            row.effects.push_back(effectOn(*chain, change, drawn));
    }
    return withoutUnmoved(all);
}

} // namespace gapwise
