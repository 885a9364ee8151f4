#include "tests/viewer/panels/desk.h"

#include "viewer/panels/step_card.h"
#include "viewer/panels/step_cautions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>

namespace gapwise {

namespace {

using desk::Desk;

void open(Desk& desk, const char* step) {
    grant(desk.workplace, OpenStep{StepId{step}});
    desk.frames(2);
}

void signOn(Desk& desk) {
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.frames(2);
}

/// Leafs on until a target is there.
bool leafTo(Desk& desk, const std::string& target) {
    for (int i = 0; i < 12 && !desk.has(target); ++i)
        if (desk.has("step/Read on")) {
            desk.click("step/Read on");
            desk.frame();
        }
    return desk.has(target);
}

void readCautions(Desk& desk, const char* step) {
    for (const Caution* caution : cautionsOf(desk.job().frame, StepId{step}))
        desk.at.act(CautionAcknowledged{caution->id, "R. Ohlin"});
}

/// Everything that a step asks, said.
void sayAll(Desk& desk, const char* step) {
    readCautions(desk, step);
    for (const Question& question : questionsOf(desk.job().frame, *desk.job().frame.step(StepId{step})))
        desk.at.act(Answered{StepId{step}, question.name, "so", std::nullopt, "R. Ohlin"});
    desk.frames(2);
}

} // namespace

TEST(StepCard, OpensOnCautionsThatWereNotRead) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    open(desk, "S07");
    EXPECT_EQ(desk.panels.drafts.stepCard.tab, "cautions");
    ASSERT_TRUE(desk.has("step/read C-spring"));
    desk.click("step/read C-spring");
    ASSERT_NE(desk.lastAct<CautionAcknowledged>(), nullptr);
    EXPECT_TRUE(desk.job().state.acknowledged.contains("C-spring"));
    open(desk, "S09");
    EXPECT_EQ(desk.panels.drafts.stepCard.tab, "do") << "once a job";
    desk.click("step/tab cautions");
    EXPECT_FALSE(desk.has("step/read C-spring")) << "they stay to be read";
}

TEST(StepCard, ItsPartsAreTakenInHandAndTheCardComesBack) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    open(desk, "S07");
    desk.click("step/tab do");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/SR-TI"));
    desk.click("step/SR-TI");
    EXPECT_EQ(desk.job().inHand, PartId{"SR-TI"});
    desk.frame();
    desk.click("card/Close");
    desk.frame();
    EXPECT_FALSE(desk.job().inHand);
    EXPECT_TRUE(desk.has("step/Close"));
    desk.click("step/Close");
    EXPECT_FALSE(desk.job().step);
}

TEST(StepCard, PageDownOpensTheLeadingStep) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.key(ImGuiKey_PageDown);
    EXPECT_EQ(desk.job().step, desk.job().procedure.leading);
    EXPECT_TRUE(desk.build().stepsDone.empty()) << "looking does nothing";
}

TEST(StepCard, PageDownSaysACompleteStepDoneAndGoesOn) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    desk.key(ImGuiKey_PageDown);
    const StepId first = *desk.job().step;
    desk.key(ImGuiKey_PageDown);
    EXPECT_FALSE(desk.build().done(first)) << "its cautions were not read";
    EXPECT_EQ(desk.panels.drafts.stepCard.tab, "cautions");
    sayAll(desk, first.text.c_str());
    desk.key(ImGuiKey_PageDown);
    ASSERT_TRUE(desk.build().done(first));
    const StepId next = *desk.job().procedure.leading;
    desk.key(ImGuiKey_PageDown);
    EXPECT_EQ(desk.job().step, next);
}

TEST(StepCard, PageUpGoesBackAndUndoesNothing) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    open(desk, "D2");
    desk.key(ImGuiKey_PageUp);
    EXPECT_EQ(desk.job().step, StepId{"D1"});
    desk.key(ImGuiKey_PageUp);
    EXPECT_EQ(desk.job().step, StepId{"D1"});
    EXPECT_TRUE(desk.job().log.events.empty());
}

