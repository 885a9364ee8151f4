#include "models/build/read_instrument.h"

#include "models/build/date.h"
#include "models/build/names.h"
#include "models/frame/names.h"
#include "models/json/document.h"

#include <fmt/format.h>

#include <map>

namespace gapwise {

namespace {

constexpr Range kAmount{0.0, 1e6};
constexpr Range kReach{-1e6, 1e6};

} // namespace

Instrument readInstrument(Fields& fields) {
    Instrument instrument{.id = fields.text("id"),
                          .kind = std::string{fields.word("kind", kInstrumentKinds)},
                          .name = fields.text("name"),
                          .unit = std::string{nameOf(fields.word("unit", kUnitNames))},
                          .resolution = fields.number("resolution", kAmount),
                          .uncertainty = fields.number("uncertainty", kAmount),
                          .least = fields.number("least", kReach),
                          .most = fields.number("most", kReach),
                          .calibratedUntil = fields.maybeText("calibrated_until").value_or(""),
                          .pointer = fields.pointer()};
    if (!instrument.calibratedUntil.empty() && !isDate(instrument.calibratedUntil))
        fields.complain("calibrated_until", quotedText(instrument.calibratedUntil), kDateWords);
    return instrument;
}

void instrumentErrors(std::span<const Instrument> instruments, Complaints& complaints) {
    std::map<std::string, const Instrument*> known;
    for (const Instrument& instrument : instruments) {
        if (instrument.most <= instrument.least)
            complaints.add(instrument.pointer + "/most", fmt::format("{:g}", instrument.most),
                           fmt::format("above the least, {:g}", instrument.least));
        const auto [first, isNew] = known.emplace(instrument.id, &instrument);
        if (!isNew)
            complaints.add(instrument.pointer + "/id",
                           fmt::format("{}, as at {}", quotedText(instrument.id), first->second->pointer),
                           "each instrument once");
    }
}

} // namespace gapwise
