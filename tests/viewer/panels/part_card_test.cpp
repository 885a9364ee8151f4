#include "tests/viewer/panels/desk.h"

#include "viewer/panels/card.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

namespace {

using desk::Desk;

const Seating* seatingOf(const Desk& desk, const char* part) {
    return desk.build().of(PartId{part});
}

/// SR-CO seated, in hand, the piece on its turbine end with the drain away.
void holdSrCo(Desk& desk) {
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    desk.at.place("SR-CO");
    grant(desk.workplace, TakeInHand{PartId{"SR-CO"}});
    desk.frames(2);
}

} // namespace

TEST(PartCard, APartFromTheTrayAsksWhereItGoes) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.click("tray/SR-CO");
    ASSERT_TRUE(desk.job().inHand);
    desk.click("card/Seat of SR-CO: outer snap ring of the compressor bearing");
    const PartPlaced* placed = desk.lastAct<PartPlaced>();
    ASSERT_NE(placed, nullptr);
    EXPECT_EQ(placed->seat.text, "seat-SR-CO");
    EXPECT_FALSE(placed->index) << "from the tray nothing is known";
    EXPECT_FALSE(placed->referenceFaceLooks);
}

TEST(PartCard, ADoubleTapOnTheTrayFillsNoSeat) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.click("tray/SR-CO");
    const Area seat = desk.areaOf("card/Seat of SR-CO: outer snap ring of the compressor bearing");
    ASSERT_FALSE(seat.empty());
    desk.frames(60);
    desk.moveTo(seat.middleX(), seat.middleY());
    // The first tap was here too, a moment ago.
    ImGuiIO& io = ImGui::GetIO();
    io.MouseClickedTime[0] = ImGui::GetTime();
    io.MouseClickedPos[0] = io.MousePos;
    io.MouseClickedLastCount[0] = 1;
    desk.press();
    desk.release();
    EXPECT_EQ(seatingOf(desk, "SR-CO"), nullptr) << "the second half of a double tap";
    desk.frames(60);
    desk.clickAt(seat.middleX(), seat.middleY());
    EXPECT_NE(seatingOf(desk, "SR-CO"), nullptr) << "a tap of its own";
}

TEST(PartCard, ADirectionIsNeverCutOff) {
    Desk desk;
    holdSrCo(desk);
    ImFont* font = desk.panels.fonts.small;
    for (double seen = 0.0; seen < 360.0; seen += 45.0) {
        const EndUp up = desk.job().attitude().up;
        EXPECT_EQ(directionIn(1000.0, desk.job(), Degrees{seen}, font), benchPhrase(Degrees{seen}, up));
        EXPECT_EQ(directionIn(20.0, desk.job(), Degrees{seen}, font), benchWord(Degrees{seen}, up));
    }
}

TEST(PartCard, ALookAlikeCanGoIntoAnyOfTheirSeats) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.click("tray/SR-CO");
    for (const char* target : {"card/Seat of SR-TI: inner snap ring of the turbine bearing",
                               "card/Seat of SR-TO: outer snap ring of the turbine bearing",
                               "card/Seat of SR-CI: inner snap ring of the compressor bearing"})
        EXPECT_TRUE(desk.has(target)) << target;
    EXPECT_FALSE(desk.has("card/Seat of BRG-C: compressor-end bearing"));
}

// Drain away: the person's 3:00 is the housing's 9:00. By the view formula θ_seen = φ + σθ.
TEST(PartCard, AClockAsISeeItIsTurnedAndItsViewKept) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/3");
    const Seating* seating = seatingOf(desk, "SR-CO");
    ASSERT_TRUE(seating->index);
    EXPECT_DOUBLE_EQ(seating->index->from(Side::Compressor).value, 270.0);
    EXPECT_EQ(seating->setIn, (View{Side::Compressor, Degrees{180.0}}));
    EXPECT_EQ(dialStateOf(desk.job(), seating->seat).sign, DialSign::Broken);
}

