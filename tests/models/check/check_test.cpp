#include "models/check/check.h"

#include "tests/models/check/bench.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

RuleState stateOf(const Build& build, const char* rule) {
    const Frame frame = bench::smallFrame();
    return judge(frame, build, *frame.rule(RuleId{rule})).state;
}

Build with(std::vector<Seating> seatings) {
    Build build;
    build.seatings = std::move(seatings);
    return build;
}

} // namespace

TEST(RuleState, NotDueUntilAPartIsInItsSeat) {
    EXPECT_EQ(stateOf(Build{}, "SR-C.gap"), RuleState::NotDue);
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 90.0)}), "SR-C.gap"), RuleState::Holds);
}

TEST(RuleState, TheBoundaryOfAToleranceHolds) {
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 60.0)}), "SR-C.gap"), RuleState::Holds);
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 120.0)}), "SR-C.gap"), RuleState::Holds);
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 120.0001)}), "SR-C.gap"), RuleState::Broken);
}

TEST(RuleState, OpenWhileTheClockIsNotKnown) {
    Seating unset = bench::seatedAt("SR-C", 0.0);
    unset.index.reset();
    EXPECT_EQ(stateOf(with({unset}), "SR-C.gap"), RuleState::Open);
}

TEST(RuleState, OpenWhenTheLastLookHasPassedUnconfirmed) {
    Build build = with({bench::seatedAt("SR-C", 90.0)});
    build.stepsDone = {StepId{"S3"}};
    EXPECT_EQ(stateOf(build, "SR-C.gap"), RuleState::Open);
    build.seatings[0].confirmed = Confirmation{.by = "R. Ohlin"};
    EXPECT_EQ(stateOf(build, "SR-C.gap"), RuleState::Holds);
}

TEST(RuleState, AnEmptySeatIsBrokenOnceItIsHidden) {
    Build build;
    EXPECT_EQ(stateOf(build, "SR-C.seat"), RuleState::NotDue);
    build.stepsDone = {StepId{"S3"}};
    EXPECT_EQ(stateOf(build, "SR-C.seat"), RuleState::Broken);
    EXPECT_EQ(stateOf(build, "SR-C.gap"), RuleState::Open);
}

TEST(Check, GapArcMustClearTheSlotThatCrossesItsGroove) {
    // asin(5/19) + asin(3.5/19) + 10 = 35.9 (arithmetic; the sizes are invented).
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 180.0 - 35.8)}), "SR-C.clear"), RuleState::Broken);
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 180.0 - 35.9)}), "SR-C.clear"), RuleState::Holds);
}

TEST(Check, FaceTowardAPartFollowsFromWhereTheSeatsLie) {
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 90.0, Side::Turbine)}), "SR-C.face"), RuleState::Holds);
    EXPECT_EQ(stateOf(with({bench::seatedAt("SR-C", 90.0, Side::Compressor)}), "SR-C.face"),
              RuleState::Broken);
}

TEST(Check, NotchStraddlesItsPinOrNot) {
    EXPECT_EQ(stateOf(with({bench::seatedAt("BUSH", 180.4), bench::seatedAt("PIN", 0.0)}), "BUSH.notch"),
              RuleState::Holds);
    EXPECT_EQ(stateOf(with({bench::seatedAt("BUSH", 181.0), bench::seatedAt("PIN", 0.0)}), "BUSH.notch"),
              RuleState::Broken);
    EXPECT_EQ(stateOf(with({bench::seatedAt("BUSH", 180.4)}), "BUSH.notch"), RuleState::Open);
}

TEST(Check, TwoGapsAreComparedWithoutASign) {
    for (const double second : {170.0, 190.0, 200.0})
        EXPECT_EQ(stateOf(with({bench::seatedAt("PR-1", 0.0), bench::seatedAt("PR-2", second)}), "PR.apart"),
                  RuleState::Holds);
    EXPECT_EQ(stateOf(with({bench::seatedAt("PR-1", 0.0), bench::seatedAt("PR-2", 201.0)}), "PR.apart"),
              RuleState::Broken);
}

TEST(Check, MatchMarksGoWithTheRotor) {
    Build build = with({bench::seatedAt("ROTOR", 0.0), bench::seatedAt("SLEEVE", 4.0)});
    build.rotor = Degrees{77.0};
    EXPECT_EQ(stateOf(build, "marks"), RuleState::Holds);
    build.seatings[1] = bench::seatedAt("SLEEVE", 6.0);
    EXPECT_EQ(stateOf(build, "marks"), RuleState::Broken);
}

