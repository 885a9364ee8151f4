#include "viewer/command/frame_json.h"

#include "models/chain/prediction.h"
#include "models/frame/names.h"
#include "viewer/command/frame_text.h"
#include "viewer/command/json_lists.h"
#include "viewer/command/step_json.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

Json clockFrom(const Clock& clock, Side side) {
    return {{"clock_deg", clock.from(side).value}, {"seen_from", nameOf(side)}};
}

Json partOf(const Frame& frame, const Part& part) {
    const PartType& type = *frame.type(part.type);
    return {{"id", part.id.text},        {"name", part.name},
            {"type", type.id.text},      {"index", nameOf(type.index)},
            {"face", nameOf(type.face)}, {"joint", type.joint ? Json(nameOf(*type.joint)) : Json(nullptr)},
            {"mass_kg", type.massKg}};
}

Json seatAsJson(const Seat& seat) {
    return {{"id", seat.id.text},
            {"types", idsOf(seat.types)},
            {"carriers", arrayOf(seat.carriers, [](const Carrier& carrier) { return carrier.part.text; })},
            {"z_mm", seat.zMm},
            {"reversible", seat.reversible},
            {"enters_from", seat.entersFrom ? Json(nameOf(*seat.entersFrom)) : Json(nullptr)}};
}

/// The printed clock first, then the same from the other side; empty where the rule prints none.
Json clocksOf(const Rule& rule) {
    Json clocks = Json::array();
    if (const PrintedClock* printed = printedClockOf(rule)) {
        const Side side = printed->seenFrom.value_or(Side::Compressor);
        clocks.push_back(clockFrom(targetOf(*printed), side));
        clocks.push_back(clockFrom(targetOf(*printed), opposite(side)));
    }
    return clocks;
}

Json ruleOf(const Frame& frame, const Rule& rule) {
    const PrintedClock* printed = printedClockOf(rule);
    return {{"id", rule.id.text},
            {"kind", kindOf(rule)},
            {"parts", idsOf(partsOf(rule))},
            {"severity", rule.severity},
            {"printed", rule.printed},
            {"demands", demandOf(frame, rule)},
            {"clocks", clocksOf(rule)},
            {"tolerance_deg", printed ? Json(printed->tolerance.value) : Json(nullptr)},
            {"reason", rule.reason},
            {"last_look", rule.lastLook.text},
            {"twin", rule.twin ? Json(rule.twin->text) : Json(nullptr)},
            {"source", rule.source}};
}

Json windowAsJson(const Window& window) {
    const auto end = [](const std::optional<double>& value) { return value ? Json(*value) : Json(nullptr); };
    return Json::array({end(window.least), end(window.most)});
}

Json quantityOf(const Quantity& quantity) {
    return {{"id", quantity.id.text},
            {"name", quantity.name},
            {"part", quantity.part.empty() ? Json(nullptr) : Json(quantity.part.text)},
            {"unit", nameOf(quantity.unit)},
            {"fresh", windowAsJson(quantity.limits.fresh)},
            {"service", windowAsJson(quantity.limits.service)},
            {"method", quantity.limits.method.empty() ? Json(nullptr) : Json(quantity.limits.method)}};
}

Json measurementOf(const Measurement& measurement) {
    return {{"id", measurement.id.text},
            {"name", measurement.name},
            {"step", measurement.step.text},
            {"before", measurement.before ? Json(measurement.before->text) : Json(nullptr)},
            {"methods", arrayOf(measurement.methods, [](const Method& method) { return method.id; })},
            {"quantities", arrayOf(measurement.quantities, quantityOf)}};
}

/// As drawn: nothing measured.
Json chainsOf(const Frame& frame) {
    const std::map<QuantityId, DimensionValue> values = dimensionValues(frame, {});
    return arrayOf(frame.chains, [&](const Chain& chain) -> Json {
        const Prediction drawn = predict(chain, values);
        return {
            {"id", chain.id.text},
            {"name", chain.name},
            {"pushed_to", chain.pushedTo ? Json(nameOf(*chain.pushedTo)) : Json(nullptr)},
            {"links", arrayOf(chain.links,
                              [](const Term& link) { return (link.sign > 0 ? "+" : "-") + link.of.text; })},
            {"nominal_mm", drawn.drawingMm},
            {"rss_mm", drawn.rssMm},
            {"worst_mm", drawn.worstMm},
            {"window_mm", windowAsJson(windowOf(frame, chain.id))}};
    });
}

Json restOf(const Rest& rest) {
    return {{"up", nameOf(rest.up)}, {"face_z_mm", rest.faceMm}, {"clearance_mm", rest.clearanceMm}};
}

} // namespace

std::string frameAsJson(const Frame& frame) {
    const Json document{
        {"frame", frame.id.text},
        {"name", frame.name},
        {"size", frame.size},
        {"variant", frame.variant},
        {"sister", frame.sister ? Json(frame.sister->text) : Json(nullptr)},
        {"purpose", nameOf(frame.purpose)},
        {"source", {{"sheet", frame.sheet}, {"revision", frame.revision}}},
        {"rotation",
         {{"turns", frame.rotatesClockwise ? "clockwise" : "counter_clockwise"},
          {"seen_from", nameOf(frame.rotationSeenFrom)}}},
        {"parts", arrayOf(frame.parts, [&](const Part& part) { return partOf(frame, part); })},
        {"seats", arrayOf(frame.seats, seatAsJson)},
        {"rules", arrayOf(frame.rules, [&](const Rule& rule) { return ruleOf(frame, rule); })},
        {"steps", arrayOf(frame.steps, stepJson)},
        {"measurements", arrayOf(frame.measurements, measurementOf)},
        {"chains", chainsOf(frame)},
        {"fasteners", arrayOf(frame.fasteners, fastenerJson)},
        {"rests", arrayOf(frame.rests, restOf)}};
    return document.dump(2) + "\n";
}

std::string frameUsableAsJson(const Frame& frame) {
    const Json document{{"frame", frame.id.text},
                        {"usable", true},
                        {"purpose", nameOf(frame.purpose)},
                        {"counts",
                         {{"parts", frame.parts.size()},
                          {"seats", frame.seats.size()},
                          {"rules", frame.rules.size()},
                          {"steps", frame.steps.size()}}}};
    return document.dump(2) + "\n";
}

} // namespace gapwise
