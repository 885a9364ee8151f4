#include "tests/viewer/panels/desk.h"

#include <gmock/gmock.h>

namespace gapwise::desk {

namespace {

using ::testing::HasSubstr;

class TorqueCard : public ::testing::Test {
protected:
    /// A built cartridge of which this fastener was slackened again.
    void take(const char* fastener, Use use = Use::Practise) {
        desk.startSheet("alder-72-good", use);
        desk.at.act(Loosened{FastenerId{fastener}, "slackened", "R. Ohlin"});
        grant(desk.workplace, OpenFastener{FastenerId{fastener}});
        desk.frames(3);
    }
    void typeInto(const std::string& field, std::string_view text) {
        desk.click("torque/" + field);
        desk.frames(2);
        desk.type(text);
        desk.frames(2);
    }
    const TorqueDrafts& drafts() const { return desk.panels.drafts.torque; }
    const std::vector<Tightened>& ticked() const { return desk.job().state.tightened; }

    Desk desk{};
};

bool inside(const Area& area, const Desk::Size& size) {
    return area.x >= 0.0 && area.y >= 0.0 && area.right() <= size.width + 0.5 &&
           area.bottom() <= size.height + 0.5;
}

} // namespace

TEST_F(TorqueCard, TheNextScrewIsTickedOnTheFlange) {
    take("T2");
    desk.click("flange/screw 1");
    ASSERT_EQ(ticked().size(), 1U);
    EXPECT_EQ(ticked()[0].screw, 1);
    EXPECT_NEAR(ticked()[0].torqueNm, 9.0 * 0.45, 1e-9);
    EXPECT_TRUE(ticked()[0].clockwise);
}

TEST_F(TorqueCard, AnotherScrewIsNotTickedAndTheNextOneIsNamed) {
    take("T2");
    desk.click("flange/screw 2");
    EXPECT_TRUE(ticked().empty());
    EXPECT_THAT(drafts().said, HasSubstr("screw 1 is next, at 45 %"));
}

TEST_F(TorqueCard, TheButtonTicksInTheOrderOfTheStar) {
    take("T2");
    for (int i = 0; i < 3; ++i) {
        desk.click("torque/tick");
        desk.frames(2);
    }
    ASSERT_EQ(ticked().size(), 3U);
    EXPECT_EQ(ticked()[1].screw, 4);
    EXPECT_EQ(ticked()[2].screw, 2);
}

TEST_F(TorqueCard, AWrenchThatIsTooSmallIsRefusedAndNothingIsTicked) {
    take("T4");
    desk.click("torque/Wrench");
    desk.frames(2);
    typeInto("wrench-max", "8");
    desk.click("torque/Tighten");
    desk.frames(2);
    desk.click("torque/tick");
    EXPECT_TRUE(ticked().empty());
    EXPECT_THAT(drafts().said, HasSubstr("wrench"));
}

TEST_F(TorqueCard, TheUnitIsTurnedWithWhatIsTyped) {
    take("T4");
    desk.click("torque/Wrench");
    desk.frames(2);
    typeInto("wrench-max", "50");
    desk.click("torque/lbf·ft");
    desk.frames(2);
    EXPECT_EQ(drafts().unit, TorqueUnit::PoundForceFoot);
    EXPECT_EQ(drafts().most, "36.878");
}

TEST_F(TorqueCard, ANutIsRunDownAndItsAngleIsAskedFor) {
    take("T3");
    for (int i = 0; i < 3; ++i) {
        desk.click("torque/tick");
        desk.frames(2);
    }
    ASSERT_EQ(ticked().size(), 3U);
    EXPECT_FALSE(ticked()[0].clockwise) << "left-hand";
    EXPECT_TRUE(ticked()[1].clockwise) << "slackened";
    desk.click("torque/tick");
    desk.frames(2);
    EXPECT_EQ(ticked().size(), 3U) << "no angle was typed";
    typeInto("angle-turned", "19");
    desk.click("torque/tick");
    desk.frames(2);
    ASSERT_EQ(ticked().size(), 4U);
    EXPECT_DOUBLE_EQ(ticked()[3].angle.value().value, 19.0);
}

TEST_F(TorqueCard, WhoWorksIsAskedAtTheBench) {
    take("T2", Use::Bench);
    desk.panels.drafts.box = Drafts::Box::None;
    desk.click("torque/tick");
    EXPECT_TRUE(ticked().empty());
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Who);
}

TEST_F(TorqueCard, TouchedAgainItBeginsAnewAfterAskingOnce) {
    take("T2");
    desk.click("torque/tick");
    desk.frames(2);
    desk.click("torque/Touched …");
    desk.frames(2);
    EXPECT_EQ(ticked().size(), 1U) << "the page only says what would follow";
    desk.click("torque/Yes, slackened");
    desk.frames(2);
    EXPECT_TRUE(ticked().empty());
}

TEST_F(TorqueCard, FlangesOfTheirOwnAreChosen) {
    take("T6");
    ASSERT_TRUE(desk.has("flange/oil drain"));
    desk.click("flange/oil drain");
    desk.frames(2);
    desk.click("flange/screw 1");
    ASSERT_EQ(ticked().size(), 1U);
    EXPECT_EQ(ticked()[0].group, 1);
}

TEST(TorqueCardFits, EveryTargetIsInsideTheWindowAndLargeAtTheBench) {
    const Desk::Size size{1366, 768};
    for (const char* fastener : {"T1", "T2", "T3", "T4", "T5", "T6"}) {
        Desk desk{size};
        desk.start("birch-150", Use::Bench);
        grant(desk.workplace, OpenFastener{FastenerId{fastener}});
        desk.frames(3);
        for (const Target& target : desk.panels.targets) {
            const bool own = target.name.starts_with("torque/") || target.name.starts_with("flange/");
            if (!own)
                continue;
            EXPECT_TRUE(inside(target.area, size)) << fastener << " " << target.name;
            EXPECT_GE(target.area.height, 59.5) << fastener << " " << target.name;
            EXPECT_GE(target.area.width, 59.5) << fastener << " " << target.name;
        }
    }
}

} // namespace gapwise::desk