TEST(Check, AWrongJointInTheSeatIsSwappedEnds) {
    const Frame frame = bench::smallFrame();
    Seating wrong = bench::seatedAt("PR-P", 0.0);
    wrong.seat = seatOf(PartId{"PR-1"});
    const Build build = with({wrong});
    const Checked checked = checkBuild(frame, build, CheckOptions{});
    ASSERT_THAT(checked.findings, Not(IsEmpty()));
    EXPECT_EQ(checked.findings[0].verdict.rule->id, RuleId{"PR-1.joint"});
    EXPECT_THAT(checked.findings[0].mistakes, ElementsAre(Mistake::SwappedEnds));
}

TEST(Check, FindingsAreBrokenFirstThenGraveThenSoon) {
    const Frame frame = bench::smallFrame();
    Seating unset = bench::seatedAt("SR-T", 0.0);
    unset.index.reset();
    const Build build =
        with({bench::seatedAt("SR-C", 180.0, Side::Compressor), unset, bench::seatedAt("PR-1", 180.0),
              bench::seatedAt("BUSH", 0.0), bench::seatedAt("PIN", 0.0)});
    std::vector<std::string> order;
    for (const Finding& finding : checkBuild(frame, build, CheckOptions{}).findings)
        order.push_back(finding.verdict.rule->id.text);
    EXPECT_THAT(order,
                ElementsAre("BUSH.notch", "SR-C.clear", "SR-C.face", "SR-C.gap", "PR-1.gap", "SR-T.gap"));
}

TEST(Check, CompleteCountsOpenAndNotDueAsBroken) {
    const Frame frame = bench::smallFrame();
    const Build build = with({bench::seatedAt("SR-C", 90.0)});
    EXPECT_TRUE(checkBuild(frame, build, CheckOptions{}).holds);
    EXPECT_FALSE(checkBuild(frame, build, CheckOptions{.complete = true}).holds);
}

TEST(Check, SaysWhyAndWhichWayToTurn) {
    const Frame frame = bench::smallFrame();
    Build build = with({bench::seatedAt("SR-C", 275.0)});
    build.attitude = uprightAttitude(Side::Compressor, Degrees{0.0});
    build.seatings[0].setIn = View{Side::Compressor, Degrees{180.0}};
    const Checked checked = checkBuild(frame, build, CheckOptions{});
    ASSERT_EQ(checked.findings.size(), 1U);
    const Finding& finding = checked.findings[0];
    EXPECT_EQ(finding.asPrinted, true);
    EXPECT_THAT(finding.mistakes,
                ElementsAre(Mistake::UpsideDown, Mistake::MirroredView, Mistake::OtherEndRule));
    EXPECT_THAT(finding.words, HasSubstr("the drain was away from you"));
    ASSERT_TRUE(finding.turn);
    EXPECT_NEAR(finding.turn->size.value, 175.0, 1e-9);
    EXPECT_TRUE(finding.turn->clockwise);
    EXPECT_EQ(finding.question, "");
}

TEST(Check, TheTurnIsToldAsSeenFromWhereThePersonLooks) {
    const Frame frame = bench::smallFrame();
    Build build = with({bench::seatedAt("SR-C", 130.0)});
    build.attitude = uprightAttitude(Side::Turbine, Degrees{180.0});
    const Checked fromTurbine = checkBuild(frame, build, CheckOptions{});
    EXPECT_TRUE(fromTurbine.findings[0].turn->clockwise);
    build.attitude = uprightAttitude(Side::Compressor, Degrees{180.0});
    const Checked fromCompressor = checkBuild(frame, build, CheckOptions{});
    EXPECT_FALSE(fromCompressor.findings[0].turn->clockwise);
    EXPECT_NEAR(fromCompressor.findings[0].turn->size.value, 40.0, 1e-9);
}

TEST(Check, AsksOneQuestionWhereTwoMistakesRemain) {
    const Frame frame = bench::smallFrame();
    const Build build = with({bench::seatedAt("SR-C", 270.0)});
    const Checked checked = checkBuild(frame, build, CheckOptions{});
    EXPECT_THAT(checked.findings[0].question,
                HasSubstr("did you look from the turbine side; or was the drain"));
}

TEST(Check, TheSistersRuleExplains) {
    const Frame frame = bench::smallFrame();
    Frame sister = bench::smallFrame();
    std::get<GapClockRule>(sister.rules[0].demand).target.clock = Degrees{150.0};
    const Build build = with({bench::seatedAt("SR-C", 140.0)});
    const Checked checked = checkBuild(frame, build, CheckOptions{.sister = &sister});
    ASSERT_FALSE(checked.findings.empty());
    const auto gap = std::ranges::find(checked.findings, RuleId{"SR-C.gap"},
                                       [](const Finding& finding) { return finding.verdict.rule->id; });
    EXPECT_THAT(gap->mistakes, ElementsAre(Mistake::OtherVariantRule));
}

} // namespace gapwise
