#include "tests/viewer/panels/desk.h"

#include "viewer/panels/step_card.h"
#include "viewer/panels/step_cautions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

namespace {

using desk::Desk;

/// Everything up to W1 said done in `start`, so that S14 is what comes next.
void readyForW1(Desk& desk, Use use) {
    desk.startSheet("alder-72-good", use);
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.at.act(StepUndone{StepId{"S14"}, "looked at again", "R. Ohlin"});
    for (const Question& question : questionsOf(desk.job().frame, *desk.job().frame.step(StepId{"S14"})))
        desk.at.act(Answered{StepId{"S14"}, question.name, "so", std::nullopt, "R. Ohlin"});
    for (const Caution* caution : cautionsOf(desk.job().frame, StepId{"S14"}))
        desk.at.act(CautionAcknowledged{caution->id, "R. Ohlin"});
    grant(desk.workplace, OpenStep{StepId{"S14"}});
    desk.frames(2);
    desk.click("step/tab hold");
    desk.frames(2);
}

bool leafTo(Desk& desk, const std::string& target) {
    for (int i = 0; i < 20 && !desk.has(target) && desk.has("step/Read on"); ++i) {
        desk.click("step/Read on");
        desk.frame();
    }
    return desk.has(target);
}

} // namespace

TEST(HoldPoint, DoesNotPassWithoutAWitness) {
    Desk desk;
    readyForW1(desk, Use::Practise);
    EXPECT_EQ(desk.panels.drafts.stepCard.fields["by"], "R. Ohlin") << "who is signed on";
    ASSERT_TRUE(leafTo(desk, "step/pass"));
    desk.click("step/pass");
    EXPECT_TRUE(desk.panels.drafts.stepCard.faults.contains("witness"));
    EXPECT_FALSE(desk.build().done(StepId{"S14"}));
}

TEST(HoldPoint, TheDoerIsNoWitness) {
    Desk desk;
    readyForW1(desk, Use::Practise);
    desk.panels.drafts.stepCard.fields["witness"] = "r. ohlin";
    ASSERT_TRUE(leafTo(desk, "step/pass"));
    desk.click("step/pass");
    EXPECT_THAT(desk.panels.drafts.stepCard.faults["witness"], testing::HasSubstr("another person"));
    EXPECT_FALSE(desk.build().done(StepId{"S14"}));
}

TEST(HoldPoint, PassesWithAWitness) {
    Desk desk;
    readyForW1(desk, Use::Practise);
    desk.panels.drafts.stepCard.fields["witness"] = "T. Hald";
    ASSERT_TRUE(leafTo(desk, "step/pass"));
    desk.click("step/pass");
    const auto* passed = desk.lastAct<HoldPointPassed>();
    ASSERT_NE(passed, nullptr);
    EXPECT_EQ(passed->witness, "T. Hald");
    EXPECT_FALSE(passed->loneWorker);
    EXPECT_TRUE(desk.build().done(StepId{"S14"}));
}

TEST(HoldPoint, WhoWorksAloneSaysSo) {
    Desk desk;
    readyForW1(desk, Use::Practise);
    ASSERT_TRUE(leafTo(desk, "step/alone"));
    desk.click("step/alone");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/pass"));
    desk.click("step/pass");
    const auto* passed = desk.lastAct<HoldPointPassed>();
    ASSERT_NE(passed, nullptr);
    EXPECT_TRUE(passed->loneWorker);
    EXPECT_TRUE(passed->witness.empty());
}

TEST(HoldPoint, InARehearsalNothingIsOverridden) {
    Desk desk;
    readyForW1(desk, Use::Practise);
    desk.at.point("SR-CO", Side::Compressor, 270.0);
    desk.frames(2);
    desk.panels.drafts.stepCard.fields["witness"] = "T. Hald";
    ASSERT_TRUE(leafTo(desk, "step/pass"));
    desk.click("step/pass");
    EXPECT_FALSE(desk.build().done(StepId{"S14"}));
    EXPECT_FALSE(desk.has("step/overrides/SR-CO.gap/by"));
}

TEST(HoldPoint, AtTheBenchSomebodyMayAnswerForAFinding) {
    Desk desk;
    readyForW1(desk, Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.at.point("SR-CO", Side::Compressor, 270.0);
    desk.at.act(SeatingConfirmed{seatOf(PartId{"SR-CO"}), {"R. Ohlin", Confirmation::Said::Before}});
    desk.frames(2);
    desk.click("step/tab hold");
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/overrides/SR-CO.gap/by"));
    for (const HeldBy& held : heldBy(desk.job().frame, desk.job().state, desk.job().checked)) {
        const std::string place = "overrides/" + held.finding;
        desk.panels.drafts.stepCard.fields[place + "/by"] = "M. Vik";
        desk.panels.drafts.stepCard.fields[place + "/reason"] = "agreed with the customer";
        if (held.needsInspector)
            desk.panels.drafts.stepCard.fields[place + "/concession"] = "C-17";
    }
    desk.panels.drafts.stepCard.fields["witness"] = "T. Hald";
    desk.frame();
    ASSERT_TRUE(leafTo(desk, "step/pass"));
    desk.click("step/pass");
    EXPECT_TRUE(desk.build().done(StepId{"S14"}));
}

} // namespace gapwise
