#include "models/build/names.h"
#include "models/frame/names.h"
#include "models/frame/notice.h"
#include "viewer/command/json_lists.h"
#include "viewer/command/measure_shown.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

template <class T, class Make>
Json orNull(const std::optional<T>& value, const Make& make) {
    return value ? Json(make(*value)) : Json(nullptr);
}

Json numberOrNull(const std::optional<double>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json textOrNull(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

Json windowJson(const Window& window) {
    return Json::array({numberOrNull(window.least), numberOrNull(window.most)});
}

Json flagJson(const Flag& flag) {
    return {{"kind", nameOf(flag.kind)}, {"words", flag.words}};
}

Json evaluatedJson(const Evaluated& read) {
    Json out{{"value", read.value},
             {"judged", read.judged},
             {"expanded_uncertainty", read.expanded},
             {"values", read.values},
             {"spread", read.spread}};
    if (read.ovality)
        out["ovality"] = *read.ovality;
    if (read.taper)
        out["taper"] = *read.taper;
    out["corrected_by"] = read.correctedBy;
    out["reckoned"] = read.reading == nullptr;
    out["method"] = textOrNull(read.method);
    const Reading none;
    const Reading& reading = read.reading ? *read.reading : none;
    out["instrument"] = textOrNull(reading.instrument);
    out["by"] = textOrNull(reading.by);
    out["on"] = textOrNull(reading.on);
    out["flags"] = arrayOf(read.flags, flagJson);
    return out;
}

Json predictedJson(const Predicted& predicted) {
    return {{"value", predicted.value},
            {"least", predicted.least},
            {"most", predicted.most},
            {"words", predicted.words}};
}

Json limitsJson(const QuantityResult& result) {
    const Limits& limits = result.quantity->limits;
    return {{"shown_against", windowJson(result.limit)}, {"fresh", windowJson(limits.fresh)},
            {"service", windowJson(limits.service)},     {"rule", nameIn(kLimitRuleNames, limits.rule)},
            {"method", textOrNull(limits.method)},       {"source", textOrNull(limits.source)}};
}

Json changeJson(const BeforeAndAfter& change) {
    return {{"difference", change.difference},
            {"significant", change.significant},
            {"compared", change.compared},
            {"outcome", nameOf(change.outcome)},
            {"words", change.words}};
}

Json fourPointJson(const FourPointResult& four) {
    Json out{{"seen_from", nameOf(four.seenFrom)},
             {"mean", four.mean},
             {"right", four.right},
             {"up", four.up},
             {"eccentricity", four.eccentricity},
             {"direction_deg", four.directionDeg},
             {"consistency", four.consistency},
             {"least", four.least}};
    if (four.parts) {
        out["sag"] = four.sag;
        out["casing_eccentricity"] = four.casing;
        out["rock"] = four.rock;
        out["left_when_rocked"] = four.leftWhenRocked;
    }
    out["words"] = four.words;
    return out;
}

Json unbalanceJson(const UnbalanceResult& unbalance) {
    Json out{{"compressor_plane", unbalance.compressor},
             {"turbine_plane", unbalance.turbine},
             {"permissible", unbalance.permissible}};
    out["compressor_share"] = unbalance.split ? Json(unbalance.compressorShare) : Json(nullptr);
    out["turbine_share"] = unbalance.split ? Json(unbalance.turbineShare) : Json(nullptr);
    return out;
}

Json quantityJson(const QuantityResult& result) {
    const Quantity& quantity = *result.quantity;
    Json out{{"measurement", result.measurement->id.text},
             {"quantity", quantity.id.text},
             {"name", quantity.name},
             {"part", textOrNull(quantity.part.text)},
             {"step", result.measurement->step.text},
             {"unit", nameOf(quantity.unit)},
             {"standing", nameOf(result.standing)},
             {"close", result.close},
             {"disagrees", result.disagrees}};
    out["after"] = orNull(result.after, evaluatedJson);
    out["before"] = orNull(result.before, evaluatedJson);
    out["earlier"] = arrayOf(result.earlier, evaluatedJson);
    out["predicted"] = orNull(result.predicted, predictedJson);
    out["limits"] = limitsJson(result);
    out["change"] = orNull(result.change, changeJson);
    if (result.fourPoint || result.fourPointBefore) {
        out["four_point"] = orNull(result.fourPoint, fourPointJson);
        out["four_point_before"] = orNull(result.fourPointBefore, fourPointJson);
    }
    if (result.unbalance)
        out["unbalance"] = unbalanceJson(*result.unbalance);
    if (result.hotGap)
        out["hot_gap_mm"] = *result.hotGap;
    out["words"] = result.words;
    return out;
}

Json linkJson(const LinkShare& link) {
    return {{"dimension", link.of.text},         {"sign", link.sign},         {"value_mm", link.valueMm},
            {"half_width_mm", link.halfWidthMm}, {"measured", link.measured}, {"share", link.share}};
}

Json chainJson(const Frame& frame, const Prediction& prediction) {
    const Chain* chain = frame.chain(prediction.chain);
    return {{"chain", prediction.chain.text},
            {"name", chain ? chain->name : ""},
            {"drawing_mm", prediction.drawingMm},
            {"value_mm", prediction.valueMm},
            {"worst_mm", prediction.worstMm},
            {"rss_mm", prediction.rssMm},
            {"standard_mm", prediction.standardMm},
            {"measured", prediction.measured},
            {"window_mm", windowJson(windowOf(frame, prediction.chain))},
            {"links", arrayOf(prediction.links, linkJson)}};
}

Json drawnJson(const DrawnChain& drawn) {
    const ChainTrials& trials = drawn.trials;
    return {{"chain", drawn.chain.text},
            {"trials", trials.trials},
            {"seed", drawn.seed},
            {"mean_mm", trials.meanMm},
            {"standard_mm", trials.standardMm},
            {"least95_mm", trials.least95Mm},
            {"most95_mm", trials.most95Mm},
            {"below", trials.below},
            {"above", trials.above},
            {"histogram", arrayOf(trials.histogram, [](const Bar& bar) {
                 return Json{{"least_mm", bar.leastMm}, {"share", bar.share}};
             })}};
}

Json playJson(const PlayResult& play) {
    return {{"compressor_band_mm", windowJson(play.compressorBand)},
            {"turbine_band_mm", windowJson(play.turbineBand)},
            {"compressor_parts_mm", play.compressorParts},
            {"turbine_parts_mm", play.turbineParts},
            {"agree", play.agree},
            {"words", play.words}};
}

Json evidenceJson(const GapEvidence& evidence) {
    return {{"chain", evidence.chain.text},
            {"predicted_mm", evidence.predictedMm},
            {"measured_mm", evidence.measuredMm},
            {"expanded_uncertainty_mm", evidence.expandedMm},
            {"moved", evidence.moved}};
}

Json causeJson(const Cause& cause) {
    return {{"change", cause.change->id},
            {"name", cause.name},
            {"kind", nameIn(kChangeKindNames, cause.change->kind)},
            {"part", cause.change->part.text},
            {"length_mm", cause.lengthMm},
            {"standard_mm", cause.standardMm},
            {"misfit", cause.misfit},
            {"likelihood", cause.likelihood},
            {"explains", idsOf(cause.explains)},
            {"leaves", idsOf(cause.leaves)},
            {"remedy", textOrNull(cause.change->remedy)},
            {"why", cause.why}};
}

Json diagnosisJson(const Diagnosis& diagnosis) {
    return {{"summary", diagnosis.summary},
            {"anything_moved", diagnosis.anythingMoved},
            {"explained", diagnosis.explained},
            {"unexplained", diagnosis.unexplained},
            {"evidence", arrayOf(diagnosis.evidence, evidenceJson)},
            {"causes", arrayOf(diagnosis.causes, causeJson)},
            {"settles", arrayOf(diagnosis.settles, [](const Settling& settling) {
                 return Json{{"quantity", settling.quantity.text},
                             {"method", settling.method},
                             {"words", settling.words}};
             })}};
}

Json gradeJson(const GradeOption& option) {
    return {{"grade_mm", option.gradeMm},
            {"all_within", option.allWithin},
            {"nut_shift_deg", option.nutShiftDeg},
            {"gaps", arrayOf(option.gaps, [](const GapThen& gap) {
                 return Json{{"chain", gap.chain.text},
                             {"now_mm", gap.nowMm},
                             {"then_mm", gap.thenMm},
                             {"window_mm", windowJson(gap.window)},
                             {"within", gap.within}};
             })}};
}

Json selectionJson(const Selection& selection) {
    Json out{{"dimension", selection.selector->dimension.text},
             {"sets", selection.selector->sets.text},
             {"part", selection.selector->part.text},
             {"now_mm", selection.nowMm},
             {"target_mm", selection.targetMm},
             {"required_mm", selection.requiredMm}};
    out["proposed_mm"] =
        selection.proposed ? Json(selection.grades[*selection.proposed].gradeMm) : Json(nullptr);
    out["otherwise"] = textOrNull(selection.selector->otherwise);
    out["grades"] = arrayOf(selection.grades, gradeJson);
    return out;
}

Json selectionsJson(const MeasureShown& shown) {
    Json list = Json::array();
    for (const Selection& selection : shown.report.selections)
        if (!shown.onlySelector || selection.selector->dimension == *shown.onlySelector)
            list.push_back(selectionJson(selection));
    return list;
}

Json decisionJson(const PartDecision& decision) {
    return {{"condition", nameIn(kConditionWords, decision.condition)},
            {"decision", nameIn(kFateNames, decision.fate)},
            {"by", textOrNull(decision.by)},
            {"reason", textOrNull(decision.reason)},
            {"cause", textOrNull(decision.cause)},
            {"concession", textOrNull(decision.concession)}};
}

Json partJson(const PartVerdict& verdict) {
    return {{"part", verdict.part.text},
            {"standing", nameOf(verdict.worst)},
            {"because", idsOf(verdict.because)},
            {"open", verdict.open},
            {"decision", orNull(verdict.decision, decisionJson)},
            {"words", verdict.words}};
}

Json countsJson(const MeasureReport& report) {
    Json counts = Json::object();
    for (const Standing standing :
         {Standing::Within, Standing::Between, Standing::Beyond, Standing::NotProven, Standing::NotJudged,
          Standing::NoLimit, Standing::NotRead})
        counts[std::string{nameOf(standing)}] =
            std::ranges::count(report.quantities, standing, &QuantityResult::standing);
    return counts;
}

Json effectsJson(const EffectTable& effects) {
    return {{"chains", arrayOf(effects.chains, [](const Chain* chain) { return chain->id.text; })},
            {"changes", arrayOf(effects.rows, [](const EffectRow& row) {
                 return Json{
                     {"change", row.change->id}, {"name", row.change->name}, {"effects", row.effects}};
             })}};
}

void addWhole(Json& out, const MeasureShown& shown) {
    const MeasureReport& report = shown.report;
    out["counts"] = countsJson(report);
    out["quantities"] = arrayOf(report.quantities, quantityJson);
    out["chains"] =
        arrayOf(report.chains, [&](const Prediction& each) { return chainJson(*shown.frame, each); });
    out["play"] = orNull(report.play, playJson);
    out["play_before"] = orNull(report.playBefore, playJson);
    out["parts"] = arrayOf(report.parts, partJson);
    out["diagnosis"] = diagnosisJson(report.diagnosis);
    out["selections"] = selectionsJson(shown);
}

void addPartial(Json& out, const MeasureShown& shown) {
    if (shown.onlyChain) {
        out["chains"] = Json::array();
        for (const Prediction& prediction : shown.report.chains)
            if (prediction.chain == *shown.onlyChain)
                out["chains"].push_back(chainJson(*shown.frame, prediction));
    }
    if (shown.effects)
        out["effects"] = effectsJson(*shown.effects);
    if (shown.onlySelector)
        out["selections"] = selectionsJson(shown);
}

} // namespace

std::string measureAsJson(const MeasureShown& shown) {
    Json out{
        {"frame", shown.frame->id.text}, {"bench", shown.bench->name}, {"holds", !isBroken(shown.report)}};
    if (!noticeOf(*shown.frame).empty())
        out["notice"] = noticeOf(*shown.frame);
    if (shown.whole())
        addWhole(out, shown);
    else
        addPartial(out, shown);
    if (!shown.drawn.empty())
        out["trials"] = arrayOf(shown.drawn, drawnJson);
    return out.dump(2) + "\n";
}

} // namespace gapwise
