#pragma once

#include "models/chain/dimension_values.h"

#include <vector>

namespace gapwise {

/// The values as they are once a change of this length has come about; measured ones move as well.
std::map<QuantityId, DimensionValue> movedBy(const Change& change, double lengthMm,
                                             std::map<QuantityId, DimensionValue> values);

/// What a change does to a chain, as a multiple of its length: by moving its dimensions by a millimetre and
/// predicting anew.
double effectOn(const Chain& chain, const Change& change, const std::map<QuantityId, DimensionValue>& values);

/// What one change does to the chains of a table, as multiples of its length: +1, 0, −1 and in between.
struct EffectRow {
    const Change* change = nullptr;
    std::vector<double> effects{}; ///< One a chain, in the order of the table.
};

/// Changes against chains: the page that is read forward to plan and backward to find a cause.
struct EffectTable {
    std::vector<const Chain*> chains{};
    std::vector<EffectRow> rows{};
};

/// The table of all changes of the frame, computed by moving the dimensions of each change and predicting
/// every chain anew. Chains that no change moves are left out. The frame must outlive the table.
EffectTable effectTable(const Frame& frame);

} // namespace gapwise
