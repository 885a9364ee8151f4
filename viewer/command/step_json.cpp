#include "viewer/command/step_json.h"

#include "models/frame/names.h"
#include "models/frame/notice.h"
#include "viewer/command/json_lists.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

Json orNull(const std::string& text) {
    return text.empty() ? Json(nullptr) : Json(text);
}

Json precedenceOf(const Precedence& before) {
    return {{"step", before.step.text},
            {"reason", before.reason},
            {"why", before.why},
            {"only_when", nameOf(before.when)}};
}

/// What a person does, uses and looks at.
void addCard(Json& document, const Step& step) {
    document["acts"] = step.acts;
    document["lubricants"] = arrayOf(step.lubricants, [](const LubricantPoint& point) {
        return Json{{"where", point.where}, {"use", point.use}, {"never", orNull(point.never)}};
    });
    document["tools"] = step.tools;
    document["consumables"] = arrayOf(step.consumables, [](const Consumable& each) {
        return Json{{"name", each.name}, {"quantity", each.quantity}};
    });
    document["witness"] = arrayOf(step.witness, [](const WitnessCheck& check) {
        return Json{{"look", check.look}, {"good", check.good}, {"bad", orNull(check.bad)}};
    });
    document["records"] = step.records;
    document["asks"] =
        arrayOf(step.asks, [](StepQuestion question) { return nameIn(kQuestionNames, question); });
}

Json runDownOf(const RunDown& runDown) {
    return {{"seat_Nm", runDown.seatNm},
            {"snug_Nm", runDown.snugNm},
            {"drag_most_Nm", runDown.dragMostNm},
            {"angle_deg", {runDown.leastAngle.value, runDown.mostAngle.value}},
            {"torque_factor", runDown.torqueFactor},
            {"stiffness_kN_mm", runDown.stiffnessKnPerMm},
            {"stem_diameter_mm", runDown.stemDiameterMm}};
}

Json nutLineOf(const NutLineLimits& limits) {
    return {{"agrees_deg", limits.agrees.value},
            {"small_deg", limits.small.value},
            {"stack", idsOf(limits.stack)}};
}

void addPlan(Json& document, const TorquePlan& plan) {
    document["thread"] = plan.thread;
    document["length_mm"] = plan.lengthMm > 0.0 ? Json(plan.lengthMm) : Json(nullptr);
    document["class"] = plan.propertyClass;
    document["torque_Nm"] = plan.torqueNm;
    document["lubrication"] = plan.lubrication;
    document["lubricated_value"] = plan.lubricatedValue;
    document["locking"] = nameOf(plan.locking);
    document["stages_percent"] = plan.stagesPercent;
    document["pattern"] = plan.pattern;
    document["check_pass"] = plan.checkPass;
    document["friction_thread"] = plan.frictionThread;
    document["friction_head"] = plan.frictionHead;
    document["head_diameter_mm"] = plan.headDiameterMm;
    document["groups"] = arrayOf(plan.groups, [](const ScrewGroup& group) {
        return Json{{"name", orNull(group.name)}, {"count", group.count}};
    });
    document["run_down"] = plan.runDown ? runDownOf(*plan.runDown) : Json(nullptr);
    document["nut_line"] = plan.nutLine ? nutLineOf(*plan.nutLine) : Json(nullptr);
    document["check"] = orNull(plan.check);
    document["source"] = plan.source;
}

Json cautionsAt(const Frame& frame, const Step& step) {
    Json cautions = Json::array();
    for (const Caution& caution : frame.cautions)
        if (std::ranges::find(caution.steps, step.id) != caution.steps.end())
            cautions.push_back({{"id", caution.id},
                                {"signal", nameIn(kSignalNames, caution.signal)},
                                {"words", caution.words},
                                {"source", caution.source}});
    return cautions;
}

Json measurementsAt(const Frame& frame, const Step& step) {
    Json measurements = Json::array();
    for (const Measurement& each : frame.measurements)
        if (each.step == step.id)
            measurements.push_back({{"id", each.id.text},
                                    {"name", each.name},
                                    {"where", each.where},
                                    {"instrument", orNull(each.instrument)}});
    return measurements;
}

} // namespace

Json stepJson(const Step& step) {
    Json document{
        {"id", step.id.text},
        {"title", step.title},
        {"after", arrayOf(step.after, precedenceOf)},
        {"attitudes", arrayOf(step.attitudes, [](StepAttitude attitude) { return nameOf(attitude); })},
        {"view", nameOf(step.view)},
        {"places", idsOf(step.places)},
        {"hides", idsOf(step.hides)},
        {"hold_point", step.holdPoint},
        {"only_when", nameOf(step.when)},
        {"may_skip", step.maySkip},
        {"holds_rotor", step.holdsRotor},
        {"closes_record", step.closesRecord},
        {"stands_for", idsOf(step.standsFor)}};
    addCard(document, step);
    return document;
}

Json fastenerJson(const Fastener& fastener) {
    Json document{{"id", fastener.id.text},
                  {"name", fastener.name},
                  {"size", fastener.size},
                  {"tightens", nameIn(kTurnNames, fastener.tightensClockwise)},
                  {"seen_from", nameOf(fastener.handSeenFrom)},
                  {"step", fastener.step.text},
                  {"parts", idsOf(fastener.parts)}};
    if (fastener.plan)
        addPlan(document, *fastener.plan);
    return document;
}

std::string stepAsJson(const Frame& frame, const Step& step) {
    Json fasteners = Json::array();
    for (const Fastener& fastener : frame.fasteners)
        if (fastener.step == step.id)
            fasteners.push_back(fastenerJson(fastener));
    const Json document{{"frame", frame.id.text},
                        {"step", stepJson(step)},
                        {"cautions", cautionsAt(frame, step)},
                        {"fasteners", std::move(fasteners)},
                        {"measurements", measurementsAt(frame, step)},
                        {"notice", orNull(std::string{noticeOf(frame)})},
                        {"rests_on", prevailLine(frame)}};
    return document.dump(2) + "\n";
}

} // namespace gapwise
