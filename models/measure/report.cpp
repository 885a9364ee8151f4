#include "models/measure/report.h"

#include <algorithm>

namespace gapwise {

std::string_view nameOf(Standing standing) {
    switch (standing) {
    case Standing::NotRead: return "not_read";
    case Standing::NoLimit: return "no_limit";
    case Standing::NotJudged: return "not_judged";
    case Standing::NotProven: return "not_proven";
    case Standing::Within: return "within";
    case Standing::Between: return "between";
    case Standing::Beyond: break;
    }
    return "beyond";
}

const QuantityResult* MeasureReport::of(const QuantityId& id) const {
    const auto found = std::ranges::find_if(
        quantities, [&](const QuantityResult& each) { return each.quantity && each.quantity->id == id; });
    return found == quantities.end() ? nullptr : &*found;
}

MeasureReport measureReport(const Frame& frame, const Build& /*build*/, const Bench& /*bench*/,
                            const MeasureSettings& /*settings*/) {
    MeasureReport report;
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities) {
            QuantityResult result;
            result.measurement = &measurement;
            result.quantity = &quantity;
            report.quantities.push_back(std::move(result));
        }
    return report;
}

bool measuresHold(const Frame& /*frame*/, const MeasureReport& /*report*/) {
    return false;
}

} // namespace gapwise
