#pragma once

#include "models/frame/frame.h"
#include "models/json/fields.h"

namespace gapwise {

// The readers of a frame file's sections. Each takes the section's object, complains about what is wrong with
// it and gives what could be read; what only the whole frame can tell is left to frameErrors.

Shape readShape(Fields& fields);
PartType readPartType(Fields& fields);
Part readPart(Fields& fields);
Seat readSeat(Fields& fields);
/// `known` has its types already: they tell whether an id names a feature or a part.
Rule readRule(Fields& fields, const Frame& known);
Step readStep(Fields& fields);
Caution readCaution(Fields& fields);
Measurement readMeasurement(Fields& fields);
Dimension readDimension(Fields& fields);
Contact readContact(Fields& fields);
Chain readChain(Fields& fields);
Change readChange(Fields& fields);
Selector readSelector(Fields& fields);
LeverPlan readLever(Fields& fields);
Fastener readFastener(Fields& fields);
Rest readRest(Fields& fields);
SharedMaterial readSharedMaterial(Fields& fields);
WithoutRule readWithoutRule(Fields& fields);

/// The section under `key` by one of the readers, finished; a default value when it is missing.
template <class Read>
auto readSection(Fields& fields, std::string_view key, Read read) -> decltype(read(fields)) {
    std::optional<Fields> section = fields.object(key);
    if (!section)
        return {};
    auto result = read(*section);
    section->finish();
    return result;
}

/// The same for a section that may be missing.
template <class Read>
auto readMaybeSection(Fields& fields, std::string_view key, Read read)
    -> std::optional<decltype(read(fields))> {
    std::optional<Fields> section = fields.maybeObject(key);
    if (!section)
        return std::nullopt;
    auto result = read(*section);
    section->finish();
    return result;
}

/// Quantities with their signs: `["+L_S", "-t_T"]`.
std::vector<Term> readTerms(Fields& fields, std::string_view key);

/// `[least, most]`, null where it is open; an open window when the key is missing.
Window readWindow(Fields& fields, std::string_view key);

/// A clock with the side it is seen from: `{"clock_deg", "seen_from"}`.
Clock readClock(Fields& fields);

} // namespace gapwise
