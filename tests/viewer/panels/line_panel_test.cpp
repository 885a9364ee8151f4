#include "tests/viewer/panels/desk.h"

#include "viewer/panels/step_marks.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>

namespace gapwise {

namespace {

using desk::Desk;

StepMark markOf(const Job& job, const char* step) {
    const std::vector<StepMark> marks = stepMarksOf(job);
    const auto found = std::ranges::find(marks, StepId{step}, &StepMark::id);
    EXPECT_NE(found, marks.end());
    return found == marks.end() ? StepMark{} : *found;
}

} // namespace

TEST(StepMarks, TheFirstThatIsPossibleIsNext) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_EQ(stepMarksOf(hand.job()).front().state, MarkState::Next);
    EXPECT_EQ(markOf(hand.job(), "S08").state, MarkState::Later);
    const std::string first = stepMarksOf(hand.job()).front().id.text;
    hand.doneSoFar({first});
    EXPECT_EQ(markOf(hand.job(), first.c_str()).state, MarkState::Done);
    EXPECT_EQ(nextMarkOf(stepMarksOf(hand.job())), 1U);
}

TEST(StepMarks, AFlagStandsWhereSomethingGoesOutOfSight) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const StepMark mark = markOf(hand.job(), "S08");
    ASSERT_EQ(mark.lastLooks.size(), 1U);
    EXPECT_EQ(mark.lastLooks.front().part.text, "SR-TI");
    EXPECT_EQ(mark.label, "BRG-T");
    EXPECT_THAT(hidesUnfinished(mark), testing::HasSubstr("SR-TI (not placed)"));
    EXPECT_TRUE(markOf(hand.job(), "S14").holdPoint);
}

TEST(StepMarks, WhatHoldsAndIsConfirmedIsFinished) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-TI");
    hand.point("SR-TI", Side::Turbine, 270.0);
    hand.face("SR-TI", Side::Turbine);
    EXPECT_EQ(hidesUnfinished(markOf(hand.job(), "S08")), "SR-TI (not confirmed)");
    hand.act(SeatingConfirmed{seatOf(PartId{"SR-TI"}), {"A", Confirmation::Said::Before}});
    EXPECT_EQ(hidesUnfinished(markOf(hand.job(), "S08")), "");
}

TEST(StepMarks, SentenceSaysHowThePieceLiesAndFromWhereToLook) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_EQ(sentenceOf(hand.job().frame, StepId{"S08"}),
              "S08 Fit the turbine-end bearing – turbine end up, looked at from the turbine side");
    EXPECT_EQ(sentenceOf(hand.job().frame, StepId{"S99"}), "");
}

TEST(LinePanel, ATapMarksAStepDoneAndUndone) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    const std::string first = "line/" + stepMarksOf(desk.job()).front().id.text;
    desk.click(first);
    ASSERT_NE(desk.lastAct<StepDone>(), nullptr);
    desk.click(first);
    ASSERT_NE(desk.lastAct<StepUndone>(), nullptr);
    EXPECT_TRUE(desk.build().stepsDone.empty());
}

TEST(LinePanel, PageKeysStepBackAndForth) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.key(ImGuiKey_PageDown);
    desk.key(ImGuiKey_PageDown);
    EXPECT_EQ(desk.build().stepsDone.size(), 2U);
    desk.key(ImGuiKey_PageUp);
    EXPECT_EQ(desk.build().stepsDone.size(), 1U);
}

TEST(LinePanel, AsksBeforeSomethingUnfinishedGoesOutOfSight) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.doneSoFar(desk.at.stepsBefore("S08"));
    desk.frames(2);
    desk.click("line/S08");
    EXPECT_FALSE(desk.build().done(StepId{"S08"}));
    EXPECT_EQ(desk.panels.drafts.askedStep, StepId{"S08"});
    desk.frame();
    desk.click("line/Look at it");
    EXPECT_EQ(desk.job().inHand, PartId{"SR-TI"});
}

TEST(LinePanel, DoneAllTheSameIsTheOthersWill) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.at.doneSoFar(desk.at.stepsBefore("S08"));
    desk.at.place("BRG-T");
    desk.panels.drafts.askedStep = StepId{"S08"};
    desk.frame();
    desk.click("line/Done all the same");
    EXPECT_TRUE(desk.build().done(StepId{"S08"}));
    EXPECT_FALSE(desk.panels.drafts.askedStep);
}

TEST(LinePanel, AsksBeforeAStepOutOfOrder) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    const StepMark mark = markOf(desk.job(), "D2");
    ASSERT_EQ(mark.state, MarkState::Possible);
    desk.click("line/S00");
    ASSERT_EQ(desk.panels.drafts.askedStep, StepId{"S00"});
    EXPECT_THAT(warningBefore(markOf(desk.job(), "S00")), testing::HasSubstr("comes after D"));
    desk.frame();
    desk.click("line/Not yet");
    EXPECT_FALSE(desk.panels.drafts.askedStep);
    EXPECT_TRUE(desk.build().stepsDone.empty());
}

TEST(LinePanel, AsksOverThePictureWhereTheCardIsOpenAtTheBench) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    grant(desk.workplace, TakeInHand{PartId{"BRG-T"}});
    desk.panels.drafts.askedStep = StepId{"S08"};
    desk.frames(2);
    EXPECT_GE(desk.areaOf("line/Look at it").height, 59.5);
}

TEST(StepMarks, PartsThatComeBeforeAnotherAreNamed) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_THAT(partsBefore(hand.job(), PartId{"SR-CO"}), testing::Contains(PartId{"BRG-C"}));
    hand.place("SR-CI");
    hand.place("BRG-C");
    EXPECT_THAT(partsBefore(hand.job(), PartId{"SR-CO"}), testing::Not(testing::Contains(PartId{"BRG-C"})));
    EXPECT_THAT(partsBefore(hand.job(), PartId{"SR-TI"}), testing::IsEmpty());
}

TEST(LinePanel, ScrollsToTheEnd) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    ASSERT_FALSE(desk.has("line/S43"));
    for (int i = 0; i < 8 && !desk.has("line/S43"); ++i)
        desk.click("line/→");
    EXPECT_TRUE(desk.has("line/S43"));
}

} // namespace gapwise
