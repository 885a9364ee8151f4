#include "models/frame/notice.h"
#include "viewer/command/torque_show.h"

#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

Json torqueJson(double torqueNm, TorqueUnit unit) {
    return {{"torque_Nm", torqueNm}, {"value", fromNewtonMetres(torqueNm, unit)}, {"unit", nameOf(unit)}};
}

Json stagesJson(const TorqueShown& shown) {
    Json stages = Json::array();
    for (std::size_t i = 0; i < shown.stages.size(); ++i) {
        const Stage& stage = shown.stages[i];
        Json entry{{"name", stage.name}, {"clockwise", stage.clockwise}, {"order", stage.order}};
        if (stage.torqueNm > 0.0) {
            entry["target"] = torqueJson(stage.torqueNm, shown.unit);
            entry["setting"] = torqueJson(shown.wrench[i].settingNm, shown.unit);
            entry["uncorrected"] = torqueJson(shown.wrench[i].uncorrectedNm, shown.unit);
        }
        if (shown.wrench[i].use)
            entry["deviation_Nm"] = shown.wrench[i].use->deviationNm;
        stages.push_back(entry);
    }
    return stages;
}

Json flangesJson(const TorqueShown& shown) {
    Json flanges = Json::array();
    for (const FlangeGroup& group : shown.flanges) {
        Json screws = Json::array();
        for (const FlangeScrew& screw : group.screws) {
            Json entry{{"number", screw.number}};
            if (group.drawn) {
                entry["seat"] = screw.seat.text;
                entry["radius_mm"] = screw.radiusMm;
                entry["clock_deg"] = screw.at.value;
                if (shown.lies)
                    entry["seen_deg"] = shown.facing.seen(screw).value;
            }
            screws.push_back(entry);
        }
        flanges.push_back({{"name", group.name}, {"drawn", group.drawn}, {"screws", screws}});
    }
    return flanges;
}

Json handJson(const TorqueShown& shown) {
    Json hand{{"thread", nameOf(shown.turn.thread.hand)},
              {"seen_from", nameOf(shown.fastener.handSeenFrom)},
              {"tightens_as_faced", keyOf(shown.turn.asFaced)},
              {"words", shown.turn.words}};
    if (shown.lies) {
        hand["stands_at"] = nameOf(shown.turn.stands);
        hand["tightens_as_standing"] = keyOf(shown.turn.asStanding);
    }
    if (shown.turn.fitsRotation)
        hand["fits_rotation"] = *shown.turn.fitsRotation;
    return hand;
}

Json valueJson(const TorquePlan& plan) {
    return {{"thread", plan.thread},
            {"class", plan.propertyClass},
            {"length_mm", plan.lengthMm},
            {"lubrication", plan.lubrication},
            {"lubricated_value", plan.lubricatedValue},
            {"locking", wordsOf(plan.locking)},
            {"check", plan.check},
            {"source", plan.source}};
}

Json preloadJson(const PreloadFacts& facts) {
    return {{"force_kN", facts.forceKn},
            {"shares",
             {{"pitch_Nm", facts.shares.pitchNm},
              {"thread_Nm", facts.shares.threadNm},
              {"head_Nm", facts.shares.headNm}}},
            {"vdi_torque_Nm", facts.vdiTorqueNm},
            {"vdi_preload_at_90_percent_yield_kN", facts.vdiMostKn},
            {"stress_MPa", facts.stressMpa},
            {"proof_load_kN", facts.proofLoadKn},
            {"proof_load_use", facts.proofUse}};
}

Json angleJson(const AngleFacts& facts) {
    return {{"expected_deg", facts.expected.value},
            {"least_deg", facts.window.least.value},
            {"most_deg", facts.window.most.value},
            {"spring_force_kN", facts.springForceKn},
            {"stem_stress_MPa", facts.stemStressMpa}};
}

} // namespace

std::string torqueShownAsJson(const TorqueShown& shown) {
    const TorquePlan& plan = *shown.fastener.plan;
    Json document{{"frame", shown.frame.id.text},     {"fastener", shown.fastener.id.text},
                  {"name", shown.fastener.name},      {"size", shown.fastener.size},
                  {"step", shown.fastener.step.text}, {"torque", torqueJson(plan.torqueNm, shown.unit)},
                  {"value", valueJson(plan)},         {"stages", stagesJson(shown)},
                  {"hand", handJson(shown)},          {"flanges", flangesJson(shown)}};
    if (const std::optional<PreloadFacts> preload = preloadFactsOf(plan))
        document["preload"] = preloadJson(*preload);
    if (const std::optional<AngleFacts> angle = angleFactsOf(plan))
        document["angle"] = angleJson(*angle);
    const std::string notice{noticeOf(shown.frame)};
    document["notice"] = notice.empty() ? Json{} : Json{notice};
    return document.dump(2) + "\n";
}

} // namespace gapwise
