#include "tests/viewer/panels/desk.h"

#include "viewer/panels/banner_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace gapwise {

using desk::Desk;

TEST(LookPanel, EachLookIsOneTouch) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.click("looks/Compressor side");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::FromCompressor);
    desk.click("looks/Turbine side");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::FromTurbine);
    desk.click("looks/From where I stand");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::WhereIStand);
    desk.click("looks/Both ends");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::BothEnds);
    desk.click("looks/Beside");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::Beside);
}

TEST(LookPanel, WalkingMovesTheEyeAndLeavesThePiece) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.frame();
    const Attitude before = desk.job().attitude();
    desk.click("looks/to the left");
    EXPECT_DOUBLE_EQ(desk.job().standpoint.observer.stand.value, 90.0);
    EXPECT_EQ(desk.job().attitude(), before);
    EXPECT_TRUE(std::holds_alternative<LookAgain>(desk.wishes.back()));
}

TEST(LookPanel, TurningMovesThePieceAndAsksForTheDrain) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.frame();
    desk.click("looks/tip sideways");
    EXPECT_EQ(desk.job().attitude().up, EndUp::Turbine);
    EXPECT_FALSE(desk.job().state.attitudeConfirmed);
    EXPECT_TRUE(desk.has("drain/TOWARD YOU"));
    EXPECT_TRUE(desk.has("drain/AWAY FROM YOU"));
    EXPECT_TRUE(desk.has("drain/TO YOUR LEFT"));
    EXPECT_TRUE(desk.has("drain/TO YOUR RIGHT"));
}

TEST(LookPanel, AnsweringTheDrainConfirmsTheAttitude) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.frame();
    desk.click("looks/tip toward me");
    desk.click("drain/TO YOUR RIGHT");
    EXPECT_TRUE(desk.job().state.attitudeConfirmed);
    EXPECT_DOUBLE_EQ(desk.job().attitude().drain.value, 90.0);
    EXPECT_FALSE(desk.has("drain/TO YOUR RIGHT"));
}

// The attitude is kept as seen from the front of the bench: upright φ = ψ + 180 - stand.
TEST(LookPanel, TheDrainIsAnsweredFromWhereThePersonStands) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    Standpoint standpoint = desk.job().standpoint;
    standpoint.observer.stand = Degrees{90.0};
    grant(desk.workplace, LookAgain{standpoint});
    grant(desk.workplace, TurnPiece{TurningMove::Rolled});
    desk.frames(2);
    desk.click("drain/TOWARD YOU");
    const Degrees seen = wrapped(desk.job().standingView().top + Degrees{180.0});
    EXPECT_DOUBLE_EQ(seen.value, 180.0);
}

TEST(LookPanel, TheDrainOfALevelPieceIsUpOrDown) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{levelAttitude(Side::Compressor, Degrees{180.0}), true});
    Standpoint standpoint = desk.job().standpoint;
    standpoint.observer.levelSide = Side::Turbine;
    grant(desk.workplace, LookAgain{standpoint});
    grant(desk.workplace, TurnPiece{TurningMove::Rolled});
    desk.frames(2);
    desk.click("drain/TO YOUR LEFT");
    const Degrees seen = wrapped(desk.job().standingView().top + Degrees{180.0});
    EXPECT_DOUBLE_EQ(seen.value, 270.0);
}

TEST(LookPanel, PullingTheSliderPullsApart) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    const Area rail = desk.areaOf("pull apart/rail");
    ASSERT_FALSE(rail.empty());
    desk.moveTo(rail.middleX(), rail.bottom() - 2.0);
    desk.press();
    desk.moveTo(rail.middleX(), rail.middleY());
    desk.frame();
    desk.release();
    EXPECT_NEAR(desk.job().standpoint.pulledApart, 0.5, 0.02);
}

TEST(Banner, SaysFromWhereOneLooksAndWhereTheDrainIs) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{0.0}), true});
    desk.click("looks/Compressor side");
    const BannerWords words = bannerWordsOf(desk.job());
    EXPECT_EQ(words.look, "You look from the COMPRESSOR side");
    EXPECT_EQ(words.bench, "On the bench: turbine end up, drain away from you");
    EXPECT_EQ(words.fromFar, "COMPRESSOR side · drain away from you");
    EXPECT_THAT(words.job, testing::HasSubstr("Alder-72"));
    EXPECT_EQ(words.warning, "");
    EXPECT_THAT(words.notice, testing::HasSubstr("not for work on a machine"));
}

// Reading errors of oblique looks: camera.h; 35° off the axis is more than the 15° that are let pass.
TEST(Banner, WarnsOfAnObliqueLook) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.click("looks/From where I stand");
    EXPECT_THAT(bannerWordsOf(desk.job()).warning, testing::HasSubstr("oblique"));
    desk.click("looks/Beside");
    EXPECT_EQ(bannerWordsOf(desk.job()).warning, "");
    EXPECT_THAT(bannerWordsOf(desk.job()).hint, testing::HasSubstr("dials"));
}

TEST(Banner, SaysThatADrainIsOnlyBelieved) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    grant(desk.workplace, TurnPiece{TurningMove::Rolled});
    EXPECT_THAT(bannerWordsOf(desk.job()).bench, testing::EndsWith("(?)"));
    EXPECT_THAT(bannerWordsOf(desk.job()).warning, testing::HasSubstr("drain"));
}

TEST(Banner, UndoAndRedo) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    desk.frame();
    desk.click("banner/Undo");
    EXPECT_EQ(desk.build().seatings.size(), 0U);
    desk.click("banner/Redo");
    EXPECT_EQ(desk.build().seatings.size(), 1U);
}

} // namespace gapwise
