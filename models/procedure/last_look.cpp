#include "models/procedure/last_look.h"

#include "models/check/carrier.h"
#include "models/procedure/standings.h"

#include <algorithm>

namespace gapwise {

namespace {

/// Steps that are open and that `step` needs, directly or through open ones.
std::size_t openBefore(const StepGraph& graph, const std::vector<StepStanding>& standings, const Build& build,
                       std::size_t step) {
    std::vector<bool> seen(graph.size(), false);
    std::vector<std::size_t> open{step};
    std::size_t count = 0;
    while (!open.empty()) {
        const std::size_t at = open.back();
        open.pop_back();
        for (const StepGraph::Edge& need : graph.needsOf(at)) {
            if (seen[need.step] || !applies(need.precedence->when, build) || isSettled(standings[need.step]))
                continue;
            seen[need.step] = true;
            open.push_back(need.step);
            ++count;
        }
    }
    return count;
}

/// Nobody sees how a fastener was turned or in which order the work was done.
bool isSeen(const Rule& rule) {
    return !std::holds_alternative<HandRule>(rule.demand) && !std::holds_alternative<OrderRule>(rule.demand);
}

/// A rule of the seating that ends with this step or before it.
bool endsWith(const Frame& frame, const Rule& rule, const SeatId& seat, std::size_t hiding) {
    const std::vector<PartId> parts = partsOf(rule);
    return isSeen(rule) && frame.stepIndex(rule.lastLook).value_or(0) <= hiding &&
           std::ranges::find(parts, partMeantFor(seat)) != parts.end();
}

bool isFinished(const Frame& frame, const JobState& state, const Checked& checked, const LookLeft& look) {
    const std::size_t hiding = frame.stepIndex(look.hiddenBy).value_or(0);
    bool anyRule = false;
    for (const Verdict& verdict : checked.verdicts) {
        if (!endsWith(frame, *verdict.rule, look.seat, hiding))
            continue;
        anyRule = true;
        if (verdict.state != RuleState::Holds)
            return false;
    }
    const Seating* seating = state.build.in(look.seat);
    if (!seating)
        return isFilled(frame, state.build, look.seat);
    return !anyRule || seating->confirmed.has_value();
}

LookLeft lookAt(const Frame& frame, const JobState& state, const Checked& checked, const SeatId& seat,
                const StepId& hiddenBy) {
    LookLeft look{.seat = seat, .part = occupantOf(state.build, partMeantFor(seat)), .hiddenBy = hiddenBy};
    look.finished = isFinished(frame, state, checked, look);
    return look;
}

/// Of several steps that hide a seat the first one ends the look.
bool endsLookAt(const Frame& frame, const Step& step, const SeatId& seat) {
    return hidingStepOf(frame, seat) == &step;
}

} // namespace

std::vector<LookLeft> looksLeft(const StepGraph& graph, const JobState& state, const Checked& checked) {
    const Frame& frame = graph.frame();
    const std::vector<StepStanding> standings = standingsOf(graph, state);
    std::vector<LookLeft> looks;
    for (std::size_t i = 0; i < graph.size(); ++i) {
        const Step& step = frame.steps[i];
        if (step.hides.empty() || isSettled(standings[i]))
            continue;
        const std::size_t left = openBefore(graph, standings, state.build, i);
        for (const SeatId& seat : step.hides) {
            if (!endsLookAt(frame, step, seat))
                continue;
            looks.push_back(lookAt(frame, state, checked, seat, step.id));
            looks.back().stepsLeft = left;
        }
    }
    std::ranges::stable_sort(looks, {}, &LookLeft::stepsLeft);
    return looks;
}

std::vector<LookLeft> hiddenUnfinished(const StepGraph& graph, const JobState& state, const Checked& checked,
                                       const StepId& step) {
    const auto index = graph.indexOf(step);
    std::vector<LookLeft> looks;
    if (!index || state.build.done(step))
        return looks;
    const std::size_t left = openBefore(graph, standingsOf(graph, state), state.build, *index);
    for (const SeatId& seat : graph.frame().steps[*index].hides) {
        LookLeft look = lookAt(graph.frame(), state, checked, seat, step);
        look.stepsLeft = left;
        if (endsLookAt(graph.frame(), graph.frame().steps[*index], seat) && !look.finished)
            looks.push_back(std::move(look));
    }
    return looks;
}

} // namespace gapwise
