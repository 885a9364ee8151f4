#include "geometry/datum/words.h"
#include "models/frame/notice.h"
#include "viewer/command/job_standing.h"
#include "viewer/command/json_lists.h"

#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

std::string_view nameOf(StepStanding standing) {
    switch (standing) {
    case StepStanding::Done: return "done";
    case StepStanding::Skipped: return "skipped";
    case StepStanding::NotNeeded: return "not_needed";
    case StepStanding::Possible: return "possible";
    case StepStanding::Blocked: break;
    }
    return "blocked";
}

Json stepsOf(const JobStanding& standing) {
    Json steps = Json::array();
    for (std::size_t i = 0; i < standing.statuses.size(); ++i) {
        const StepStatus& status = standing.statuses[i];
        steps.push_back({{"step", standing.job.frame.steps[i].id.text},
                         {"title", standing.job.frame.steps[i].title},
                         {"standing", nameOf(status.standing)},
                         {"waits_for", arrayOf(status.waitsFor,
                                               [](const Precedence* need) {
                                                   return Json{{"step", need->step.text},
                                                               {"reason", need->reason},
                                                               {"why", need->why}};
                                               })},
                         {"reopened_by", status.reopenedBy ? Json(status.reopenedBy->text) : Json(nullptr)}});
    }
    return steps;
}

Json lookJson(const LookLeft& look) {
    return {{"seat", look.seat.text},
            {"part", look.part.text},
            {"hidden_by", look.hiddenBy.text},
            {"steps_left", look.stepsLeft},
            {"finished", look.finished}};
}

Json heldJson(const HeldBy& held) {
    return {{"finding", held.finding},
            {"severity", held.severity},
            {"words", held.words},
            {"may_override", held.mayOverride},
            {"needs_inspector", held.needsInspector}};
}

Json nextHoldPointJson(const JobStanding& standing) {
    const auto next = nextHoldPoint(standing.graph, standing.state);
    if (!next)
        return nullptr;
    return {{"step", next->text},
            {"held_by", arrayOf(heldBy(standing.job.frame, standing.state, standing.checked), heldJson)}};
}

Json findingJson(const ProcedureFinding& finding) {
    return {{"id", finding.id},
            {"severity", finding.severity},
            {"step", finding.step.text},
            {"words", finding.words}};
}

Json tighteningJson(const JobStanding& standing, const Fastener& fastener) {
    const Tightening tightening = tighteningOf(fastener, standing.state);
    Json next = nullptr;
    if (tightening.next)
        next = {{"stage", stagesOf(fastener)[tightening.next->stage].name},
                {"group", tightening.next->group},
                {"screw", tightening.next->screw}};
    return {
        {"fastener", fastener.id.text}, {"done", tightening.done}, {"all", tightening.all}, {"next", next}};
}

Json attitudeJson(const JobStanding& standing) {
    const std::optional<Attitude>& attitude = standing.state.build.attitude;
    if (!attitude)
        return nullptr;
    return {{"up", nameOf(attitude->up)},
            {"drain_deg", attitude->drain.value},
            {"seen_from", nameOf(attitude->seenFrom)},
            {"drain_confirmed", standing.state.attitudeConfirmed}};
}

} // namespace

std::string jobAsJson(const JobStanding& standing) {
    const Json document{
        {"frame", standing.job.frame.id.text},
        {"holds", standing.holds()},
        {"attitude", attitudeJson(standing)},
        {"steps", stepsOf(standing)},
        {"possible", idsOf(possibleNow(standing.graph, standing.state))},
        {"last_looks", arrayOf(looksLeft(standing.graph, standing.state, standing.checked), lookJson)},
        {"next_hold_point", nextHoldPointJson(standing)},
        {"findings", arrayOf(standing.findings, findingJson)},
        {"tightening", arrayOf(standing.job.frame.fasteners,
                               [&](const Fastener& fastener) { return tighteningJson(standing, fastener); })},
        {"notice", noticeOf(standing.job.frame)}};
    return document.dump(2) + "\n";
}

std::string slipAsJson(const JobStanding& standing, const HandOver& slip) {
    const Json document{{"frame", standing.job.frame.id.text},
                        {"holds", standing.holds()},
                        {"lies", slip.attitude},
                        {"person", slip.person},
                        {"last_acts", slip.lastActs},
                        {"beware", slip.beware},
                        {"apart", slip.apart},
                        {"possible", slip.possible},
                        {"next_hold_point", slip.nextHoldPoint},
                        {"notice", noticeOf(standing.job.frame)}};
    return document.dump(2) + "\n";
}

} // namespace gapwise
