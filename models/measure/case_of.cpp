#include "models/measure/case_of.h"

#include "models/measure/compare.h"
#include "models/measure/flags.h"

#include <algorithm>

namespace gapwise {

namespace {

/// The words of the method that a quantity was read by; of a reckoned one those of its measurement's.
std::string methodWords(const Frame& frame, const QuantityId& id, const Evaluated& read) {
    for (const Measurement& measurement : frame.measurements)
        if (measurement.quantity(id))
            if (const Method* method = measurement.method(read.method))
                return method->words;
    return {};
}

} // namespace

std::vector<MeasuredValue> measuredValues(const ReadValues& read) {
    std::vector<MeasuredValue> values;
    for (const auto& [id, evaluated] : read)
        values.push_back({id, evaluated.value, evaluated.expanded});
    return values;
}

CaseFile caseOf(const Frame& frame, const Build& build, const ReadValues& read) {
    CaseFile known{.renewed = renewedParts(build)};
    for (const auto& [id, evaluated] : read) {
        const MeasuredValue value{id, evaluated.value, evaluated.expanded};
        if (frame.dimension(id))
            known.parts.push_back(
                {value, hasFlag(evaluated.flags, FlagKind::Blind), methodWords(frame, id, evaluated)});
        else if (frame.chain(id))
            known.gaps.push_back(value);
    }
    return known;
}

} // namespace gapwise
