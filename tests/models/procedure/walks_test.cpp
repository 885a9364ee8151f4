#include "models/job/log.h"
#include "models/procedure/reopen.h"
#include "models/procedure/step_status.h"
#include "tests/models/procedure/course.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace gapwise {

namespace {

/// A random frame without circles: each step may need earlier ones, for any reason.
Frame drawnFrame() {
    const int count = *rc::gen::inRange(1, 25);
    const std::vector<std::string> reasons{"PHY", "ACC", "MEA", "CLN", "SAF", "REC"};
    Frame frame;
    frame.id = FrameId{"drawn"};
    for (int i = 0; i < count; ++i) {
        Step step{.id = StepId{"X" + std::to_string(i)}};
        std::set<int> before;
        for (int edge = i > 0 ? *rc::gen::inRange(0, 4) : 0; edge > 0; --edge)
            before.insert(*rc::gen::inRange(0, i));
        for (const int each : before)
            step.after.push_back(
                {StepId{"X" + std::to_string(each)}, *rc::gen::elementOf(reasons), "w",
                 *rc::gen::element(OnlyWhen::Always, OnlyWhen::Always, OnlyWhen::RotorLoweredIn)});
        step.holdPoint = *rc::gen::inRange(0, 5) == 0;
        frame.steps.push_back(std::move(step));
    }
    frame.steps.back().closesRecord = !frame.steps.back().holdPoint;
    return frame;
}

Event doing(const Step& step) {
    if (step.holdPoint)
        return HoldPointPassed{.step = step.id, .by = "I. Dorn", .witness = "R. Ohlin"};
    return StepDone{step.id, "I. Dorn"};
}

/// Acts drawn one by one; what would be refused is left out.
Log drawnLog(const Frame& frame) {
    Log log;
    log.start.rotorLoweredIn = *rc::gen::arbitrary<bool>();
    log.demands = Demands::All;
    const int acts = *rc::gen::inRange(0, 60);
    for (int i = 0; i < acts; ++i) {
        const Step& step = *rc::gen::elementOf(frame.steps);
        const int kind = *rc::gen::inRange(0, 12);
        const Event event = kind == 0   ? Event{StepUndone{step.id, "rework", "I. Dorn"}}
                            : kind == 1 ? Event{Undone{}}
                            : kind == 2 ? Event{Redone{}}
                                        : doing(step);
        if (refusalOf(frame, stateOf(frame, log), event).empty())
            log.events.push_back(event);
    }
    return log;
}

std::set<std::string> done(const JobState& state) {
    std::set<std::string> done;
    for (const StepId& step : state.build.stepsDone)
        done.insert(step.text);
    return done;
}

/// Everything of a state that steps are about, as text.
std::string facts(const JobState& state) {
    std::string text = course::text(state.build.stepsDone) + " | ";
    for (const auto& [step, by] : state.reopened)
        text += step.text + "<" + by.text + " ";
    text += "| ";
    for (const HoldPointPassed& passed : state.passed)
        text += passed.step.text + " ";
    return text;
}

bool counts(const Precedence& edge, const Build& build) {
    return edge.when == OnlyWhen::Always || build.rotorLoweredIn == true;
}

/// An edge that counts begins with a step that is done.
bool holds(const Precedence& edge, const Build& build, const std::set<std::string>& before) {
    return !counts(edge, build) || before.contains(edge.step.text);
}

bool voids(const Precedence& edge) {
    return edge.reason == "PHY" || edge.reason == "ACC" || edge.reason == "MEA";
}

/// The plain way: steps are added as long as one of them needs one that is in.
std::set<std::string> closure(const Frame& frame, const Build& build, const std::string& start,
                              bool anyEdge) {
    std::set<std::string> in{start};
    for (std::size_t before = 0; before != in.size();) {
        before = in.size();
        for (const Step& step : frame.steps)
            for (const Precedence& edge : step.after)
                if (counts(edge, build) && (anyEdge || voids(edge)) && in.contains(edge.step.text))
                    in.insert(step.id.text);
    }
    return in;
}

} // namespace

