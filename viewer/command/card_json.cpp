#include "viewer/command/card_json.h"

#include "models/card/card_words.h"
#include "models/check/face_words.h"
#include "models/check/severity.h"
#include "models/frame/names.h"
#include "models/frame/notice.h"
#include "viewer/command/json_lists.h"

#include <nlohmann/json.hpp>

#include <array>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::array kSides{Side::Compressor, Side::Turbine};

Json orNull(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

Json stepOf(const CardStep& step) {
    return step.empty() ? Json(nullptr) : Json{{"step", step.id.text}, {"title", step.title}};
}

Json clocksOf(const Clock& clock) {
    return arrayOf(kSides, [&](Side side) {
        return Json{{"clock_deg", clock.from(side).value}, {"seen_from", nameOf(side)}};
    });
}

Json expectedOf(const DemandedFact& fact) {
    return {{"fact", fact.what}};
}

Json expectedOf(const DemandedClock& clock) {
    return {{"part", clock.of.text},
            {"of", clock.what},
            {"clocks", clocksOf(clock.target)},
            {"tolerance_deg", clock.tolerance.value},
            {"printed_from", clock.printedFrom ? Json(nameOf(*clock.printedFrom)) : Json(nullptr)},
            {"on", orNull(clock.on)}};
}

Json expectedOf(const DemandedFace& face) {
    return {{"face", faceWord(face.kind)},
            {"looks", nameOf(face.looks)},
            {"toward", face.toward ? Json(face.toward->text) : Json(nullptr)},
            {"visible", arrayOf(kSides, [&](Side side) {
                 return Json{{"seen_from", nameOf(side)},
                             {"face", side == face.looks ? faceWord(face.kind) : otherFaceWord(face.kind)}};
             })}};
}

Json expectedOf(const DemandedApart& apart) {
    return {{"apart_deg", apart.apart.value}, {"tolerance_deg", apart.tolerance.value}};
}

Json expectedOf(const DemandedClear& clear) {
    return {{"feature", clear.feature.text},
            {"name", clear.name},
            {"clocks", clear.at ? clocksOf(*clear.at) : Json(nullptr)},
            {"margin_deg", clear.margin.value},
            {"at_least_apart_deg", clear.betweenMiddles.value}};
}

Json demandOf(const CardDemand& demand) {
    return {{"rule", demand.rule.text},
            {"kind", demand.kind},
            {"printed", demand.printed},
            {"demands", wordsOf(demand)},
            {"expected", std::visit([](const auto& kind) { return expectedOf(kind); }, demand.demanded)},
            {"with", idsOf(demand.with)},
            {"severity", demand.severity},
            {"severity_word", severityWord(demand.severity)},
            {"reason", demand.reason},
            {"last_look", stepOf(demand.lastLook)},
            {"source", demand.source},
            {"trade_id", orNull(demand.tradeId)}};
}

/// What must be seen from each side, inlet on top.
Json sightsOf(const PartCard& card) {
    return arrayOf(kSides, [&](Side side) {
        const RightSight sight = rightSightOf(card, side);
        return Json{{"seen_from", nameOf(side)},
                    {"face", orNull(std::string{sight.face})},
                    {"clock_deg", sight.clock ? Json(sight.clock->value) : Json(nullptr)},
                    {"tolerance_deg", sight.clock ? Json(sight.tolerance.value) : Json(nullptr)}};
    });
}

Json cautionOf(const CardCaution& caution) {
    return {{"id", caution.id},
            {"signal", nameIn(kSignalNames, caution.signal)},
            {"words", caution.words},
            {"steps", arrayOf(caution.steps, stepOf)},
            {"source", caution.source}};
}

Json measurementOf(const CardMeasurement& each) {
    return {{"id", each.id.text}, {"name", each.name}, {"where", each.where}, {"at", stepOf(each.step)}};
}

Json fastenerOf(const CardFastener& each) {
    return {{"id", each.id.text},
            {"role", each.role == CardFastener::Role::PartIsOneOf ? "one_of" : "holds"},
            {"name", each.name},
            {"size", each.size},
            {"tightens", nameIn(kTurnNames, each.tightensClockwise)},
            {"seen_from", nameOf(each.seenFrom)},
            {"at", stepOf(each.step)},
            {"pieces", idsOf(each.pieces)},
            {"holds", idsOf(each.holds)}};
}

Json identityOf(const PartCard& card) {
    return {{"id", card.id.text},
            {"name", card.name},
            {"type", card.type.text},
            {"type_name", card.typeName},
            {"trade_id", orNull(card.tradeId)},
            {"function", card.function},
            {"material", card.material},
            {"mass_kg", card.massKg},
            {"index", nameOf(card.index)},
            {"face", nameOf(card.face)},
            {"casing", card.casing}};
}

} // namespace

std::string cardAsJson(const Frame& frame, const PartCard& card) {
    const Json lubricant = card.lubricant
                               ? Json{{"use", card.lubricant->use}, {"never", orNull(card.lubricant->never)}}
                               : Json(nullptr);
    const Json document{{"frame", frame.id.text},
                        {"part", identityOf(card)},
                        {"placed_in", stepOf(card.placedIn)},
                        {"enters_from", card.entersFrom ? Json(nameOf(*card.entersFrom)) : Json(nullptr)},
                        {"hidden_by", stepOf(card.hiddenBy)},
                        {"must_see", sightsOf(card)},
                        {"demands", arrayOf(card.demands, demandOf)},
                        {"lubricant", lubricant},
                        {"cautions", arrayOf(card.cautions, cautionOf)},
                        {"measurements", arrayOf(card.measurements, measurementOf)},
                        {"fasteners", arrayOf(card.fasteners, fastenerOf)},
                        {"orientations", card.orientations},
                        {"without_rule", arrayOf(card.withoutRule,
                                                 [](const WithoutRule& each) {
                                                     return Json{{"trade_id", each.tradeId},
                                                                 {"why", each.why}};
                                                 })},
                        {"notice", orNull(std::string{noticeOf(frame)})},
                        {"rests_on", prevailLine(frame)}};
    return document.dump(2) + "\n";
}

} // namespace gapwise
