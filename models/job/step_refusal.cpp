#include "models/job/step_refusal.h"

#include "models/job/part_refusal.h"
#include "models/procedure/hold_point.h"
#include "models/procedure/person_name.h"
#include "models/procedure/step_status.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

Errors refusalOfUnknown(const Frame& frame, const StepId& step) {
    if (frame.step(step))
        return {};
    return {refusal(step.text, "no such step", fmt::format("a step of {}", frame.id.text))};
}

bool isSkipped(const JobState& state, const StepId& step) {
    return std::ranges::find(state.skipped, step, &StepSkipped::step) != state.skipped.end();
}

/// What keeps a step from being done: that it was, what it waits for.
Errors refusalOfOrder(const Frame& frame, const JobState& state, const StepId& step) {
    if (state.build.done(step))
        return {refusal(step.text, "it is done already", "a step that is open")};
    if (const std::string why = whyBlocked(StepGraph{frame}, state, step); !why.empty())
        return {refusal(step.text, why, "that they are done first")};
    return {};
}

bool isAsked(const Missing& missing, Demands demands) {
    if (!missing.stops || missing.kind == Missing::Kind::HoldPoint)
        return false;
    return demands == Demands::All || missing.kind == Missing::Kind::Part;
}

void addMissing(const Frame& frame, const JobState& state, const StepId& step, Errors& errors) {
    for (const Missing& missing : missingFrom(frame, state, step))
        if (isAsked(missing, state.demands))
            errors.push_back(refusal(fmt::format("{}/{}", step.text, missing.id), missing.words,
                                     "that it is there before the step is called done"));
}

bool isOverridden(const JobState& state, const std::string& finding) {
    return std::ranges::any_of(state.passed, [&](const HoldPointPassed& passed) {
        return std::ranges::find(passed.overrides, finding, &Override::finding) != passed.overrides.end();
    });
}

/// The record does not close over a finding that nobody answers for, of a practice frame neither.
void addHeld(const Frame& frame, const JobState& state, const StepId& step, Errors& errors) {
    for (const HeldBy& held : heldBy(frame, state, checkBuild(frame, state.build, {})))
        if (!isOverridden(state, held.finding))
            errors.push_back(refusal(fmt::format("{}/{}", step.text, held.finding), held.words,
                                     "a record in which it is put right or answered for"));
}

} // namespace

Errors refusalOfDoing(const Frame& frame, const JobState& state, const StepDone& event) {
    if (const Errors unknown = refusalOfUnknown(frame, event.step); !unknown.empty())
        return unknown;
    Errors errors = refusalOfOrder(frame, state, event.step);
    if (!errors.empty())
        return errors;
    const Step& step = *frame.step(event.step);
    if (step.holdPoint && state.demands == Demands::All)
        return {refusal(event.step.text, "it is a hold point",
                        "that it is passed by name, with a witness or as a lone worker")};
    addMissing(frame, state, event.step, errors);
    if (step.closesRecord && state.demands == Demands::All)
        addHeld(frame, state, event.step, errors);
    return errors;
}

Errors refusalOfSkipping(const Frame& frame, const JobState& state, const StepSkipped& event) {
    Errors errors = refusalOfUnknown(frame, event.step);
    if (!errors.empty())
        return errors;
    if (!frame.step(event.step)->maySkip)
        errors.push_back(refusal(event.step.text, "it must be done", "a step that may be left out"));
    if (state.build.done(event.step))
        errors.push_back(refusal(event.step.text, "it is done already", "a step that is open"));
    if (isBlank(event.reason))
        errors.push_back(refusal(event.step.text + "/reason", "no reason", "why it is left out"));
    if (isBlank(event.by))
        errors.push_back(refusal(event.step.text + "/by", "no name", "the name of the person who says so"));
    return errors;
}

Errors refusalOfUndoing(const Frame& frame, const JobState& state, const StepUndone& event) {
    if (const Errors unknown = refusalOfUnknown(frame, event.step); !unknown.empty())
        return unknown;
    if (!state.build.done(event.step) && !isSkipped(state, event.step))
        return {refusal(event.step.text, "it is not done", "a step that is done or left out")};
    return {};
}

Errors refusalOfPassingNow(const Frame& frame, const JobState& state, const HoldPointPassed& event) {
    if (const Errors unknown = refusalOfUnknown(frame, event.step); !unknown.empty())
        return unknown;
    Errors errors = refusalOfOrder(frame, state, event.step);
    if (!errors.empty())
        return errors;
    addMissing(frame, state, event.step, errors);
    const Errors passing = refusalOfPassing(frame, state, checkBuild(frame, state.build, {}), event);
    errors.insert(errors.end(), passing.begin(), passing.end());
    return errors;
}

} // namespace gapwise
