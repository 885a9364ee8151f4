#include "tests/viewer/panels/desk.h"

#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

using desk::Desk;

TEST(WhoBox, SignsOnWithNameAndRole) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.click("banner/Who");
    desk.frames(2);
    desk.picture("who-bench");
    desk.panels.drafts.who = "  T. Hald ";
    desk.frame();
    desk.click("who/Inspector");
    desk.click("who/Sign on");
    ASSERT_TRUE(desk.job().state.person);
    EXPECT_EQ(desk.job().state.person->name, "T. Hald");
    EXPECT_EQ(desk.job().state.person->role, Role::Inspector);
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::None);
}

TEST(WhoBox, ANameIsNeeded) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.type("i");
    desk.frame();
    desk.panels.drafts.who = "   ";
    desk.frame();
    desk.click("who/Sign on");
    EXPECT_FALSE(desk.job().state.person);
}

TEST(WhoBox, OffersWhoWasHereBefore) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.at.act(PersonCame{"I. Dorn", Role::Apprentice});
    desk.type("i");
    desk.frames(2);
    desk.click("who/R. Ohlin");
    desk.frame();
    desk.click("who/Sign on");
    EXPECT_EQ(whoWorks(desk.job()), "R. Ohlin");
}

TEST(WhoBox, ConfirmationsCarryTheName) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.at.place("SR-TI");
    grant(desk.workplace, TakeInHand{PartId{"SR-TI"}});
    desk.frame();
    desk.panels.drafts.saying = seatOf(PartId{"SR-TI"});
    desk.panels.drafts.gapSeen = Degrees{270.0};
    desk.panels.drafts.referenceFaceVisible = true;
    desk.frame();
    desk.click("card/Done");
    ASSERT_TRUE(desk.build().of(PartId{"SR-TI"})->confirmed);
    EXPECT_EQ(desk.build().of(PartId{"SR-TI"})->confirmed->by, "R. Ohlin");
}

TEST(WhoBox, AtTheBenchAStepIsNotDoneBeforeSomebodyIsSignedOn) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{levelAttitude(Side::Compressor, Degrees{180.0}), true});
    grant(desk.workplace, OpenStep{StepId{"D1"}});
    desk.frames(2);
    ASSERT_TRUE(desk.has("step/read C-charred-seals"));
    desk.click("step/read C-charred-seals");
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Who);
    EXPECT_TRUE(desk.job().state.acknowledged.empty());
}

} // namespace gapwise
