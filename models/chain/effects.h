#pragma once

#include "models/chain/dimension_values.h"

#include <vector>

namespace gapwise {

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
/// every chain anew. Chains that no change moves are left out.
EffectTable effectTable(const Frame& frame);

} // namespace gapwise
