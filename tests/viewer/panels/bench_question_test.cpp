#include "viewer/panels/bench_question.h"

#include "tests/viewer/panels/desk.h"
#include "viewer/panels/banner_words.h"

#include <gtest/gtest.h>

namespace gapwise {

using desk::Desk;

TEST(BenchQuestion, AtTheBenchItIsAskedFirstHowThePieceLies) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    EXPECT_TRUE(asksHowItLies(desk.job()));
    desk.click("drain/COMPRESSOR end up");
    desk.frame();
    desk.click("drain/TO YOUR LEFT");
    EXPECT_FALSE(asksHowItLies(desk.job()));
    EXPECT_EQ(desk.job().attitude(), uprightAttitude(Side::Compressor, Degrees{270.0}));
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::WhereIStand);
}

TEST(BenchQuestion, OfALevelPieceTheEndBeforeThePersonIsWhereHeStands) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.click("drain/LEVEL, turbine end");
    desk.frame();
    desk.click("drain/TO YOUR RIGHT");
    EXPECT_EQ(desk.job().attitude(), levelAttitude(Side::Turbine, Degrees{90.0}));
    EXPECT_EQ(desk.job().standingView().side, Side::Turbine);
}

TEST(BenchQuestion, WhatWasSaidOfTheEndCanBeTakenBack) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.click("drain/TURBINE end up");
    desk.frame();
    desk.click("drain/It lies otherwise");
    desk.frame();
    EXPECT_TRUE(desk.has("drain/COMPRESSOR end up"));
    EXPECT_FALSE(desk.job().state.build.attitude) << "nothing is said yet";
}

TEST(BenchQuestion, ItIsKeptUntilThePieceIsTurned) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.click("drain/COMPRESSOR end up");
    desk.frame();
    desk.click("drain/TOWARD YOU");
    desk.at.place("SR-CO");
    desk.frame();
    desk.click("compressor/seat-SR-CO");
    EXPECT_FALSE(asksHowItLies(desk.job()));
    desk.click("looks/tip sideways");
    EXPECT_TRUE(asksHowItLies(desk.job()));
    desk.frame();
    EXPECT_TRUE(desk.has("drain/TOWARD YOU"));
    EXPECT_FALSE(desk.has("drain/COMPRESSOR end up")) << "which end is up is known from the turn";
}

TEST(BenchQuestion, NothingIsSaidOfARingBefore) {
    Desk desk;
    desk.startSheet("alder-72-plate-on", Use::Bench);
    EXPECT_TRUE(asksHowItLies(desk.job())) << "the sheet's attitude was said of another day";
    grant(desk.workplace, TakeInHand{PartId{"SR-CO"}});
    desk.frames(2);
    EXPECT_FALSE(desk.has("card/bare dial"));
    EXPECT_FALSE(desk.has("card/Show the demand"));
}

TEST(BenchQuestion, ATurnByKeyDoesNotPassItBy) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.type("t");
    desk.frame();
    EXPECT_TRUE(desk.has("drain/COMPRESSOR end up"));
}

TEST(BenchQuestion, TheBannerClaimsNothingBefore) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    const BannerWords words = bannerWordsOf(desk.job());
    for (const std::string& told : {words.fromFar, words.bench, words.lying}) {
        EXPECT_EQ(told.find("drain"), std::string::npos) << told;
        EXPECT_EQ(told.find("level"), std::string::npos) << told;
    }
}

TEST(BenchQuestion, InPracticeOnlyATurnAsks) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    EXPECT_FALSE(asksHowItLies(desk.job()));
    desk.type("t");
    EXPECT_TRUE(asksHowItLies(desk.job()));
}

} // namespace gapwise
