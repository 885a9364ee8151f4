#pragma once

#include "models/chain/diagnosis.h"
#include "models/chain/prediction.h"

#include <map>
#include <vector>

namespace gapwise {

/// A chain whose gap was read.
struct ReadGap {
    const Chain* chain = nullptr;
    MeasuredValue value{};
    Prediction predicted{};

    double deviationMm() const { return value.value - predicted.valueMm; }
    double expandedMm() const; ///< U of the deviation.
    double allowedMm() const;  ///< A deviation up to this is none.
    bool moved() const;
};

/// A case looked at: every dimension as it is known, every gap that was read.
struct Investigation {
    const Frame& frame;
    const CaseFile& known;
    std::map<QuantityId, DimensionValue> values{};
    std::vector<ReadGap> gaps{};

    /// What was measured of a dimension; null where nothing was.
    const PartEvidence* part(const QuantityId& dimension) const;
    /// The gap that was read of a chain; null where none was.
    const ReadGap* gap(const QuantityId& chain) const;
};

/// Of several readings of one gap the last counts; what is no chain of the frame is left out. Frame and case
/// must outlive the result.
Investigation investigate(const Frame& frame, const CaseFile& known);

} // namespace gapwise
