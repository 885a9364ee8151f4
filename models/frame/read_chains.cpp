#include "models/frame/names.h"
#include "models/frame/readers.h"
#include "models/json/document.h"
#include "models/json/schema_words.h"

namespace gapwise {

namespace {

constexpr Range kToleranceMm{0.0, 100.0};

} // namespace

Dimension readDimension(Fields& fields) {
    return Dimension{.id = fields.id<QuantityId>("id"),
                     .name = fields.text("name"),
                     .part = fields.id<PartId>("part"),
                     .from = fields.id<StationId>("from"),
                     .to = fields.id<StationId>("to"),
                     .nominalMm = fields.number("nominal_mm", kStationMm),
                     .toleranceMm = fields.number("tolerance_mm", kToleranceMm),
                     .scatter = fields.maybeWord("scatter", kScatterNames).value_or(Scatter::Normal),
                     .pointer = fields.pointer()};
}

Contact readContact(Fields& fields) {
    Contact contact{.pushedTo = fields.maybeWord("pushed_to", kSideNames), .pointer = fields.pointer()};
    const std::vector<std::string> between = fields.texts("between");
    if (between.size() == 2) {
        contact.first = StationId{between[0]};
        contact.second = StationId{between[1]};
    } else if (fields.holdsArray("between")) {
        fields.complain("between", schema::counted(between.size(), "station"), "2 stations");
    }
    return contact;
}

Chain readChain(Fields& fields) {
    return Chain{.id = fields.id<QuantityId>("id"),
                 .name = fields.text("name"),
                 .from = fields.id<StationId>("from"),
                 .to = fields.id<StationId>("to"),
                 .pushedTo = fields.maybeWord("pushed_to", kSideNames),
                 .links = readTerms(fields, "links"),
                 .window = readWindow(fields, "window_mm"),
                 .pointer = fields.pointer()};
}

Change readChange(Fields& fields) {
    return Change{.id = fields.text("id"),
                  .name = fields.text("name"),
                  .kind = fields.word("kind", kChangeKindNames),
                  .part = fields.id<PartId>("part"),
                  .moves = readTerms(fields, "moves"),
                  .remedy = fields.maybeText("remedy").value_or(""),
                  .pointer = fields.pointer()};
}

Selector readSelector(Fields& fields) {
    return Selector{.dimension = fields.id<QuantityId>("dimension"),
                    .sets = fields.id<QuantityId>("sets"),
                    .part = fields.id<PartId>("part"),
                    .gradesMm = fields.numbers("grades_mm", kStationMm),
                    .otherwise = fields.maybeText("otherwise").value_or(""),
                    .pointer = fields.pointer()};
}

LeverPlan readLever(Fields& fields) {
    return LeverPlan{.spanMm = fields.number("span_mm", kLengthMm),
                     .noseMm = fields.number("nose_mm", kLengthMm),
                     .turbineMm = fields.number("turbine_mm", kLengthMm),
                     .bearingLengthMm = fields.number("bearing_length_mm", kLengthMm),
                     .noseReading = fields.id<QuantityId>("nose_reading"),
                     .turbineReading = fields.id<QuantityId>("turbine_reading"),
                     .compressorPlay = fields.id<QuantityId>("compressor_play"),
                     .turbinePlay = fields.id<QuantityId>("turbine_play"),
                     .pointer = fields.pointer()};
}

} // namespace gapwise
