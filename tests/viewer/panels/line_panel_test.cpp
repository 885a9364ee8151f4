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

/// Says a step done that asks nothing more than that its cautions are read; at once, without a hand.
void doStep(AtHand& hand, const std::string& step) {
    for (const Caution& caution : hand.job().frame.cautions)
        if (std::ranges::find(caution.steps, StepId{step}) != caution.steps.end())
            hand.act(CautionAcknowledged{caution.id, ""});
    hand.act(StepDone{StepId{step}, "R. Ohlin"});
}

} // namespace

TEST(StepMarks, EveryStepThatIsPossibleIsAndOneLeads) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_EQ(stepMarksOf(hand.job()).front().state, MarkState::Next);
    EXPECT_EQ(markOf(hand.job(), "D2").state, MarkState::Possible);
    EXPECT_EQ(markOf(hand.job(), "D6").state, MarkState::Possible);
    EXPECT_EQ(markOf(hand.job(), "S08").state, MarkState::Later);
    const std::string first = stepMarksOf(hand.job()).front().id.text;
    doStep(hand, first);
    EXPECT_EQ(markOf(hand.job(), first.c_str()).state, MarkState::Done);
    EXPECT_EQ(nextMarkOf(stepMarksOf(hand.job())), 1U);
}

TEST(StepMarks, WhatWasLeftOutHasAStateOfItsOwn) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.act(StepSkipped{StepId{"D2"}, "came without casings", "R. Ohlin"});
    EXPECT_EQ(markOf(hand.job(), "D2").state, MarkState::Skipped);
    EXPECT_EQ(wordOf(markOf(hand.job(), "D2")), "skipped");
}

TEST(StepMarks, WhatIsOpenAgainSaysSo) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    doStep(hand, "D1");
    hand.act(StepUndone{StepId{"D1"}, "read again", "R. Ohlin"});
    EXPECT_TRUE(markOf(hand.job(), "D1").reopened);
    EXPECT_EQ(wordOf(markOf(hand.job(), "D1")), "open again");
}

TEST(StepMarks, WhoBeganAtTheCompressorEndStaysThere) {
    AtHand hand;
    hand.start("alder-72", Use::Show);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    for (const char* step :
         {"D1", "D2", "D3", "D4", "D5", "D6", "S00", "S01", "S02", "S03", "S04", "S05", "S06"})
        hand.act(StepDone{StepId{step}, ""});
    // Either end first is common practice; the outer groove is reached from the end that is up.
    EXPECT_EQ(hand.job().procedure.leading, StepId{"S11"});
    EXPECT_EQ(markOf(hand.job(), "S07").state, MarkState::Possible);
}

TEST(StepMarks, AFlagCountsDown) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const std::size_t before = markOf(hand.job(), "S08").lastLooks.front().stepsLeft;
    doStep(hand, "D1");
    EXPECT_EQ(markOf(hand.job(), "S08").lastLooks.front().stepsLeft, before - 1);
    EXPECT_EQ(countdownOf(LastLook{.stepsLeft = 2}), "last look, 2 steps left");
    EXPECT_EQ(countdownOf(LastLook{.stepsLeft = 1}), "last look, 1 step left");
    EXPECT_EQ(countdownOf(LastLook{.stepsLeft = 0}), "last look now");
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
    EXPECT_EQ(hidesUnfinished(markOf(hand.job(), "S08")), "SR-TI (not said whether new, oiled or dry)");
    hand.act(ConditionStated{seatOf(PartId{"SR-TI"}), "new", true});
    EXPECT_EQ(hidesUnfinished(markOf(hand.job(), "S08")), "");
}

TEST(StepMarks, SentenceSaysHowThePieceLiesAndFromWhereToLook) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_EQ(sentenceOf(hand.job().frame, StepId{"S08"}),
              "S08 Fit the turbine-end bearing – turbine end up, looked at from the turbine side");
    EXPECT_EQ(sentenceOf(hand.job().frame, StepId{"S99"}), "");
}

TEST(LinePanel, ATapOpensTheCardAndMarksNothing) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    const StepId first = stepMarksOf(desk.job()).front().id;
    desk.click("line/" + first.text);
    EXPECT_EQ(desk.job().step, first);
    EXPECT_TRUE(desk.build().stepsDone.empty());
    EXPECT_TRUE(desk.job().log.events.empty());
}

TEST(LinePanel, AMarkIsReachedByKeysAlone) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    ASSERT_TRUE(desk.has("line/D1"));
    const Area mark = desk.areaOf("line/D1");
    EXPECT_GE(mark.height, 36.0);
    desk.key(ImGuiKey_PageDown);
    EXPECT_EQ(desk.job().step, StepId{"D1"});
}

TEST(LinePanel, WhatWouldGoOutOfSightUnfinishedIsSaidOnTheCard) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    grant(desk.workplace, OpenStep{StepId{"S08"}});
    desk.frames(2);
    desk.click("step/tab open");
    desk.frame();
    for (int i = 0; i < 8 && !desk.has("step/look SR-TI") && desk.has("step/Read on"); ++i) {
        desk.click("step/Read on");
        desk.frame();
    }
    desk.click("step/look SR-TI");
    EXPECT_EQ(desk.job().inHand, PartId{"SR-TI"});
    EXPECT_FALSE(desk.build().done(StepId{"S08"}));
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
