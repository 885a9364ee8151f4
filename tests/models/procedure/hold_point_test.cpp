#include "models/procedure/hold_point.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// Counts that differ: severity 4. A torque that is off: severity 3.
class HoldPoint : public ::testing::Test {
protected:
    HoldPoint() {
        frame_.steps[0].asks = {StepQuestion::CountIn};
        frame_.steps[5].asks = {StepQuestion::CountOut};
    }
    Errors refusal(const HoldPointPassed& passing) const {
        return refusalOfPassing(frame_, state_, checkBuild(frame_, state_.build, {}), passing);
    }
    std::string places(const HoldPointPassed& passing) const {
        std::string places;
        for (const Error& error : refusal(passing))
            places += (places.empty() ? "" : " ") + error.where;
        return places;
    }
    void countsDiffer() {
        state_.answers = {Answered{StepId{"A"}, "count_in", "12", 12.0, "I. Dorn"},
                          Answered{StepId{"F"}, "count_out", "11", 11.0, "I. Dorn"}};
    }
    void torqueIsOff() { state_.build.torques = {TorqueNote{.fastener = "F1", .torqueNm = 25.0}}; }

    Frame frame_ = course::smallFrame();
    JobState state_ = course::after({"A", "B", "C"});
    HoldPointPassed good_{.step = StepId{"D"}, .by = "I. Dorn", .witness = "R. Ohlin"};
    Override mended_{.finding = "torque-F1", .by = "R. Ohlin", .reason = "hot screw"};
    Override conceded_{.finding = "count",
                       .by = "P. Vail",
                       .reason = "found",
                       .role = Role::Inspector,
                       .concession = "C-17"};
};

} // namespace

TEST_F(HoldPoint, PassesWithTwoNamesOrALoneWorker) {
    EXPECT_THAT(refusal(good_), IsEmpty());
    EXPECT_THAT(refusal({.step = StepId{"D"}, .by = "I. Dorn", .loneWorker = true}), IsEmpty());
}

TEST_F(HoldPoint, TheWitnessIsSomebodyElse) {
    for (const char* same : {"I. Dorn", " i. dorn ", "I.\tDORN"}) {
        HoldPointPassed passing = good_;
        passing.witness = same;
        EXPECT_EQ(places(passing), "witness") << same;
    }
    EXPECT_EQ(places({.step = StepId{"D"}, .by = "Åsa Öberg", .witness = "åsa öberg"}), "witness");
}

TEST_F(HoldPoint, NamesMustBeThere) {
    EXPECT_EQ(places({.step = StepId{"D"}}), "by witness");
    EXPECT_EQ(places({.step = StepId{"D"}, .by = " \t", .witness = "\xC2\xA0"}), "by witness");
    EXPECT_EQ(places({.step = StepId{"D"}, .by = "I. Dorn", .witness = "R. Ohlin", .loneWorker = true}),
              "witness");
    EXPECT_EQ(places({.step = StepId{"B"}, .by = "I. Dorn", .witness = "R. Ohlin"}), "step");
}

TEST_F(HoldPoint, AFindingOfSeverity3NeedsANameAndAReason) {
    torqueIsOff();
    EXPECT_EQ(places(good_), "overrides/torque-F1");
    good_.overrides = {mended_};
    EXPECT_THAT(refusal(good_), IsEmpty());
    good_.overrides = {Override{.finding = "torque-F1"}};
    EXPECT_EQ(places(good_), "overrides/torque-F1/by overrides/torque-F1/reason");
}

TEST_F(HoldPoint, AFindingOfSeverity4NeedsAnInspectorWithANumber) {
    countsDiffer();
    EXPECT_EQ(places(good_), "overrides/count");
    good_.overrides = {conceded_};
    EXPECT_THAT(refusal(good_), IsEmpty());
    good_.overrides[0].role = Role::Instructor;
    EXPECT_EQ(places(good_), "overrides/count/role");
    good_.overrides = {conceded_};
    good_.overrides[0].concession = " ";
    EXPECT_EQ(places(good_), "overrides/count/concession");
    good_.overrides = {conceded_};
    good_.overrides[0].by = "i. dorn";
    EXPECT_EQ(places(good_), "overrides/count/by") << "the inspector is a second person";
}

TEST_F(HoldPoint, NothingIsOverriddenInARehearsal) {
    torqueIsOff();
    state_.rehearsal = true;
    good_.overrides = {mended_};
    EXPECT_EQ(places(good_), "overrides/torque-F1");
    EXPECT_THAT(refusal(good_)[0].allowed, HasSubstr("rehearsal"));
    for (const HeldBy& held : heldBy(frame_, state_, checkBuild(frame_, state_.build, {})))
        EXPECT_FALSE(held.mayOverride);
}

TEST_F(HoldPoint, WhatDoesNotStandIsNotOverridden) {
    good_.overrides = {mended_};
    EXPECT_EQ(places(good_), "overrides/torque-F1");
}

