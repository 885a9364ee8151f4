#include "tests/viewer/panels/desk.h"

#include "viewer/dial/dial.h"
#include "viewer/panels/card.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

using desk::Desk;

void tapBareDial(Desk& desk, double degrees) {
    const Area dial = desk.areaOf("card/bare dial");
    ASSERT_FALSE(dial.empty());
    const double a = degrees * std::numbers::pi / 180.0;
    desk.clickAt(dial.middleX() + std::sin(a) * dial.width * 0.4,
                 dial.middleY() - std::cos(a) * dial.height * 0.4);
}

/// SR-CO lies in its seat, nothing is said of it; compressor end up, drain toward the person.
void begin(Desk& desk) {
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.at.place("SR-CO");
    desk.frames(2);
}

const SeatId kSeat = seatOf(PartId{"SR-CO"});

} // namespace

TEST(Saying, ARingInHandIsConfirmedInThreeTouches) {
    Desk desk;
    begin(desk);
    desk.click("compressor/seat-SR-CO");
    tapBareDial(desk, 90.0);
    desk.click("card/sharp");
    desk.click("card/Done");
    const Seating* seating = desk.build().in(kSeat);
    ASSERT_TRUE(seating->confirmed);
    EXPECT_EQ(seating->confirmed->said, Confirmation::Said::Before);
    EXPECT_NEAR(seating->index->from(Side::Compressor).value, 90.0, 1.5);
    EXPECT_EQ(seating->referenceFaceLooks, Side::Turbine);
    EXPECT_EQ(dialStateOf(desk.job(), kSeat).sign, DialSign::Holds);
}

TEST(Saying, NothingIsDemandedBeforeItIsSaid) {
    Desk desk;
    begin(desk);
    desk.click("compressor/seat-SR-CO");
    EXPECT_FALSE(demandShown(desk.job(), kSeat));
    tapBareDial(desk, 270.0);
    EXPECT_FALSE(demandShown(desk.job(), kSeat)) << "the face is not said yet";
    EXPECT_FALSE(desk.build().in(kSeat)->index);
    desk.click("card/sharp");
    EXPECT_FALSE(demandShown(desk.job(), kSeat)) << "it may still be put right";
    desk.click("card/Done");
    EXPECT_TRUE(demandShown(desk.job(), kSeat));
    EXPECT_EQ(dialStateOf(desk.job(), kSeat).sign, DialSign::Broken);
}

TEST(Saying, TheDialIsReadAsThePersonSeesIt) {
    Desk desk;
    begin(desk);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    desk.frame();
    desk.click("compressor/seat-SR-CO");
    tapBareDial(desk, 90.0);
    desk.click("card/rounded");
    desk.click("card/Done");
    EXPECT_NEAR(desk.build().in(kSeat)->index->from(Side::Compressor).value, 270.0, 1.5);
    EXPECT_EQ(desk.build().in(kSeat)->setIn, (View{Side::Compressor, Degrees{180.0}}));
}

TEST(Saying, LookingFirstIsOneTouchAndRecorded) {
    Desk desk;
    begin(desk);
    desk.click("compressor/seat-SR-CO");
    desk.click("card/Show the demand");
    EXPECT_TRUE(demandShown(desk.job(), kSeat));
    tapBareDial(desk, 90.0);
    desk.click("card/sharp");
    desk.click("card/Done");
    ASSERT_TRUE(desk.build().in(kSeat)->confirmed);
    EXPECT_EQ(desk.build().in(kSeat)->confirmed->said, Confirmation::Said::After);
}

// Drain away: what is printed at 3:00 lies at 9:00 as he stands. By the view formula θ_seen = φ + σθ.
TEST(Saying, TheDemandedClockIsToldAsThePersonStands) {
    Desk desk;
    begin(desk);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    desk.frame();
    EXPECT_FALSE(demandWordsOf(desk.job(), kSeat)) << "nothing was said yet";
    desk.click("compressor/seat-SR-CO");
    tapBareDial(desk, 90.0);
    desk.click("card/sharp");
    desk.click("card/Done");
    const auto demand = demandWordsOf(desk.job(), kSeat);
    ASSERT_TRUE(demand);
    EXPECT_EQ(demand->clock, "9:00");
    EXPECT_EQ(demand->stands, "as you stand: to your left");
    EXPECT_EQ(demand->printed, "printed: 3:00 from the compressor side, inlet on top");
}

TEST(Saying, DoneIsNothingBeforeAllIsTapped) {
    Desk desk;
    begin(desk);
    desk.click("compressor/seat-SR-CO");
    desk.click("card/Done");
    tapBareDial(desk, 90.0);
    desk.click("card/Done");
    EXPECT_FALSE(desk.build().in(kSeat)->confirmed);
    EXPECT_FALSE(desk.build().in(kSeat)->index);
}