TEST(PartCard, AClockWithInletOnTopIsTakenAsPrinted) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/from compressor");
    desk.click("card/3");
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Compressor).value, 90.0);
    desk.click("card/from turbine");
    desk.click("card/3");
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Turbine).value, 90.0);
    EXPECT_EQ(seatingOf(desk, "SR-CO")->setIn, inletOnTop(Side::Turbine));
}

TEST(PartCard, ATypedClockIsSetByEnter) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/from compressor");
    desk.click("card/clock");
    desk.type("4:30");
    desk.key(ImGuiKey_Enter);
    ASSERT_TRUE(seatingOf(desk, "SR-CO")->index);
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Compressor).value, 135.0);
}

TEST(PartCard, SmallTurnsAreClockwiseAsSeen) {
    Desk desk;
    holdSrCo(desk);
    desk.at.point("SR-CO", Side::Compressor, 90.0);
    desk.frame();
    desk.click("card/↻ 5°");
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Compressor).value, 95.0);
    desk.click("card/from turbine");
    desk.click("card/↻ 1°");
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Compressor).value, 94.0);
    desk.type(">");
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Compressor).value, 89.0);
    desk.type(",");
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Compressor).value, 90.0);
}

TEST(PartCard, LettersTypedIntoAFieldAreNoKeys) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/clock");
    desk.type("f");
    EXPECT_FALSE(seatingOf(desk, "SR-CO")->referenceFaceLooks);
    EXPECT_TRUE(desk.wishes.empty());
}

TEST(PartCard, TheFaceIsChosenByItsPicture) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/sharp");
    EXPECT_EQ(seatingOf(desk, "SR-CO")->referenceFaceLooks, Side::Turbine)
        << "the rounded one looks away from the eye";
    desk.click("card/rounded");
    EXPECT_EQ(seatingOf(desk, "SR-CO")->referenceFaceLooks, Side::Compressor);
    desk.type("f");
    EXPECT_EQ(seatingOf(desk, "SR-CO")->referenceFaceLooks, Side::Turbine);
}

// Rounded toward the bearing, which lies behind the outer ring: so the sharp face is seen. Common practice,
// no source.
TEST(PartCard, SaysWhichFaceMustBeVisibleAfterATry) {
    Desk desk;
    holdSrCo(desk);
    desk.at.point("SR-CO", Side::Compressor, 90.0);
    EXPECT_TRUE(facesOf(desk.job(), seatOf(PartId{"SR-CO"}))->must.empty());
    desk.at.face("SR-CO", Side::Compressor);
    const auto faces = facesOf(desk.job(), seatOf(PartId{"SR-CO"}));
    ASSERT_TRUE(faces);
    EXPECT_EQ(faces->mustBeReference, false);
    EXPECT_EQ(faces->must, "From the compressor side you must see the sharp face.");
    EXPECT_THAT(std::string{faces->test}, testing::HasSubstr("fingernail"));
}

TEST(PartCard, InPracticeAFaceIsTriedBeforeItIsTold) {
    Desk desk;
    holdSrCo(desk);
    desk.at.point("SR-CO", Side::Compressor, 90.0);
    const SeatId seat = seatOf(PartId{"SR-CO"});
    EXPECT_TRUE(toldFindingsOf(desk.job(), seat).empty());
    EXPECT_EQ(dialStateOf(desk.job(), seat).word, "face not set");
    desk.at.face("SR-CO", Side::Compressor);
    EXPECT_FALSE(toldFindingsOf(desk.job(), seat).empty());
}

TEST(PartCard, TakesOffAndCloses) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/Take off");
    EXPECT_EQ(seatingOf(desk, "SR-CO"), nullptr);
    EXPECT_TRUE(desk.job().inHand) << "it is still in hand";
    desk.click("card/Close");
    EXPECT_FALSE(desk.job().inHand);
}

