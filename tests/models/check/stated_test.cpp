#include "models/check/check.h"

#include "tests/support/print_error.h"
#include "tests/support/tightened_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using testing::ElementsAre;
using testing::IsEmpty;

namespace {

/// The small frame with a hand rule of its nut (the collar), an order rule of S3 (needs S2; S1 only when the
/// rotor was lowered in) and conditions of the bush.
Frame statedFrame() {
    const auto rule = [](const char* id, const nlohmann::json& demand) {
        nlohmann::json whole{{"id", id},        {"severity", 3},     {"printed", "as printed"},
                             {"reason", "why"}, {"last_look", "S1"}, {"source", "invented"}};
        whole.update(demand);
        return whole;
    };
    const Result<Frame> frame =
        tightenedFrame()
            .add(
                "/steps/2/after",
                {{"step", "S1"}, {"reason", "SAF"}, {"why", "held first"}, {"only_when", "rotor_lowered_in"}})
            .add("/rules", rule("hand", {{"kind", "hand"},
                                         {"fastener", "N"},
                                         {"turned", "counter_clockwise"},
                                         {"seen_from", "compressor"}}))
            .add("/rules", rule("order", {{"kind", "order"}, {"step", "S3"}}))
            .add("/rules", rule("fresh", {{"kind", "condition"}, {"part", "BUSH"}, {"state", "new"}}))
            .add("/rules", rule("oil", {{"kind", "condition"},
                                        {"part", "BUSH"},
                                        {"surface", "inside and outside"},
                                        {"state", "oiled"}}))
            .read();
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return *frame;
}

Seating seated(const char* part, std::vector<std::string> conditions = {}) {
    return Seating{.part = PartId{part}, .seat = seatOf(PartId{part}), .conditions = std::move(conditions)};
}

RuleState stateOf(const Build& build, const char* rule) {
    const Frame frame = statedFrame();
    return judge(frame, build, *frame.rule(RuleId{rule})).state;
}

Build turned(std::optional<bool> clockwise, Side from) {
    Build build;
    build.seatings = {seated("COLLAR")};
    build.torques = {TorqueNote{.fastener = "N", .torqueNm = 14.0, .clockwise = clockwise}};
    if (clockwise)
        build.torques.front().seenFrom = from;
    return build;
}

Build doneInOrder(std::initializer_list<const char*> steps, std::optional<bool> loweredIn = std::nullopt) {
    Build build;
    build.rotorLoweredIn = loweredIn;
    for (const char* step : steps)
        build.stepsDone.emplace_back(step);
    return build;
}

Build bushStated(std::vector<std::string> conditions) {
    Build build;
    build.seatings = {seated("BUSH", std::move(conditions))};
    return build;
}

Finding findingOf(const Build& build, const char* rule) {
    const Frame frame = statedFrame();
    for (Finding& finding : checkBuild(frame, build, CheckOptions{}).findings)
        if (finding.verdict.rule->id.text == rule) {
            finding.verdict.rule = nullptr; // It points into the frame of this call.
            return finding;
        }
    ADD_FAILURE() << "no finding of " << rule;
    return {};
}

} // namespace

// Common practice, no source: the same turn is counter-clockwise from one end and clockwise from the other.
TEST(StatedRules, AHandIsJudgedFromEitherSide) {
    EXPECT_EQ(stateOf(turned(false, Side::Compressor), "hand"), RuleState::Holds);
    EXPECT_EQ(stateOf(turned(true, Side::Turbine), "hand"), RuleState::Holds);
    EXPECT_EQ(stateOf(turned(true, Side::Compressor), "hand"), RuleState::Broken);
    EXPECT_EQ(stateOf(turned(false, Side::Turbine), "hand"), RuleState::Broken);
}

TEST(StatedRules, AHandIsOpenUntilItIsWrittenDown) {
    EXPECT_EQ(stateOf(turned(std::nullopt, Side::Compressor), "hand"), RuleState::Open);
    Build placed;
    placed.seatings = {seated("COLLAR")};
    EXPECT_EQ(stateOf(placed, "hand"), RuleState::NotDue);
    placed.stepsDone = {StepId{"S4"}};
    EXPECT_EQ(stateOf(placed, "hand"), RuleState::Open);
}

TEST(StatedRules, AWrongHandSaysWhatItDid) {
    const Finding finding = findingOf(turned(true, Side::Compressor), "hand");
    EXPECT_THAT(finding.mistakes, ElementsAre(Mistake::WrongHand));
    EXPECT_EQ(nameOf(Mistake::WrongHand), "wrong_hand");
    EXPECT_FALSE(finding.asSeen); // A sense of turning is no direction on the dial.
    EXPECT_FALSE(finding.turn);
    EXPECT_EQ(
        finding.words,
        "N (nut): the rule says tightened counter-clockwise, seen from the compressor side; found turned "
        "clockwise, seen from "
        "the compressor side. Likely mistake: turned as a right-hand thread is tightened, which slackens "
        "this "
        "one.");
}