TEST(Saying, AMistappedGapIsPutRightBeforeItIsSaid) {
    Desk desk;
    begin(desk);
    desk.click("compressor/seat-SR-CO");
    tapBareDial(desk, 270.0);
    tapBareDial(desk, 90.0);
    const Degrees tapped = *desk.panels.drafts.gapSeen;
    desk.type(">");
    desk.type(",");
    EXPECT_DOUBLE_EQ(desk.panels.drafts.gapSeen->value, tapped.value + 4.0);
    desk.click("card/rounded");
    desk.type("f");
    desk.type("y");
    ASSERT_TRUE(desk.build().in(kSeat)->confirmed);
    EXPECT_NEAR(desk.build().in(kSeat)->index->from(Side::Compressor).value, 94.0, 1.5);
    EXPECT_EQ(desk.build().in(kSeat)->referenceFaceLooks, Side::Turbine);
}

// Drain away: 3:00 with the inlet on top is on the person's left. By the view formula θ_seen = φ + σθ.
TEST(Saying, AClockTypedWithItsSideIsWhereItIsSeen) {
    Desk desk;
    begin(desk);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    desk.frame();
    desk.click("compressor/seat-SR-CO");
    desk.click("card/clock");
    desk.type("3:00 compressor");
    desk.key(ImGuiKey_Enter);
    ASSERT_TRUE(desk.panels.drafts.gapSeen);
    EXPECT_DOUBLE_EQ(desk.panels.drafts.gapSeen->value, 270.0);
}

TEST(Saying, TellsBackWhatWasTapped) {
    Desk desk;
    begin(desk);
    desk.click("compressor/seat-SR-CO");
    EXPECT_EQ(saidWords(desk.job(), kSeat, desk.panels.drafts),
              "Tap where you see the gap. Tap the face that you see. What is demanded comes after that.");
    tapBareDial(desk, 90.0);
    desk.click("card/sharp");
    EXPECT_EQ(saidWords(desk.job(), kSeat, desk.panels.drafts),
              "You see the gap to your right. You see the sharp face. Then press Done.");
}

TEST(Saying, APartWithoutGapAndFaceIsSaidToBeInItsPlace) {
    Desk desk;
    desk.start("alder-72-pinned", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.at.place("PIN-T");
    grant(desk.workplace, TakeInHand{PartId{"PIN-T"}});
    desk.frames(2);
    EXPECT_FALSE(desk.has("card/Done"));
    desk.click("card/It is in its place, fully home");
    EXPECT_TRUE(desk.build().of(PartId{"PIN-T"})->confirmed);
}

// Square to the axis nobody reads minutes: there only bench words are offered.
TEST(Saying, FromBesideOnlyBenchWordsAreTapped) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.at.place("PR-T1");
    desk.frames(2);
    desk.click("turbine/seat-PR-T1");
    tapBareDial(desk, 100.0);
    ASSERT_TRUE(desk.panels.drafts.gapSeen);
    EXPECT_DOUBLE_EQ(desk.panels.drafts.gapSeen->value, 90.0);
}

TEST(Saying, WhatCannotBeSeenFromHereIsNotSaid) {
    Desk desk;
    begin(desk);
    desk.at.place("BRG-T");
    desk.at.place("SR-TO");
    desk.at.place("SHIELD");
    desk.at.place("THRUST");
    desk.frame();
    desk.click("turbine/seat-SHIELD");
    tapBareDial(desk, 90.0);
    EXPECT_FALSE(desk.panels.drafts.gapSeen) << "the shield shows to the turbine side only";
}

TEST(Saying, ADraftOfOneRingIsNotSaidOfAnother) {
    Desk desk;
    begin(desk);
    desk.at.place("THRUST");
    desk.frame();
    desk.click("compressor/seat-SR-CO");
    tapBareDial(desk, 90.0);
    EXPECT_TRUE(desk.panels.drafts.gapSeen);
    desk.click("card/Close");
    desk.click("compressor/seat-THRUST");
    EXPECT_FALSE(desk.panels.drafts.gapSeen);
}

TEST(Saying, TheNextRingToSayIsOneTouchAway) {
    Desk desk;
    begin(desk);
    desk.click("notices/Say SR-CO");
    EXPECT_EQ(desk.job().inHand, PartId{"SR-CO"});
    tapBareDial(desk, 90.0);
    desk.click("card/sharp");
    desk.click("card/Done");
    desk.click("card/Close");
    EXPECT_TRUE(desk.areaOf("notices/Say SR-CO").empty()) << "it was said";
}

TEST(Saying, WhatIsOnRecordIsNotShownBeforeItIsSaid) {
    Desk desk;
    begin(desk);
    desk.at.point("SR-CO", Side::Compressor, 90.0);
    const auto shown = [&] {
        const EndDial dial = endDialOf(desk.job(), Side::Compressor);
        return std::ranges::find(dial.rings, kSeat, &DialRing::seat)->at;
    };
    EXPECT_FALSE(shown());
    desk.click("notices/Say SR-CO");
    tapBareDial(desk, 90.0);
    desk.click("card/sharp");
    desk.click("card/Done");
    EXPECT_TRUE(shown());
}

} // namespace gapwise
