#include "models/procedure/torque_findings.h"

#include "models/procedure/step_status.h"
#include "models/procedure/tightening.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// A wrench that is set right clicks this near to its torque (common practice, no source).
constexpr double kWrenchShare = 0.06;

using Findings = std::vector<ProcedureFinding>;

std::string idOf(const char* what, const Fastener& fastener) {
    return fmt::format("{}-{}", what, fastener.id.text);
}

bool hasHandRule(const Frame& frame, const Fastener& fastener) {
    return std::ranges::any_of(frame.rules, [&](const Rule& rule) {
        const auto* hand = std::get_if<HandRule>(&rule.demand);
        return hand && hand->fastener == fastener.id;
    });
}

bool isTurnedAs(bool clockwise, Side seenFrom, bool planned, Side plannedFrom) {
    return (clockwise == planned) == (seenFrom == plannedFrom);
}

/// Turned the wrong way at any stage; the note at the end is a rule's where the frame has one.
void addHand(const Frame& frame, const JobState& state, const Fastener& fastener, Findings& findings) {
    const std::vector<Stage> stages = stagesOf(fastener);
    const TorqueNote* note = noteOf(state.build, fastener);
    if (note && hasHandRule(frame, fastener))
        return;
    bool wrong =
        note && note->clockwise && note->seenFrom &&
        !isTurnedAs(*note->clockwise, *note->seenFrom, fastener.tightensClockwise, fastener.handSeenFrom);
    for (const Tightened& entry : state.tightened)
        if (entry.fastener == fastener.id && entry.stage < stages.size())
            wrong |= !isTurnedAs(entry.clockwise, entry.seenFrom, stages[entry.stage].clockwise,
                                 fastener.handSeenFrom);
    if (wrong)
        findings.push_back(
            {idOf("hand", fastener), 4, fastener.step,
             fmt::format("{} was turned the wrong way: it tightens {}, seen from the {} side. Turned the "
                         "other way it was slackened, or its thread is spoiled. Loosen it, look at the "
                         "thread, tighten it again.",
                         fastener.name, fastener.tightensClockwise ? "clockwise" : "counter-clockwise",
                         nameOf(fastener.handSeenFrom))});
}

void addTorque(const JobState& state, const Fastener& fastener, Findings& findings) {
    const TorqueNote* note = noteOf(state.build, fastener);
    if (!note || !note->torqueNm || !fastener.plan)
        return;
    const double planned = fastener.plan->torqueNm;
    if (std::abs(*note->torqueNm - planned) > kWrenchShare * planned)
        findings.push_back({idOf("torque", fastener), 3, fastener.step,
                            fmt::format("{} was tightened to {:g} N·m, its plan says {:g} N·m. Loosen it "
                                        "and tighten it again by its stages.",
                                        fastener.name, *note->torqueNm, planned)});
}

void addDrag(const Frame& frame, const JobState& state, const Fastener& fastener, Findings& findings) {
    if (!fastener.plan || !fastener.plan->runDown)
        return;
    for (const Step& step : frame.steps) {
        const Answered* drag = state.answer(step.id, nameOf(StepQuestion::DragTorque));
        if (drag && drag->amount && *drag->amount > fastener.plan->runDown->dragMostNm)
            findings.push_back(
                {"drag", 3, step.id,
                 fmt::format("{} needs {:g} N·m before it seats, at most {:g} N·m is right: "
                             "the thread picks up. Take it off, look at both threads.",
                             fastener.name, *drag->amount, fastener.plan->runDown->dragMostNm)});
    }
}

} // namespace

void addTorqueFindings(const Frame& frame, const JobState& state, const Fastener& fastener,
                       std::vector<ProcedureFinding>& findings) {
    addHand(frame, state, fastener, findings);
    addTorque(state, fastener, findings);
    addDrag(frame, state, fastener, findings);
}

} // namespace gapwise
