#include "models/frame/names.h"
#include "models/frame/readers.h"
#include "models/json/document.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

/// What any quantity may be, in its own unit: a guard against slipped decimals.
constexpr Range kValue{-5000.0, 5000.0};
constexpr Range kSize{0.0, 5000.0};
constexpr Range kExpansionPerK{0.0, 0.001};
constexpr Range kRiseK{0.0, 2000.0};
constexpr Range kGrade{0.0, 4000.0, true}; // ISO 21940-11 ends at G 4000.
constexpr Range kSpeedRpm{0.0, 1'000'000.0, true};
constexpr Range kMassKg{0.0, 10'000.0, true};
constexpr int kMostPlanes = 10;

Method readMethod(Fields& fields) {
    return Method{.id = fields.text("id"),
                  .words = fields.text("words"),
                  .gauges = fields.texts("gauges"),
                  .blind = fields.maybeText("blind").value_or("")};
}

Limits readLimits(Fields& fields) {
    return Limits{.fresh = readWindow(fields, "fresh"),
                  .service = readWindow(fields, "service"),
                  .rule = fields.word("rule", kLimitRuleNames),
                  .method = fields.maybeText("method").value_or(""),
                  .source = fields.text("source")};
}

Agreement readAgreement(Fields& fields) {
    return Agreement{.with = fields.id<QuantityId>("with"), .withinMm = fields.number("within_mm", kSize)};
}

Expectation readExpectation(Fields& fields) {
    return Expectation{.renewed = fields.maybeIds<PartId>("renewed"),
                       .work = fields.maybeText("work").value_or(""),
                       .direction = fields.word("direction", kDirectionNames)};
}

FourPointPlan readFourPoint(Fields& fields) {
    return FourPointPlan{.seenFrom = fields.word("seen_from", kSideNames),
                         .outboardMm = fields.number("outboard_mm", kLengthMm),
                         .eccentricityMost = fields.number("eccentricity_most_mm", kSize),
                         .pointLeast = fields.number("point_least_mm", kSize),
                         .consistencyMost = fields.number("consistency_most_mm", kSize)};
}

UnbalancePlan readUnbalance(Fields& fields) {
    return UnbalancePlan{.grade = fields.number("grade_mm_s", kGrade),
                         .speedRpm = fields.number("speed_rpm", kSpeedRpm),
                         .massKg = fields.number("mass_kg", kMassKg),
                         .centreMm = fields.number("centre_z_mm", kStationMm),
                         .compressorPlaneMm = fields.number("compressor_plane_z_mm", kStationMm),
                         .turbinePlaneMm = fields.number("turbine_plane_z_mm", kStationMm)};
}

RingGapPlan readRingGap(Fields& fields) {
    return RingGapPlan{.boreMm = fields.number("bore_mm", kLengthMm),
                       .ringPerK = fields.number("ring_per_K", kExpansionPerK),
                       .borePerK = fields.number("bore_per_K", kExpansionPerK),
                       .ringRiseK = fields.number("ring_rise_K", kRiseK),
                       .boreRiseK = fields.number("bore_rise_K", kRiseK)};
}

PinPlayPlan readPinPlay(Fields& fields) {
    return PinPlayPlan{.notchMm = fields.number("notch_mm", kLengthMm),
                       .pinMm = fields.number("pin_mm", kLengthMm),
                       .radiusMm = fields.number("radius_mm", kLengthMm)};
}

/// What only some quantities have.
void readPlansOf(Quantity& quantity, Fields& fields) {
    if (fields.has("from"))
        quantity.from = readTerms(fields, "from");
    quantity.agrees = readMaybeSection(fields, "agrees", readAgreement);
    quantity.expectations = readEach(fields.maybeObjects("expectations"), readExpectation);
    quantity.fourPoint = readMaybeSection(fields, "four_point", readFourPoint);
    quantity.unbalance = readMaybeSection(fields, "unbalance", readUnbalance);
    quantity.ringGap = readMaybeSection(fields, "ring_gap", readRingGap);
    quantity.pinPlay = readMaybeSection(fields, "pin_play", readPinPlay);
}

Quantity readQuantity(Fields& fields) {
    Quantity quantity{.id = fields.id<QuantityId>("id"),
                      .name = fields.text("name"),
                      .part = fields.maybeId<PartId>("part").value_or(PartId{}),
                      .unit = fields.word("unit", kUnitNames),
                      .points = fields.maybeTexts("points"),
                      .planes = fields.has("planes") ? fields.whole("planes", 1, kMostPlanes) : 0,
                      .takes = fields.maybeWord("takes", kTakesNames).value_or(Takes::Mean),
                      .expected = fields.maybeNumber("expected", kValue),
                      .spreadMost = fields.maybeNumber("spread_most", kSize),
                      .ovalityMost = fields.maybeNumber("ovality_most", kSize),
                      .taperMost = fields.maybeNumber("taper_most", kSize),
                      .pointer = fields.pointer()};
    quantity.limits = readMaybeSection(fields, "limits", readLimits).value_or(Limits{});
    readPlansOf(quantity, fields);
    return quantity;
}

} // namespace

Window readWindow(Fields& fields, std::string_view key) {
    if (!fields.has(key))
        return {};
    const auto [least, most] = fields.openPair(key, kValue);
    return Window{.least = least, .most = most};
}

std::vector<Term> readTerms(Fields& fields, std::string_view key) {
    std::vector<Term> terms;
    const std::vector<std::string> texts = fields.texts(key);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const std::string& text = texts[i];
        if (text.size() > 1 && (text[0] == '+' || text[0] == '-'))
            terms.push_back(Term{.of = QuantityId{text.substr(1)}, .sign = text[0] == '+' ? 1 : -1});
        else
            fields.complaints().add(fmt::format("{}/{}", fields.pointerTo(key), i), quotedText(text),
                                    "+ or - and an id, as in +L_S or -t_T");
    }
    return terms;
}

Measurement readMeasurement(Fields& fields) {
    Measurement measurement{.id = fields.id<MeasurementId>("id"),
                            .name = fields.text("name"),
                            .where = fields.text("where"),
                            .instrument = fields.maybeText("instrument").value_or(""),
                            .step = fields.id<StepId>("step"),
                            .before = fields.maybeId<StepId>("before"),
                            .parts = fields.ids<PartId>("parts"),
                            .required = fields.maybeFlag("required").value_or(false),
                            .pointer = fields.pointer()};
    measurement.methods = readEach(fields.maybeObjects("methods"), readMethod);
    measurement.quantities = readEach(fields.maybeObjects("quantities"), readQuantity);
    return measurement;
}

} // namespace gapwise