TEST(StepCard, SaysWhatItWaitsForAndLeadsThere) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    open(desk, "S00");
    readCautions(desk, "S00");
    desk.click("step/tab open");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/D4"));
    desk.click("step/D4");
    EXPECT_EQ(desk.job().step, StepId{"D4"});
}

TEST(StepCard, DoneShowsWhatIsOpenInsteadOfDoingIt) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    open(desk, "D1");
    readCautions(desk, "D1");
    desk.frames(2);
    desk.click("step/Done");
    EXPECT_FALSE(desk.build().done(StepId{"D1"}));
    EXPECT_EQ(desk.panels.drafts.stepCard.tab, "open");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/open witness-1"));
    desk.click("step/open witness-1");
    EXPECT_EQ(desk.panels.drafts.stepCard.tab, "look");
    desk.frame();
    desk.click("step/witness-1");
    const auto* answered = desk.lastAct<Answered>();
    ASSERT_NE(answered, nullptr);
    EXPECT_EQ(answered->question, "witness-1");
    EXPECT_EQ(answered->by, "R. Ohlin");
    desk.frame();
    desk.click("step/Done");
    EXPECT_TRUE(desk.build().done(StepId{"D1"}));
}

TEST(StepCard, WhatIsOnlySaidMayBeDoneAllTheSame) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    open(desk, "D1");
    readCautions(desk, "D1");
    desk.click("step/tab open");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/Done all the same"));
    desk.click("step/Done all the same");
    EXPECT_TRUE(desk.build().done(StepId{"D1"}));
}

TEST(StepCard, AStepIsLeftOutOnlyWithAReason) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    open(desk, "D2");
    desk.click("step/Skip …");
    desk.frames(2);
    desk.click("step/say reason");
    EXPECT_TRUE(desk.job().state.skipped.empty());
    desk.panels.drafts.stepCard.fields["reason"] = "came without casings";
    desk.frame();
    desk.click("step/say reason");
    ASSERT_EQ(desk.job().state.skipped.size(), 1U);
    EXPECT_EQ(desk.job().state.skipped.front().reason, "came without casings");
    EXPECT_FALSE(desk.build().done(StepId{"D2"}));
}

TEST(StepCard, OpeningAgainShowsFirstWhatOpensWithIt) {
    Desk desk;
    desk.startSheet("alder-72-good", Use::Practise);
    ASSERT_TRUE(desk.build().done(StepId{"S39"}));
    open(desk, "S39");
    desk.click("step/Open again …");
    EXPECT_TRUE(desk.build().done(StepId{"S39"}));
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/No, it stays done"));
    desk.click("step/No, it stays done");
    EXPECT_TRUE(desk.build().done(StepId{"S39"}));
    desk.frame();
    desk.click("step/Open again …");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/Yes, open it again"));
    desk.click("step/Yes, open it again");
    // Touch S39 and the oil prime, the leak test and the blanking are open, and the record: common practice.
    for (const char* step : {"S39", "S40", "S41", "S42", "S43"})
        EXPECT_FALSE(desk.build().done(StepId{step})) << step;
    EXPECT_TRUE(desk.build().done(StepId{"S38"}));
}

TEST(StepCard, ABearingOfTheOtherKindOffersTheSisterFrame) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    open(desk, "S01");
    desk.click("step/tab variant");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/pinned"));
    desk.click("step/pinned");
    ASSERT_NE(desk.lastAct<Answered>(), nullptr);
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/open sister"));
    desk.click("step/open sister");
    EXPECT_EQ(desk.job().frame.id, FrameId{"alder-72-pinned"});
}

