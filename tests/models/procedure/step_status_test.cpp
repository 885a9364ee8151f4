#include "models/procedure/step_status.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using course::after;
using course::text;

class Steps : public ::testing::Test {
protected:
    std::string possible(const JobState& state) const { return text(possibleNow(graph_, state)); }
    std::string why(const JobState& state, const char* step) const {
        return whyBlocked(graph_, state, StepId{step});
    }
    StepStatus status(const JobState& state, const char* step) const {
        return stepStatuses(graph_, state)[*graph_.indexOf(StepId{step})];
    }

    Frame frame_ = course::smallFrame();
    StepGraph graph_{frame_};
};

} // namespace

TEST_F(Steps, OnlyWhatNeedsNothingIsPossibleAtFirst) {
    EXPECT_EQ(possible({}), "A R S");
}

TEST_F(Steps, AStepBecomesPossibleWhenEverythingItNeedsIsDone) {
    EXPECT_EQ(possible(after({"A"})), "B E R S");
    EXPECT_EQ(possible(after({"A", "B", "C", "D", "E"})), "F G R S");
    EXPECT_EQ(possible(after({"A", "B", "C", "D", "E", "F"})), "G R S Z");
}

TEST_F(Steps, SaysWhatABlockedStepWaitsForAndWhy) {
    EXPECT_EQ(why(after({"A"}), "Z"), "Z waits for D (why Z) and F (why Z)");
    EXPECT_EQ(why(after({"A"}), "B"), "");
    EXPECT_EQ(why(after({"A", "B"}), "B"), "") << "what is done is not blocked";
    EXPECT_EQ(status(after({"A"}), "Z").waitsFor.size(), 2U);
    EXPECT_EQ(status(after({"A"}), "Z").standing, StepStanding::Blocked);
}

TEST_F(Steps, AnEdgeAndAStepThatDoNotApplyHoldNothingUp) {
    JobState state = after({"R"});
    EXPECT_EQ(status(state, "K").standing, StepStanding::NotNeeded);
    EXPECT_EQ(possible(state), "A W N S");
    state.build.rotorLoweredIn = true;
    EXPECT_EQ(status(state, "K").standing, StepStanding::Possible);
    EXPECT_EQ(possible(state), "A K N S") << "W waits for K now";
}

TEST_F(Steps, AStepMayStandForAnother) {
    JobState state = after({"R", "N"});
    state.build.rotorLoweredIn = true;
    EXPECT_EQ(status(state, "K").standing, StepStanding::NotNeeded);
    EXPECT_EQ(possible(state), "A W S");
}

TEST_F(Steps, ASkippedStepHoldsNothingUp) {
    JobState state;
    state.skipped = {StepSkipped{StepId{"A"}, "photographs are there", "R. Ohlin"}};
    EXPECT_EQ(status(state, "A").standing, StepStanding::Skipped);
    EXPECT_EQ(possible(state), "B E R S");
}

TEST_F(Steps, TheNextHoldPointIsTheFirstThatIsNeededAndNotPassed) {
    EXPECT_EQ(nextHoldPoint(graph_, {})->text, "D");
    EXPECT_EQ(nextHoldPoint(graph_, after({"D"}))->text, "E");
    EXPECT_FALSE(nextHoldPoint(graph_, after({"D", "E"}))) << "K does not apply";
    JobState lowered = after({"D", "E"});
    lowered.build.rotorLoweredIn = true;
    EXPECT_EQ(nextHoldPoint(graph_, lowered)->text, "K");
}

TEST_F(Steps, WhatIsMissingStopsAStepAndHowThePieceLiesIsOnlySaid) {
    frame_.steps[7].attitudes = {StepAttitude::TurbineUp};
    frame_.cautions = {Caution{.id = "edges", .words = "Blades cut.", .steps = {StepId{"R"}}}};
    JobState state;
    state.build.attitude = uprightAttitude(Side::Compressor, Degrees{180.0});
    const std::vector<Missing> missing = missingFrom(frame_, state, StepId{"R"});
    ASSERT_EQ(missing.size(), 3U);
    EXPECT_EQ(missing[0].words, "ROTOR is not in its seat");
    EXPECT_EQ(missing[1].kind, Missing::Kind::Caution);
    EXPECT_TRUE(missing[0].stops && missing[1].stops);
    EXPECT_EQ(missing[2].kind, Missing::Kind::Attitude);
    EXPECT_FALSE(missing[2].stops);
}

TEST_F(Steps, AQuestionStopsAStepAndAWitnessTickIsOnlyAskedFor) {
    frame_.steps[0].asks = {StepQuestion::CountIn};
    frame_.steps[0].witness = {{.look = "cloth", .good = "stays white"}};
    std::vector<Missing> missing = missingFrom(frame_, {}, StepId{"A"});
    ASSERT_EQ(missing.size(), 2U);
    EXPECT_EQ(missing[0].id, "count_in");
    EXPECT_TRUE(missing[0].stops);
    EXPECT_EQ(missing[1].id, "witness-1");
    EXPECT_FALSE(missing[1].stops);
    JobState state;
    state.answers = {Answered{
        .step = StepId{"A"}, .question = "count_in", .answer = "12", .amount = 12.0, .by = "I. Dorn"}};
    missing = missingFrom(frame_, state, StepId{"A"});
    ASSERT_EQ(missing.size(), 1U);
}

TEST_F(Steps, AFastenerThatIsNotAtItsLastStageStopsItsStep) {
    const std::vector<Missing> missing = missingFrom(frame_, {}, StepId{"B"});
    ASSERT_EQ(missing.size(), 1U);
    EXPECT_EQ(missing[0].words, "F1 is at 0 of 18; next: 50 %, screw 1");
    JobState state;
    state.build.torques = {TorqueNote{.fastener = "F1", .torqueNm = 20.0}};
    EXPECT_TRUE(missingFrom(frame_, state, StepId{"B"}).empty());
}

} // namespace gapwise
