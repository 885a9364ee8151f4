#include "models/frame/measurement.h"

#include "models/frame/names.h"

#include <algorithm>

namespace gapwise {

std::string_view nameOf(Unit unit) {
    return nameIn(kUnitNames, unit);
}

std::string_view symbolOf(Unit unit) {
    switch (unit) {
    case Unit::Degrees: return "°";
    case Unit::GramMillimetres: return "g·mm";
    default: return "mm";
    }
}

const Quantity* Measurement::quantity(const QuantityId& wanted) const {
    const auto found = std::ranges::find(quantities, wanted, &Quantity::id);
    return found == quantities.end() ? nullptr : &*found;
}

const Method* Measurement::method(std::string_view wanted) const {
    const auto found = std::ranges::find(methods, wanted, &Method::id);
    return found == methods.end() ? nullptr : &*found;
}

} // namespace gapwise
