#include "models/procedure/hold_point.h"
#include "models/procedure/kit.h"
#include "models/procedure/measure_findings.h"
#include "models/procedure/nut_findings.h"
#include "models/procedure/order_misses.h"
#include "models/procedure/step_status.h"
#include "models/procedure/torque_findings.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Findings = std::vector<ProcedureFinding>;

const Step* stepThatAsks(const Frame& frame, StepQuestion question) {
    const auto asks = [&](const Step& step) {
        return std::ranges::find(step.asks, question) != step.asks.end();
    };
    const auto found = std::ranges::find_if(frame.steps, asks);
    return found == frame.steps.end() ? nullptr : &*found;
}

/// The answer to a question that one step of the frame asks.
const Answered* answerTo(const Frame& frame, const JobState& state, StepQuestion question) {
    const Step* step = stepThatAsks(frame, question);
    return step ? state.answer(step->id, nameOf(question)) : nullptr;
}

StepId stepThatPlaces(const Frame& frame, const PartId& part) {
    for (const Step& step : frame.steps)
        if (std::ranges::find(step.places, part) != step.places.end())
            return step.id;
    return {};
}

void addLooseRotor(const Frame& frame, const JobState& state, Findings& findings) {
    if (state.turnedUnretained)
        findings.push_back({"loose-rotor", 4, stepThatPlaces(frame, frame.rotor),
                            fmt::format("The piece was turned while nothing held {}: it may have left its "
                                        "place and nicked a ring or a blade. Take it out, look at the "
                                        "rings, put it in again.",
                                        frame.rotor.text)});
}

void addCount(const Frame& frame, const JobState& state, Findings& findings) {
    const Answered* in = answerTo(frame, state, StepQuestion::CountIn);
    const Answered* out = answerTo(frame, state, StepQuestion::CountOut);
    if (in && out && in->amount && out->amount && *in->amount != *out->amount)
        findings.push_back({"count", 4, out->step,
                            fmt::format("{:g} blanks, rags and tools were counted in and {:g} counted out: "
                                        "what is missing may lie in the piece and destroys the rotor. Find "
                                        "it, then count again.",
                                        *in->amount, *out->amount)});
}

void addVariant(const Frame& frame, const JobState& state, Findings& findings) {
    const Answered* said = answerTo(frame, state, StepQuestion::Variant);
    if (!said || said->answer == frame.variant)
        return;
    const std::string other = frame.sister ? fmt::format("open {} if that is what it is", frame.sister->text)
                                           : "this size has no frame of another variant here";
    findings.push_back({"variant", 4, said->step,
                        fmt::format("The bearing in the hand is {}, {} is for {}: every rule of its rings "
                                    "and bearings is another one. Stop; {}.",
                                    said->answer, frame.id.text, frame.variant, other)});
}

void addBlock(const Frame& frame, const JobState& state, Findings& findings) {
    const Answered* block = answerTo(frame, state, StepQuestion::BlockHeight);
    if (!block || !block->amount || !state.build.attitude || state.build.attitude->up == EndUp::Level)
        return;
    const Side up = state.build.attitude->up == EndUp::Turbine ? Side::Turbine : Side::Compressor;
    const std::optional<double> least = leastBlockMm(frame, up);
    if (least && *block->amount < *least)
        findings.push_back({"block", 3, block->step,
                            fmt::format("The block is {:g} mm high and has to be {:.1f} mm with the {} end "
                                        "up: the lowest part would stand on the bench. Take a higher one.",
                                        *block->amount, *least, nameOf(up))});
}

bool hasOrderRule(const Frame& frame, const StepId& step) {
    return std::ranges::any_of(frame.rules, [&](const Rule& rule) {
        const auto* order = std::get_if<OrderRule>(&rule.demand);
        return order && order->step == step;
    });
}

/// What was cleaned or written down late can still be made good; what was closed cannot.
int severityOf(const Precedence& need) {
    return need.reason == "CLN" || need.reason == "REC" ? 2 : 3;
}

void addOrder(const Frame& frame, const JobState& state, Findings& findings) {
    for (const OrderMiss& miss : orderMisses(StepGraph{frame}, state)) {
        if (hasOrderRule(frame, miss.step->id))
            continue;
        const std::string id = "order-" + miss.step->id.text;
        if (findings.empty() || findings.back().id != id)
            findings.push_back({id, severityOf(*miss.need), miss.step->id, ""});
        ProcedureFinding& finding = findings.back();
        finding.severity = std::max(finding.severity, severityOf(*miss.need));
        finding.words += (finding.words.empty() ? "" : "; ") + wordsOf(miss);
    }
}

} // namespace

std::vector<ProcedureFinding> procedureFindings(const Frame& frame, const JobState& state) {
    Findings findings;
    addLooseRotor(frame, state, findings);
    addVariant(frame, state, findings);
    addCount(frame, state, findings);
    addBlock(frame, state, findings);
    for (const Fastener& fastener : frame.fasteners) {
        addTorqueFindings(frame, state, fastener, findings);
        addNutFindings(frame, state, fastener, findings);
    }
    addMeasureFindings(frame, state, findings);
    addOrder(frame, state, findings);
    return findings;
}

bool rotorIsLoose(const Frame& frame, const Build& build) {
    const bool held = std::ranges::any_of(
        frame.steps, [&](const Step& step) { return step.holdsRotor && build.done(step.id); });
    const bool says = std::ranges::any_of(frame.steps, &Step::holdsRotor);
    return says && !held && build.in(seatOf(frame.rotor)) != nullptr;
}

std::optional<ProcedureFinding> findingBeforeTurning(const Frame& frame, const JobState& state) {
    if (!rotorIsLoose(frame, state.build))
        return std::nullopt;
    std::string how;
    for (const Step& step : frame.steps)
        if (step.holdsRotor)
            how += fmt::format("{}{} ({})", how.empty() ? "" : " or ", step.id.text, step.title);
    return ProcedureFinding{
        "loose-rotor", 4, stepThatPlaces(frame, frame.rotor),
        fmt::format("Nothing holds {}: turned, lifted or tilted, it falls out toward the turbine. First: {}.",
                    frame.rotor.text, how.empty() ? "retain it" : how)};
}

} // namespace gapwise