TEST_F(HoldPoint, ARotorThatNothingHoldsIsSaidBeforeTheTurning) {
    EXPECT_FALSE(findingBeforeTurning(frame_, state_)) << "no rotor, nothing falls out";
    state_.build.seatings = {Seating{.part = frame_.rotor, .seat = seatOf(frame_.rotor)}};
    ASSERT_TRUE(findingBeforeTurning(frame_, state_));
    EXPECT_EQ(findingBeforeTurning(frame_, state_)->severity, 4);
    EXPECT_THAT(findingBeforeTurning(frame_, state_)->words, HasSubstr("K (act K) or N (act N)"));
    for (const char* step : {"K", "N"}) {
        JobState held = state_;
        held.build.stepsDone.emplace_back(step);
        EXPECT_FALSE(findingBeforeTurning(frame_, held)) << step;
    }
}

TEST_F(HoldPoint, AnotherBearingThanTheFramesNamesTheSister) {
    frame_.steps[1].asks = {StepQuestion::Variant};
    state_.answers = {Answered{StepId{"B"}, "variant", "pinned", {}, "I. Dorn"}};
    EXPECT_THAT(procedureFindings(frame_, state_), IsEmpty());
    state_.answers[0].answer = "full_floating";
    const std::vector<ProcedureFinding> findings = procedureFindings(frame_, state_);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].id, "variant");
    EXPECT_THAT(findings[0].words, HasSubstr("small-floating"));
}

TEST_F(HoldPoint, AStepDoneBeforeWhatItNeedsIsFoundUnlessItIsOpenAgain) {
    state_ = course::after({"A", "C", "B"});
    std::vector<ProcedureFinding> findings = procedureFindings(frame_, state_);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].id, "order-C");
    EXPECT_EQ(findings[0].words, "C was done before B (why C)");
    EXPECT_EQ(findings[0].severity, 3);
    state_ = course::after({"A", "F"});
    findings = procedureFindings(frame_, state_);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].severity, 2) << "a matter of cleanliness";
    state_.reopened[StepId{"E"}] = StepId{"A"};
    EXPECT_THAT(procedureFindings(frame_, state_), IsEmpty());
}

TEST_F(HoldPoint, ANutTurnedTheWrongWayIsFoundAtOnce) {
    state_.tightened = {Tightened{.fastener = FastenerId{"F2"}, .torqueNm = 16.0, .clockwise = true}};
    const std::vector<ProcedureFinding> findings = procedureFindings(frame_, state_);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].id, "hand-F2");
    EXPECT_EQ(findings[0].severity, 4);
    // Said from the other side it is the right way.
    state_.tightened[0].seenFrom = Side::Turbine;
    EXPECT_THAT(procedureFindings(frame_, state_), IsEmpty());
}

TEST_F(HoldPoint, ANutThatDragsTooMuchPicksUpInItsThread) {
    state_.answers = {Answered{StepId{"C"}, "drag_torque", "2.0", 2.0, "I. Dorn"}};
    EXPECT_THAT(procedureFindings(frame_, state_), IsEmpty());
    state_.answers[0].amount = 2.1;
    ASSERT_EQ(procedureFindings(frame_, state_).size(), 1U);
    EXPECT_EQ(procedureFindings(frame_, state_)[0].id, "drag");
}

TEST_F(HoldPoint, AnAngleOutsideItsWindowSaysWhatItMeans) {
    TorqueNote note{.fastener = "F2", .torqueNm = 14.0, .clockwise = false, .seenFrom = Side::Compressor};
    for (const double angle : {12.0, 19.0, 28.0}) {
        note.angle = Degrees{angle};
        state_.build.torques = {note};
        EXPECT_THAT(procedureFindings(frame_, state_), IsEmpty()) << angle;
    }
    for (const auto& [angle, word] : {std::pair{11.9, "dry"}, std::pair{28.1, "yielding"}}) {
        state_.build.torques[0].angle = Degrees{angle};
        const std::vector<ProcedureFinding> findings = procedureFindings(frame_, state_);
        ASSERT_EQ(findings.size(), 1U) << angle;
        EXPECT_EQ(findings[0].id, "angle-F2");
        EXPECT_EQ(findings[0].severity, 3);
        EXPECT_THAT(findings[0].words, HasSubstr(word));
    }
    state_.build.torques[0].angle.reset();
    ASSERT_EQ(procedureFindings(frame_, state_).size(), 1U);
    EXPECT_EQ(procedureFindings(frame_, state_)[0].severity, 2) << "not written down";
}

/// A stack 0.020 mm longer on a pitch of 1 mm: −7.2°.
TEST_F(HoldPoint, TheExpectedShiftIsTakenOffBeforeANutLineIsJudged) {
    state_.nutLine = NutLineRead{FastenerId{"F2"}, Degrees{-15.2}, 0.020, "I. Dorn"};
    EXPECT_THAT(procedureFindings(frame_, state_), IsEmpty()) << "8° are left, and still agree";
    state_.nutLine->read = Degrees{-16.0};
    ASSERT_EQ(procedureFindings(frame_, state_).size(), 1U);
    EXPECT_EQ(procedureFindings(frame_, state_)[0].id, "nut-line");
    EXPECT_EQ(procedureFindings(frame_, state_)[0].severity, 3);
    state_.nutLine->read = Degrees{19.0};
    ASSERT_EQ(procedureFindings(frame_, state_).size(), 1U);
    EXPECT_EQ(procedureFindings(frame_, state_)[0].severity, 4) << "26.2° are left: build again";
}

} // namespace gapwise