TEST(PartCard, ConfirmsWhatHoldsAndGoesOn) {
    Desk desk;
    holdSrCo(desk);
    desk.at.point("SR-CO", Side::Compressor, 90.0);
    desk.at.face("SR-CO", Side::Turbine);
    desk.frame();
    desk.click("card/I looked: it is so");
    EXPECT_TRUE(seatingOf(desk, "SR-CO")->confirmed);
    desk.click("card/Next: " + partsOnTray(desk.job()).front().text);
    EXPECT_NE(desk.job().inHand->text, "SR-CO");
}

TEST(TypedClock, TakesWhatPeopleType) {
    EXPECT_DOUBLE_EQ(typedClock("3:00")->clock.value, 90.0);
    EXPECT_DOUBLE_EQ(typedClock(" 12 ")->clock.value, 0.0);
    EXPECT_DOUBLE_EQ(typedClock("90deg")->clock.value, 90.0);
    EXPECT_FALSE(typedClock("3:00")->side);
    for (const char* none : {"", " ", "13:00", "left", "99", "3:00 left", "3:00 3:00"})
        EXPECT_FALSE(typedClock(none)) << none;
}

TEST(TypedClock, TakesTheSideWithIt) {
    EXPECT_EQ(typedClock("3:00 turbine")->side, Side::Turbine);
    EXPECT_EQ(typedClock("3 c")->side, Side::Compressor);
    EXPECT_EQ(typedClock(" 9:30  from compressor ")->side, Side::Compressor);
    EXPECT_DOUBLE_EQ(typedClock("9:30 from turbine")->clock.value, 285.0);
}

TEST(PartCard, ASideThatIsTypedGoesBeforeTheOneThatIsChosen) {
    Desk desk;
    holdSrCo(desk);
    desk.click("card/from compressor");
    desk.click("card/clock");
    desk.type("3:00 turbine");
    desk.key(ImGuiKey_Enter);
    ASSERT_TRUE(seatingOf(desk, "SR-CO")->index);
    EXPECT_DOUBLE_EQ(seatingOf(desk, "SR-CO")->index->from(Side::Turbine).value, 90.0);
    EXPECT_EQ(seatingOf(desk, "SR-CO")->setIn, inletOnTop(Side::Turbine));
}

TEST(GapWords, SayAClockFromBothSidesAndOnTheBench) {
    Desk desk;
    holdSrCo(desk);
    desk.at.point("SR-CO", Side::Compressor, 90.0);
    const auto words = gapWordsOf(desk.job(), seatOf(PartId{"SR-CO"}));
    ASSERT_TRUE(words);
    EXPECT_EQ(words->own, "3:00 from the compressor side");
    EXPECT_EQ(words->other, "9:00 from the turbine side");
    EXPECT_EQ(words->bench, "bench: to your left") << "the drain is away";
    EXPECT_EQ(words->from, "");
}

// From beside on the upright shaft a gap that points away is behind the part. From memory.
TEST(GapWords, SayThatAGapBehindTheShaftIsHidden) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.at.place("PR-T1");
    desk.at.point("PR-T1", Side::Turbine, 0.0);
    const auto words = gapWordsOf(desk.job(), seatOf(PartId{"PR-T1"}));
    ASSERT_TRUE(words);
    EXPECT_THAT(words->bench, testing::HasSubstr("hidden behind"));
    EXPECT_EQ(words->from, "read from the mark of ROTOR");
}

TEST(Tray, OffersPartsInOrderOfAssemblyWithTheLookAlikes) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    std::vector<std::string> names;
    for (const Target& target : desk.panels.targets)
        if (target.name.starts_with("tray/") && desk.job().frame.part(PartId{target.name.substr(5)}))
            names.push_back(target.name.substr(5));
    ASSERT_GE(names.size(), 12U);
    EXPECT_EQ(names.front(), "SR-TI");
    EXPECT_THAT(names, testing::IsSupersetOf({"SR-TI", "SR-TO", "SR-CI", "SR-CO"}));
    desk.at.place("SR-TI");
    desk.frame();
    EXPECT_FALSE(desk.has("tray/SR-TI"));
}

} // namespace gapwise
