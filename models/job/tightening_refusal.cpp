#include "models/job/part_refusal.h"
#include "models/job/record_refusal.h"

#include "models/frame/sets.h"
#include "models/procedure/person_name.h"
#include "models/procedure/tightening.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kMostTorqueNm = 10'000.0;
constexpr double kMostAngleDeg = 720.0;
constexpr double kMostShiftDeg = 360.0;
constexpr double kMostStackMm = 10.0;

bool isWithin(double value, double least, double most) {
    return std::isfinite(value) && value >= least && value <= most;
}

void addNumber(Errors& errors, std::string where, double value, double least, double most) {
    if (!isWithin(value, least, most))
        errors.push_back(refusal(std::move(where), fmt::format("{:g}", value),
                                 fmt::format("a number from {:g} to {:g}", least, most)));
}

/// Nobody tightens a screw that is not there.
void addPieces(const Frame& frame, const Build& build, const Fastener& fastener, Errors& errors) {
    for (const Part& part : frame.parts)
        if (part.fastener == fastener.id && piecesOf(frame, part.id).front() == part.id && !build.of(part.id))
            errors.push_back(refusal(fastener.id.text,
                                     fmt::format("{} is not in its seat", setNameOf(frame, part.id)),
                                     "screws that are in their seats"));
}

void addPlace(const Fastener& fastener, const Tightened& event, Errors& errors) {
    const std::string id = fastener.id.text;
    const std::size_t stages = stagesOf(fastener).size();
    if (event.stage >= stages)
        errors.push_back(
            refusal(id + "/stage", fmt::format("{}", event.stage), fmt::format("0 to {}", stages - 1)));
    if (event.group < 0 || event.group >= groupsOf(fastener))
        return errors.push_back(refusal(id + "/group", fmt::format("{}", event.group),
                                        fmt::format("0 to {}", groupsOf(fastener) - 1)));
    const std::vector<NextScrew> screws = screwsInOrder(fastener, event.group);
    if (std::ranges::find(screws, event.screw, &NextScrew::screw) == screws.end())
        errors.push_back(
            refusal(id + "/screw", fmt::format("{}", event.screw),
                    fmt::format("1 to {}", std::ranges::max(screws, {}, &NextScrew::screw).screw)));
}

void addTurn(const JobState& state, const Fastener& fastener, const Tightened& event, Errors& errors) {
    const std::optional<NextScrew> next = nextIn(fastener, event.group, state);
    const std::vector<Stage> stages = stagesOf(fastener);
    const auto named = [&](std::size_t stage, int screw) {
        return fmt::format("{}, screw {}", stages[stage].name, screw);
    };
    if (!next)
        errors.push_back(refusal(fastener.id.text, "it is at its last stage",
                                 "that it is loosened first, and everything that follows done again"));
    else if (next->stage != event.stage || next->screw != event.screw)
        errors.push_back(
            refusal(fastener.id.text, named(event.stage, event.screw),
                    fmt::format("what comes next in the pattern: {}", named(next->stage, next->screw))));
}

} // namespace

Errors refusalOfTightening(const Frame& frame, const JobState& state, const Tightened& event) {
    const Fastener* fastener = frame.fastener(event.fastener);
    if (!fastener || !fastener->plan)
        return {refusal(event.fastener.text, fastener ? "it has no torque" : "no such fastener",
                        fmt::format("a fastener of {} that has a torque", frame.id.text))};
    Errors errors;
    addPlace(*fastener, event, errors);
    addNumber(errors, event.fastener.text + "/torque_Nm", event.torqueNm, 0.0, kMostTorqueNm);
    if (event.angle)
        addNumber(errors, event.fastener.text + "/angle_deg", event.angle->value, 0.0, kMostAngleDeg);
    if (!errors.empty())
        return errors;
    addPieces(frame, state.build, *fastener, errors);
    addTurn(state, *fastener, event, errors);
    return errors;
}

Errors refusalOfLoosening(const Frame& frame, const JobState& state, const Loosened& event) {
    const Fastener* fastener = frame.fastener(event.fastener);
    if (!fastener)
        return {
            refusal(event.fastener.text, "no such fastener", fmt::format("a fastener of {}", frame.id.text))};
    const bool begun =
        std::ranges::find(state.tightened, event.fastener, &Tightened::fastener) != state.tightened.end();
    if (!begun && !noteOf(state.build, *fastener) && !state.build.done(fastener->step))
        return {refusal(event.fastener.text, "it was not tightened", "a fastener that was")};
    return {};
}

Errors refusalOfNutLine(const Frame& frame, const JobState& state, const NutLineRead& event) {
    const Fastener* fastener = frame.fastener(event.fastener);
    if (!fastener || !fastener->plan || !fastener->plan->nutLine)
        return {refusal(event.fastener.text, fastener ? "it has no line" : "no such fastener",
                        fmt::format("a nut of {} with a line", frame.id.text))};
    Errors errors;
    addNumber(errors, event.fastener.text + "/read_deg", event.read.value, -kMostShiftDeg, kMostShiftDeg);
    addNumber(errors, event.fastener.text + "/stack_new_minus_old_mm", event.stackNewMinusOldMm,
              -kMostStackMm, kMostStackMm);
    if (isBlank(event.by) && !state.person)
        errors.push_back(refusal(event.fastener.text + "/by", "no name", "the name of the person who reads"));
    if (!noteOf(state.build, *fastener) && state.demands == Demands::All)
        errors.push_back(refusal(event.fastener.text, "it is not at its final torque",
                                 "the line, read after the final torque"));
    return errors;
}

} // namespace gapwise