TEST(StepCard, AnswersAskFirstWhoWorks) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    open(desk, "S01");
    desk.click("step/tab variant");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/full_floating"));
    desk.click("step/full_floating");
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Who);
    EXPECT_TRUE(desk.job().state.answers.empty());
}

TEST(StepCard, ABlockThatIsTooLowIsRefusedAtItsField) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    open(desk, "S06");
    desk.click("step/tab block_height");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/block_height"));
    // 69.0 mm at least: shaft end 57.00 - face 8.00 + 20, invented sizes of the frame.
    desk.panels.drafts.stepCard.fields["block_height"] = "68,9";
    desk.click("step/say block_height");
    EXPECT_THAT(desk.panels.drafts.stepCard.faults["block_height"], testing::HasSubstr("At least 69.0 mm"));
    EXPECT_TRUE(desk.job().state.answers.empty());
    desk.panels.drafts.stepCard.fields["block_height"] = "69,0";
    desk.frame();
    desk.click("step/say block_height");
    ASSERT_EQ(desk.job().state.answers.size(), 1U);
    EXPECT_EQ(desk.job().state.answers.front().amount, 69.0);
}

TEST(StepCard, CountsAreThreeNumbersTogether) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    open(desk, "S01");
    desk.click("step/tab count_in");
    desk.frame();
    auto& fields = desk.panels.drafts.stepCard.fields;
    fields["count_in blanks"] = "6";
    fields["count_in rags"] = "many";
    fields["count_in tools"] = "9";
    ASSERT_TRUE(leafTo(desk, "step/counted"));
    desk.click("step/counted");
    EXPECT_TRUE(desk.panels.drafts.stepCard.faults.contains("count_in rags"));
    EXPECT_EQ(desk.panels.drafts.stepCard.faults.size(), 1U);
    fields["count_in rags"] = "4";
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/counted"));
    desk.click("step/counted");
    ASSERT_EQ(desk.job().state.answers.size(), 1U);
    EXPECT_EQ(desk.job().state.answers.front().answer, "6 blanks, 4 rags, 9 tools");
    EXPECT_EQ(desk.job().state.answers.front().amount, 19.0);
}

TEST(StepCard, AGaugeThatIsDueIsNamed) {
    Desk desk;
    desk.panels.today = "2026-11-30";
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    open(desk, "S01");
    desk.click("step/tab gauges");
    desk.frame();
    desk.panels.drafts.stepCard.fields["gauge-1"] = "30.11.2026";
    desk.click("step/say gauge-1");
    EXPECT_TRUE(desk.panels.drafts.stepCard.faults.contains("gauge-1"));
    desk.panels.drafts.stepCard.fields["gauge-1"] = "2026-11-29";
    desk.frame();
    desk.click("step/say gauge-1");
    ASSERT_EQ(desk.job().state.answers.size(), 1U);
    EXPECT_EQ(desk.job().state.answers.front().answer, "2026-11-29");
}

TEST(StepCard, LooksAsTheStepSays) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    open(desk, "S07");
    desk.click("step/Look so");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::FromTurbine) << "the piece lies the other way";
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.frame();
    desk.click("step/Look so");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::WhereIStand);
    desk.click("step/Turn …");
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Lying);
}

TEST(StepCard, WhatMustBeNewIsSaidOnTheCard) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    signOn(desk);
    desk.at.place("SR-TI");
    open(desk, "S07");
    desk.click("step/tab look");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/SR-TI.new"));
    desk.click("step/SR-TI.new");
    const auto* stated = desk.lastAct<ConditionStated>();
    ASSERT_NE(stated, nullptr);
    EXPECT_EQ(stated->state, "new");
    EXPECT_TRUE(stated->so);
}

TEST(StepCard, WhoShowsTheWorkLeafsOnWithoutNames) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.key(ImGuiKey_PageDown);
    const StepId first = *desk.job().step;
    desk.key(ImGuiKey_PageDown);
    EXPECT_TRUE(desk.build().done(first));
}

} // namespace gapwise