RC_GTEST_PROP(StepWalks, NeverDoAStepBeforeWhatItNeeds, ()) {
    const Frame frame = drawnFrame();
    Log log;
    log.start.rotorLoweredIn = *rc::gen::arbitrary<bool>();
    const StepGraph graph{frame};
    std::set<std::string> soFar;
    for (std::vector<StepId> possible = possibleNow(graph, stateOf(frame, log)); !possible.empty();
         possible = possibleNow(graph, stateOf(frame, log))) {
        const StepId step = *rc::gen::elementOf(possible);
        for (const Precedence& edge : frame.step(step)->after)
            RC_ASSERT(holds(edge, log.start, soFar));
        soFar.insert(step.text);
        log.events.push_back(doing(*frame.step(step)));
    }
    RC_ASSERT(soFar.size() == frame.steps.size());
}

RC_GTEST_PROP(StepWalks, WhatIsNotRefusedNeverViolatesTheGraph, ()) {
    const Frame frame = drawnFrame();
    const Log log = drawnLog(frame);
    Log grown{.start = log.start};
    for (const Event& event : log.events) {
        const std::set<std::string> before = done(stateOf(frame, grown));
        grown.events.push_back(event);
        const bool doingIt =
            std::holds_alternative<StepDone>(event) || std::holds_alternative<HoldPointPassed>(event);
        if (!doingIt)
            continue;
        for (const std::string& step : done(stateOf(frame, grown))) {
            if (before.contains(step))
                continue;
            for (const Precedence& edge : frame.step(StepId{step})->after)
                RC_ASSERT(holds(edge, log.start, before));
        }
    }
}

RC_GTEST_PROP(StepWalks, UndoThenRedoRestoresEverything, ()) {
    const Frame frame = drawnFrame();
    Log log = drawnLog(frame);
    const std::string before = facts(stateOf(frame, log));
    if (stateOf(frame, log).canUndo == 0)
        return;
    const int back = *rc::gen::inRange(1, 6);
    int taken = 0;
    while (taken < back && stateOf(frame, log).canUndo > 0) {
        log.events.emplace_back(Undone{});
        ++taken;
    }
    for (int i = 0; i < taken; ++i)
        log.events.emplace_back(Redone{});
    RC_ASSERT(facts(stateOf(frame, log)) == before);
}

RC_GTEST_PROP(StepWalks, ReopensExactlyTheDependentsAndLetsExactlyTheSignaturesLapse, ()) {
    const Frame frame = drawnFrame();
    Log log = drawnLog(frame);
    const JobState before = stateOf(frame, log);
    if (before.build.stepsDone.empty())
        return;
    const StepId undone = *rc::gen::elementOf(before.build.stepsDone);
    log.events.emplace_back(StepUndone{undone, "rework", "I. Dorn"});
    const JobState after = stateOf(frame, log);
    const std::set<std::string> work = closure(frame, before.build, undone.text, false);
    const std::set<std::string> all = closure(frame, before.build, undone.text, true);
    for (const Step& step : frame.steps) {
        const bool was = before.build.done(step.id);
        const bool signs = step.holdPoint || step.closesRecord;
        const bool opens =
            work.contains(step.id.text) || (signs && all.contains(step.id.text) && step.id != undone);
        RC_ASSERT(after.build.done(step.id) == (was && !opens));
        if (was && opens)
            RC_ASSERT(after.reopened.at(step.id) == undone);
        const bool passed =
            std::ranges::find(after.passed, step.id, &HoldPointPassed::step) != after.passed.end();
        RC_ASSERT(passed == (step.holdPoint && after.build.done(step.id)));
    }
}

RC_GTEST_PROP(StepWalks, APlainCountFindsTheSameAsTheGraph, ()) {
    const Frame frame = drawnFrame();
    const JobState state = stateOf(frame, drawnLog(frame));
    const std::set<std::string> isDone = done(state);
    std::vector<StepId> expected;
    for (const Step& step : frame.steps) {
        const auto open = [&](const Precedence& edge) {
            return counts(edge, state.build) && !isDone.contains(edge.step.text);
        };
        if (!isDone.contains(step.id.text) && std::ranges::none_of(step.after, open))
            expected.push_back(step.id);
    }
    RC_ASSERT(possibleNow(StepGraph{frame}, state) == expected);
}

} // namespace gapwise
