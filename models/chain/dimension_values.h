#pragma once

#include "models/frame/frame.h"

#include <map>
#include <span>

namespace gapwise {

/// What was measured of a quantity, at 20 °C.
struct MeasuredValue {
    QuantityId id{};
    double value = 0.0;
    double expanded = 0.0; ///< U, k = 2.
};

/// What a dimension is taken to be: the drawing's size, or what was measured.
struct DimensionValue {
    const Dimension* dimension = nullptr;
    double valueMm = 0.0;
    double halfWidthMm = 0.0; ///< The drawing's tolerance, or U of what was measured.
    double standardMm =
        0.0; ///< Standard deviation: a third, 1/√3 or 1/√6 of the tolerance by its scatter; U/2.
    bool measured = false;
};

/// Every dimension of the frame, which must outlive the result, with its value. A measured quantity that no
/// dimension is named by is not in it.
std::map<QuantityId, DimensionValue> dimensionValues(const Frame& frame,
                                                     std::span<const MeasuredValue> measured);

} // namespace gapwise