TEST(StatedRules, AnOrderIsJudgedOnceItsStepIsDone) {
    EXPECT_EQ(stateOf(doneInOrder({"S1", "S2"}), "order"), RuleState::NotDue);
    EXPECT_EQ(stateOf(doneInOrder({"S1", "S2", "S3"}), "order"), RuleState::Holds);
    EXPECT_EQ(stateOf(doneInOrder({"S1", "S3"}), "order"), RuleState::Broken);
    EXPECT_EQ(stateOf(doneInOrder({"S3", "S2"}), "order"), RuleState::Broken);
}

TEST(StatedRules, AnOrderThatHoldsOnlyWhenTheRotorIsLoweredIn) {
    EXPECT_EQ(stateOf(doneInOrder({"S2", "S3"}), "order"), RuleState::Holds);
    EXPECT_EQ(stateOf(doneInOrder({"S2", "S3"}, false), "order"), RuleState::Holds);
    EXPECT_EQ(stateOf(doneInOrder({"S2", "S3"}, true), "order"), RuleState::Broken);
}

TEST(StatedRules, AStepDoneEarlierMayStandForAnother) {
    Frame frame = statedFrame();
    const Rule& rule = *frame.rule(RuleId{"order"});
    frame.steps[0].standsFor = {StepId{"S2"}};
    EXPECT_EQ(judge(frame, doneInOrder({"S1", "S3"}), rule).state, RuleState::Holds);
    EXPECT_EQ(judge(frame, doneInOrder({"S3", "S1"}), rule).state, RuleState::Broken);
}

TEST(StatedRules, AStepThatMayBeSkippedIsNotMissed) {
    Frame frame = statedFrame();
    const Rule& rule = *frame.rule(RuleId{"order"});
    frame.steps[1].maySkip = true;
    EXPECT_EQ(judge(frame, doneInOrder({"S3"}), rule).state, RuleState::Holds);
    EXPECT_EQ(judge(frame, doneInOrder({"S3", "S2"}), rule).state, RuleState::Broken);
}

TEST(StatedRules, AMissedStepIsNamedWithItsReason) {
    EXPECT_EQ(findingOf(doneInOrder({"S3", "S2"}), "order").words,
              "Order: the rule says S3 after S2; found S3 done before S2 (the rotor hides the ring).");
    EXPECT_EQ(findingOf(doneInOrder({"S3"}, true), "order").words,
              "Order: the rule says S3 after S2, S1; found S3 done without S2 (the rotor hides the ring), "
              "without S1 "
              "(held first).");
    EXPECT_THAT(findingOf(doneInOrder({"S3"}), "order").mistakes, IsEmpty());
}

TEST(StatedRules, AConditionHoldsOnceSomebodySaidSo) {
    EXPECT_EQ(stateOf(Build{}, "fresh"), RuleState::NotDue);
    EXPECT_EQ(stateOf(bushStated({"oiled"}), "fresh"), RuleState::NotDue);
    EXPECT_EQ(stateOf(bushStated({"oiled", "new"}), "fresh"), RuleState::Holds);
    EXPECT_EQ(stateOf(bushStated({"new"}), "oil"), RuleState::NotDue);
    EXPECT_EQ(stateOf(bushStated({"greased"}), "oil"), RuleState::NotDue);
    EXPECT_EQ(stateOf(bushStated({"dry"}), "oil"), RuleState::Broken);
    EXPECT_EQ(stateOf(bushStated({"new", "oiled"}), "oil"), RuleState::Holds);
}

// While a part is being set nobody is asked; the step is not over before somebody said so.
TEST(StatedRules, AConditionIsOpenOnceItsStepIsDone) {
    for (const char* rule : {"fresh", "oil"}) {
        Build build = bushStated({});
        EXPECT_EQ(stateOf(build, rule), RuleState::NotDue);
        build.stepsDone = {StepId{"S1"}};
        EXPECT_EQ(stateOf(build, rule), RuleState::Open);
        build.seatings.clear();
        EXPECT_EQ(stateOf(build, rule), RuleState::NotDue);
    }
}

TEST(StatedRules, AConditionSaysWhatIsWanted) {
    EXPECT_EQ(findingOf(bushStated({"dry"}), "oil").words,
              "BUSH: the rule says inside and outside oiled; found dry.");
    Build unsaid = bushStated({});
    unsaid.stepsDone = {StepId{"S1"}};
    EXPECT_EQ(findingOf(unsaid, "oil").words,
              "BUSH: the rule says inside and outside oiled; nobody said so.");
}

// What was said is not seen: no step that hides the part makes it open again.
TEST(StatedRules, NothingHidesAStatement) {
    Build build = bushStated({"new", "oiled"});
    build.stepsDone = {StepId{"S1"}, StepId{"S2"}, StepId{"S3"}, StepId{"S4"}};
    EXPECT_EQ(stateOf(build, "fresh"), RuleState::Holds);
    EXPECT_EQ(stateOf(build, "oil"), RuleState::Holds);
}

} // namespace gapwise
