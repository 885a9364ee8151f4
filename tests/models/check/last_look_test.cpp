#include "models/check/check.h"

#include "tests/models/check/bench.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace gapwise {

namespace {

/// The small frame, in which the sleeve's face is hidden by S1, its match mark by S4 with the rotor's.
Frame marksSeenLate() {
    Frame frame = bench::smallFrame();
    frame.steps[0].hides = {seatOf(PartId{"SLEEVE"})};
    frame.steps[3].hides = {seatOf(PartId{"ROTOR"})};
    return frame;
}

RuleState marksIn(const Frame& frame, const Build& build) {
    return judge(frame, build, *frame.rule(RuleId{"marks"})).state;
}

} // namespace

// The face of a collar goes out of sight long before its match mark does (common practice, no source).
TEST(LastLook, AStepBeforeTheOneThatTheRuleNamesDoesNotEndIt) {
    const Frame frame = marksSeenLate();
    Build build;
    build.seatings = {bench::seatedAt("SLEEVE", 0.0)};
    build.stepsDone = {StepId{"S1"}};
    EXPECT_EQ(marksIn(frame, build), RuleState::NotDue);
    build.seatings.push_back(bench::seatedAt("ROTOR", 0.0));
    EXPECT_EQ(marksIn(frame, build), RuleState::Holds);
}

TEST(LastLook, OnceItHasPassedEveryPartOfTheRuleMustBeConfirmed) {
    const Frame frame = marksSeenLate();
    Build build;
    build.seatings = {bench::seatedAt("SLEEVE", 0.0), bench::seatedAt("ROTOR", 0.0)};
    build.stepsDone = {StepId{"S1"}, StepId{"S4"}};
    EXPECT_EQ(marksIn(frame, build), RuleState::Open);
    build.seatings[0].confirmed = Confirmation{.by = "R. Ohlin"};
    EXPECT_EQ(marksIn(frame, build), RuleState::Open);
    build.seatings[1].confirmed = Confirmation{.by = "R. Ohlin"};
    EXPECT_EQ(marksIn(frame, build), RuleState::Holds);
}

// Either way round is as short; it is said the same whoever looks and whatever the rounding (arithmetic).
TEST(Turn, ExactlyHalfATurnIsClockwise) {
    Frame frame = bench::smallFrame();
    int counterClockwise = 0;
    for (int tenth = 0; tenth < 3600; tenth += 7)
        for (const Side eye : {Side::Compressor, Side::Turbine}) {
            const double printed = tenth / 10.0;
            std::get<GapClockRule>(frame.rules[1].demand).target.clock = Degrees{printed};
            Build build;
            build.seatings = {bench::seatedAt("SR-T", 180.0 - printed)};
            const Checked checked = checkBuild(frame, build, CheckOptions{.currentView = inletOnTop(eye)});
            const auto finding = std::ranges::find_if(
                checked.findings, [](const Finding& f) { return f.verdict.rule->id == RuleId{"SR-T.gap"}; });
            ASSERT_NE(finding, checked.findings.end());
            EXPECT_NEAR(finding->turn->size.value, 180.0, 1e-9);
            counterClockwise += finding->turn->clockwise ? 0 : 1;
        }
    EXPECT_EQ(counterClockwise, 0);
}

} // namespace gapwise
