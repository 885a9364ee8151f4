#include "models/chain/dimension_values.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

double standardOf(double toleranceMm, Scatter scatter) {
    switch (scatter) {
    case Scatter::Normal: return toleranceMm / 3.0;
    case Scatter::Rectangular: return toleranceMm / std::sqrt(3.0);
    case Scatter::Triangular: return toleranceMm / std::sqrt(6.0);
    }
    return 0.0;
}

DimensionValue asDrawn(const Dimension& dimension) {
    return {.dimension = &dimension,
            .valueMm = dimension.nominalMm,
            .halfWidthMm = dimension.toleranceMm,
            .standardMm = standardOf(dimension.toleranceMm, dimension.scatter),
            .measured = false};
}

DimensionValue asMeasured(const Dimension& dimension, const MeasuredValue& measured) {
    return {.dimension = &dimension,
            .valueMm = measured.value,
            .halfWidthMm = measured.expanded,
            .standardMm = measured.expanded / 2.0,
            .measured = true};
}

} // namespace

std::map<QuantityId, DimensionValue> dimensionValues(const Frame& frame,
                                                     std::span<const MeasuredValue> measured) {
    std::map<QuantityId, DimensionValue> values;
    for (const Dimension& dimension : frame.dimensions)
        values[dimension.id] = asDrawn(dimension);
    for (const MeasuredValue& reading : measured)
        if (const auto found = values.find(reading.id); found != values.end())
            found->second = asMeasured(*found->second.dimension, reading);
    return values;
}

} // namespace gapwise
