#include "models/procedure/hand_over.h"

#include "geometry/datum/words.h"
#include "models/check/carrier.h"
#include "models/procedure/hold_point.h"
#include "models/procedure/last_look.h"
#include "models/procedure/step_status.h"
#include "models/procedure/tightening.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace gapwise {

namespace {

constexpr std::size_t kLastActs = 3;
constexpr int kGrave = 3;

std::string stepWords(const Frame& frame, const StepId& id) {
    const Step* step = frame.step(id);
    return step ? fmt::format("{} {}", id.text, step->title) : id.text;
}

std::string attitudeWords(const JobState& state) {
    if (!state.build.attitude)
        return "nobody said how the piece lies";
    const Attitude& attitude = *state.build.attitude;
    return fmt::format("{}, {}; {}", describe(attitude), benchPhrase(attitude.drain, attitude.up),
                       state.attitudeConfirmed ? "confirmed" : "NOT confirmed since it was turned");
}

std::vector<std::string> lastActsOf(const Frame& frame, const Log& log) {
    std::vector<std::string> acts;
    const std::vector<const Event*> standing = standingEvents(log);
    for (auto event = standing.rbegin(); event != standing.rend() && acts.size() < kLastActs; ++event)
        if (!std::holds_alternative<PersonCame>(**event))
            acts.push_back(wordsOf(frame, **event));
    return acts;
}

void addTightening(const Frame& frame, const JobState& state, std::vector<std::string>& beware) {
    for (const Fastener& fastener : frame.fasteners) {
        const Tightening tightening = tighteningOf(fastener, state);
        if (tightening.done == 0 || !tightening.next)
            continue;
        const Stage stage = stagesOf(fastener)[tightening.next->stage];
        beware.push_back(fmt::format("{} {} is half tightened: {} of {}, next {}, screw {}", fastener.id.text,
                                     fastener.name, tightening.done, tightening.all, stage.name,
                                     tightening.next->screw));
    }
}

/// Only those that end with the next step: the others come of themselves.
void addLooks(const StepGraph& graph, const JobState& state, const Checked& checked,
              std::vector<std::string>& beware) {
    for (const LookLeft& look : looksLeft(graph, state, checked))
        if (look.stepsLeft == 0 && !look.finished)
            beware.push_back(fmt::format("last look at {} ends with {}: it is not finished", look.part.text,
                                         stepWords(graph.frame(), look.hiddenBy)));
}

std::vector<std::string> bewareOf(const StepGraph& graph, const JobState& state, const Checked& checked) {
    const Frame& frame = graph.frame();
    std::vector<std::string> beware;
    if (const auto loose = findingBeforeTurning(frame, state))
        beware.push_back(loose->words);
    addTightening(frame, state, beware);
    addLooks(graph, state, checked, beware);
    for (const HeldBy& held : heldBy(frame, state, checked))
        beware.push_back(fmt::format("{} (severity {}): {}", held.finding, held.severity, held.words));
    for (const auto& [step, by] : state.reopened)
        beware.push_back(
            step == by ? fmt::format("{} is open again", stepWords(frame, step))
                       : fmt::format("{} is open again, because of {}", stepWords(frame, step), by.text));
    return beware;
}

/// The part that carries this one in the end, through all that lies on the bench; the housing where it is in.
PartId rootOf(const Frame& frame, const Build& build, PartId part) {
    for (std::size_t links = 0; links <= frame.seats.size(); ++links) {
        const Seating* seating = build.of(part);
        const Carrier* carrier = seating ? currentCarrierOf(frame, build, seating->seat) : nullptr;
        if (!carrier || part == frame.housing)
            break;
        part = carrier->part;
    }
    return part;
}

std::vector<std::string> apartOf(const Frame& frame, const Build& build) {
    std::map<PartId, std::string> groups;
    for (const Seating& seating : build.seatings) {
        const PartId root = rootOf(frame, build, seating.part);
        if (root == frame.housing || root == seating.part)
            continue;
        std::string& parts = groups[root];
        parts += (parts.empty() ? "" : ", ") + seating.part.text;
    }
    std::vector<std::string> apart;
    for (const auto& [root, parts] : groups)
        apart.push_back(fmt::format("{} with {}", root.text, parts));
    return apart;
}

bool isDoingOf(const Event& event, const StepId& step) {
    const auto* done = std::get_if<StepDone>(&event);
    const auto* passed = std::get_if<HoldPointPassed>(&event);
    return (done && done->step == step) || (passed && passed->step == step);
}

} // namespace

HandOver handOverOf(const StepGraph& graph, const Log& log, const JobState& state, const Checked& checked) {
    const Frame& frame = graph.frame();
    HandOver slip{.frame = fmt::format("{} ({})", frame.name, frame.id.text),
                  .attitude = attitudeWords(state),
                  .lastActs = lastActsOf(frame, log),
                  .beware = bewareOf(graph, state, checked),
                  .apart = apartOf(frame, state.build)};
    for (const StepId& step : possibleNow(graph, state))
        slip.possible.push_back(stepWords(frame, step));
    if (const auto next = nextHoldPoint(graph, state))
        slip.nextHoldPoint = stepWords(frame, *next);
    if (state.person)
        slip.person = fmt::format("{} ({})", state.person->name, nameOf(state.person->role));
    return slip;
}

std::vector<Attempt> attemptsOf(const Frame& frame, const Log& log, const StepId& step) {
    std::vector<Attempt> attempts;
    for (std::size_t i = 0; i < log.events.size(); ++i)
        if (isDoingOf(log.events[i], step))
            attempts.push_back({.step = step, .event = i, .words = wordsOf(frame, log.events[i])});
    if (!stateOf(frame, log).build.done(step))
        return attempts;
    // The last doing that was not taken back is the one that stands.
    const std::vector<const Event*> standing = standingEvents(log);
    const auto last = std::find_if(standing.rbegin(), standing.rend(),
                                   [&](const Event* event) { return isDoingOf(*event, step); });
    for (Attempt& attempt : attempts)
        attempt.stands = last != standing.rend() && &log.events[attempt.event] == *last;
    return attempts;
}

} // namespace gapwise
