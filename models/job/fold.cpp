#include "models/job/fold.h"

#include "models/frame/sets.h"
#include "models/procedure/hold_point.h"
#include "models/procedure/reopen.h"
#include "models/procedure/tightening.h"

#include <algorithm>
#include <ranges>

namespace gapwise {

namespace {

bool contains(const auto& all, const auto& one) {
    return std::ranges::find(all, one) != all.end();
}

/// In the place of the one of the same step, else at the end.
template <class T>
void putOf(std::vector<T>& all, const T& event) {
    const auto found = std::ranges::find(all, event.step, &T::step);
    if (found == all.end())
        all.push_back(event);
    else
        *found = event;
}

/// What is written down of a fastener when its last screw is done: of screws that were turned differently the
/// first wrong one.
TorqueNote noteOf(const Fastener& fastener, const JobState& state) {
    const std::vector<Stage> stages = stagesOf(fastener);
    TorqueNote note{.fastener = fastener.id.text};
    bool wrong = false;
    for (const Tightened& entry : state.tightened) {
        if (entry.fastener != fastener.id || entry.stage + 1 != stages.size())
            continue;
        note.torqueNm = entry.torqueNm;
        if (entry.angle)
            note.angle = entry.angle;
        if (wrong)
            continue;
        note.clockwise = entry.clockwise;
        note.seenFrom = entry.seenFrom;
        wrong = (entry.clockwise == fastener.tightensClockwise) != (entry.seenFrom == fastener.handSeenFrom);
    }
    return note;
}

} // namespace

Fold::Fold(const StepGraph& graph, JobState start)
    : graph_{graph}, frame_{graph.frame()}, state_{std::move(start)}, done_(graph.size(), false) {
    for (const StepId& step : state_.build.stepsDone)
        if (const auto index = graph_.indexOf(step))
            done_[*index] = true;
}

void Fold::add(const Event& event) {
    std::visit([this](const auto& e) { on(e); }, event);
}

template <class Other>
void Fold::on(const Other& event) {
    state_.build = withEvent(frame_, std::move(state_.build), event);
}

void Fold::on(const AttitudeChanged& event) {
    state_.attitudeConfirmed = event.confirmed;
    if (event.unretained && rotorIsLoose(frame_, state_.build)) {
        state_.turnedUnretained = true;
        for (const Step& step : frame_.steps)
            if (contains(step.places, frame_.rotor) && isDone(step.id))
                reopen(step.id);
    }
    state_.build.attitude = event.attitude;
}

void Fold::on(const PartPlaced& event) {
    const bool goesIn = !state_.build.in(event.seat);
    state_.build = withEvent(frame_, std::move(state_.build), event);
    if (!goesIn || event.part != frame_.rotor)
        return;
    state_.turnedUnretained = false;
    state_.build.rotorLoweredIn.reset();
    if (state_.build.attitude)
        state_.build.rotorLoweredIn = state_.build.attitude->up == EndUp::Turbine;
}

void Fold::on(const PartTakenOff& event) {
    const Seating* there = state_.build.in(event.seat);
    if (!there)
        return;
    const std::vector<PartId> pieces = piecesOf(frame_, there->part);
    const bool isRotor = there->part == frame_.rotor;
    for (const Step& step : frame_.steps)
        if (std::ranges::any_of(pieces, [&](const PartId& piece) { return contains(step.places, piece); }) &&
            isDone(step.id))
            reopen(step.id);
    state_.build = withEvent(frame_, std::move(state_.build), event);
    if (isRotor)
        state_.build.rotorLoweredIn.reset();
}

void Fold::on(const StepDone& event) {
    markDone(event.step);
}

void Fold::on(const StepSkipped& event) {
    putOf(state_.skipped, event);
}

void Fold::on(const StepUndone& event) {
    const bool skipped =
        std::erase_if(state_.skipped, [&](const StepSkipped& each) { return each.step == event.step; }) > 0;
    if (skipped || isDone(event.step))
        reopen(event.step);
}

void Fold::on(const HoldPointPassed& event) {
    putOf(state_.passed, event);
    markDone(event.step);
}

void Fold::on(const Tightened& event) {
    state_.tightened.push_back(event);
    const Fastener* fastener = frame_.fastener(event.fastener);
    if (!fastener ||
        contains(std::views::transform(state_.build.torques, &TorqueNote::fastener), event.fastener.text))
        return;
    const Tightening tightening = tighteningOf(*fastener, state_);
    if (tightening.all > 0 && !tightening.next)
        state_.build.torques.push_back(noteOf(*fastener, state_));
}

void Fold::on(const Loosened& event) {
    const Fastener* fastener = frame_.fastener(event.fastener);
    if (fastener && isDone(fastener->step))
        reopen(fastener->step);
    voidTightening(event.fastener);
}

void Fold::on(const Answered& event) {
    const auto found = std::ranges::find_if(state_.answers, [&](const Answered& each) {
        return each.step == event.step && each.question == event.question;
    });
    if (found == state_.answers.end())
        state_.answers.push_back(event);
    else
        *found = event;
}

void Fold::on(const NutLineRead& event) {
    state_.nutLine = event;
}

void Fold::on(const CautionAcknowledged& event) {
    state_.acknowledged.insert(event.caution);
}

void Fold::on(const PersonCame& event) {
    state_.person = event;
}

bool Fold::isDone(const StepId& step) const {
    const auto index = graph_.indexOf(step);
    return index && done_[*index];
}

/// A step that is done again takes its old place among those that followed it and still stand.
void Fold::markDone(const StepId& step) {
    std::erase_if(state_.skipped, [&](const StepSkipped& each) { return each.step == step; });
    const auto index = graph_.indexOf(step);
    if (!index || done_[*index])
        return;
    done_[*index] = true;
    std::vector<StepId>& done = state_.build.stepsDone;
    auto place = done.end();
    if (state_.reopened.erase(step) > 0) {
        const std::vector<bool> after = followersOf(graph_, state_.build, *index);
        const auto follows = [&](const StepId& other) {
            const auto at = graph_.indexOf(other);
            return at && after[*at];
        };
        place = std::ranges::find_if(done, follows);
    }
    done.insert(place, step);
}

void Fold::reopen(const StepId& step) {
    const Reopened reopened = reopenedBy(graph_, state_.build, step);
    for (const StepId& each : reopened.steps) {
        open(each, step);
        voidWorkOf(each);
    }
    for (const StepId& each : reopened.lapsed)
        open(each, step);
    std::erase_if(state_.build.stepsDone, [&](const StepId& each) {
        const auto index = graph_.indexOf(each);
        return index && !done_[*index];
    });
}

void Fold::open(const StepId& step, const StepId& by) {
    done_[*graph_.indexOf(step)] = false;
    state_.reopened[step] = by;
    std::erase_if(state_.passed, [&](const HoldPointPassed& each) { return each.step == step; });
}

void Fold::voidWorkOf(const StepId& step) {
    for (const Measurement& measurement : frame_.measurements)
        if (measurement.step == step)
            std::erase_if(state_.build.readings, [&](const Reading& each) {
                return each.measurement == measurement.id.text && each.occasion == Occasion::After;
            });
    for (const Fastener& fastener : frame_.fasteners)
        if (fastener.step == step)
            voidTightening(fastener.id);
    std::erase_if(state_.answers, [&](const Answered& each) { return each.step == step; });
    const Step& asking = frame_.steps[*graph_.indexOf(step)];
    if (contains(asking.asks, StepQuestion::NutLine))
        state_.nutLine.reset();
}

void Fold::voidTightening(const FastenerId& fastener) {
    std::erase_if(state_.tightened, [&](const Tightened& each) { return each.fastener == fastener; });
    std::erase_if(state_.build.torques,
                  [&](const TorqueNote& each) { return each.fastener == fastener.text; });
    if (state_.nutLine && state_.nutLine->fastener == fastener)
        state_.nutLine.reset();
}

} // namespace gapwise
