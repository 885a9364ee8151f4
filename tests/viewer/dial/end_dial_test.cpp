#include "viewer/dial/dial.h"

#include "tests/viewer/workplace/at_hand.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace gapwise {

namespace {

using testing::ElementsAre;

std::vector<std::string> namesOn(const EndDial& dial) {
    std::vector<std::string> names;
    for (const DialRing& ring : dial.rings)
        names.push_back(ring.part.text);
    return names;
}

DialRing ringOf(const AtHand& hand, Side side, const char* part) {
    const EndDial dial = endDialOf(hand.job(), side);
    const auto found = std::ranges::find(dial.rings, seatOf(PartId{part}), &DialRing::seat);
    EXPECT_NE(found, dial.rings.end()) << part;
    return found == dial.rings.end() ? DialRing{} : *found;
}

bool allows(const DialRing& ring, double degrees) {
    return std::ranges::any_of(ring.windows, [&](const Arc& arc) { return arc.contains(Degrees{degrees}); });
}

} // namespace

// The order along the shaft: invented sizes of the demo frame.
TEST(EndDial, RingsStandNearestFirst) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_THAT(namesOn(endDialOf(hand.job(), Side::Turbine)),
                ElementsAre("SHIELD", "PR-T1", "SR-TO", "SR-TI"));
    EXPECT_THAT(namesOn(endDialOf(hand.job(), Side::Compressor)),
                ElementsAre("PLATE", "PR-C1", "DEFLECTOR", "RETAINER", "THRUST", "SR-CO", "SR-CI"));
}

TEST(EndDial, ShowsAClockAsSeenFromItsOwnSide) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-TO");
    hand.point("SR-TO", Side::Compressor, 270.0);
    const DialRing ring = ringOf(hand, Side::Turbine, "SR-TO");
    ASSERT_TRUE(ring.at);
    EXPECT_DOUBLE_EQ(ring.at->value, 90.0);
    EXPECT_DOUBLE_EQ(ring.drawnAt.value, 90.0);
}

TEST(EndDial, AGapThatNobodySetIsDrawnSomewhereButNotShown) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CO");
    const DialRing ring = ringOf(hand, Side::Compressor, "SR-CO");
    EXPECT_TRUE(ring.filled);
    EXPECT_FALSE(ring.at);
    EXPECT_EQ(ring.state.sign, DialSign::NotSet);
    EXPECT_EQ(ring.state.word, "not set");
    EXPECT_DOUBLE_EQ(ring.drawnAt.value, ringOf(hand, Side::Compressor, "SR-CO").drawnAt.value);
}

// Rule SR-TO.gap of the demo frame: right, seen from the turbine side, ± 30 (invented).
TEST(EndDial, DemandedWindowComesOnlyAfterATry) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-TO");
    EXPECT_TRUE(ringOf(hand, Side::Turbine, "SR-TO").windows.empty());
    hand.point("SR-TO", Side::Turbine, 200.0);
    const DialRing ring = ringOf(hand, Side::Turbine, "SR-TO");
    EXPECT_TRUE(allows(ring, 90.0));
    EXPECT_TRUE(allows(ring, 61.0));
    EXPECT_FALSE(allows(ring, 59.0));
    EXPECT_FALSE(allows(ring, 270.0));
}

TEST(EndDial, APlaceWithoutAPartIsEmpty) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const DialRing ring = ringOf(hand, Side::Compressor, "SR-CI");
    EXPECT_FALSE(ring.filled);
    EXPECT_EQ(ring.state.sign, DialSign::Empty);
    EXPECT_EQ(ring.state.word, "not placed");
}

TEST(EndDial, StateHasSignAndWord) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CO");
    hand.point("SR-CO", Side::Compressor, 270.0);
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.sign, DialSign::Broken);
    hand.point("SR-CO", Side::Compressor, 90.0);
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.word, "face not set");
    hand.face("SR-CO", Side::Turbine);
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.sign, DialSign::Holds);
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.word, "holds");
}

TEST(EndDial, ARingInAnothersGrooveStandsInThatGroove) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.placeIn("SR-CI", "SR-CO");
    const DialRing ring = ringOf(hand, Side::Compressor, "SR-CO");
    EXPECT_EQ(ring.part.text, "SR-CI");
    EXPECT_FALSE(ringOf(hand, Side::Compressor, "SR-CI").filled);
}

TEST(EndDial, WhileItIsTurnedAGapIsNotJudgedInPractice) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CO");
    hand.point("SR-CO", Side::Compressor, 90.0);
    grant(hand.workplace,
          Turning{seatOf(PartId{"SR-CO"}), Clock::seenFrom(Side::Compressor, Degrees{200.0})});
    const DialRing ring = ringOf(hand, Side::Compressor, "SR-CO");
    EXPECT_EQ(ring.state.sign, DialSign::Turning);
    EXPECT_TRUE(ring.windows.empty());
    ASSERT_TRUE(ring.at);
    EXPECT_DOUBLE_EQ(ring.at->value, 200.0);
}

TEST(EndDial, BeforeOthersItIsJudgedWhileItTurns) {
    AtHand hand;
    hand.start("alder-72", Use::Show);
    hand.place("SR-CO");
    hand.point("SR-CO", Side::Compressor, 90.0);
    hand.face("SR-CO", Side::Turbine);
    grant(hand.workplace,
          Turning{seatOf(PartId{"SR-CO"}), Clock::seenFrom(Side::Compressor, Degrees{200.0})});
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.sign, DialSign::Broken);
    grant(hand.workplace,
          Turning{seatOf(PartId{"SR-CO"}), Clock::seenFrom(Side::Compressor, Degrees{100.0})});
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.sign, DialSign::Holds);
}

TEST(EndDial, AtTheBenchNothingIsDemandedBeforeItWasSaid) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    hand.place("SR-CO");
    hand.point("SR-CO", Side::Compressor, 270.0);
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.sign, DialSign::Unsaid);
    EXPECT_TRUE(ringOf(hand, Side::Compressor, "SR-CO").windows.empty());
    grant(hand.workplace, SaySeen{.seat = seatOf(PartId{"SR-CO"}), .gapSeen = Degrees{270.0}});
    EXPECT_EQ(ringOf(hand, Side::Compressor, "SR-CO").state.sign, DialSign::Broken);
    EXPECT_TRUE(allows(ringOf(hand, Side::Compressor, "SR-CO"), 90.0));
}

// By the view formula: with the drain at the person's right the top is at his left.
TEST(EndDial, ArrowShowsWhereThePersonStands) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    EXPECT_DOUBLE_EQ(endDialOf(hand.job(), Side::Compressor).arrowAt.value, 180.0);
    EXPECT_DOUBLE_EQ(endDialOf(hand.job(), Side::Turbine).arrowAt.value, 180.0);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{90.0}), true});
    EXPECT_DOUBLE_EQ(endDialOf(hand.job(), Side::Compressor).arrowAt.value, 270.0);
    EXPECT_DOUBLE_EQ(endDialOf(hand.job(), Side::Turbine).arrowAt.value, 90.0);
    EXPECT_EQ(endDialOf(hand.job(), Side::Turbine).arrowWord, "you stand here");
}

TEST(EndDial, ArrowOfALevelPieceIsAtTheBench) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.act(AttitudeChanged{levelAttitude(Side::Turbine, Degrees{0.0}), true});
    const EndDial dial = endDialOf(hand.job(), Side::Turbine);
    EXPECT_EQ(dial.arrowWord, "bench");
    EXPECT_DOUBLE_EQ(dial.arrowAt.value, 0.0);
}

TEST(EndDial, ArrowIsOnlyBelievedAfterATurn) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_FALSE(endDialOf(hand.job(), Side::Turbine).arrowBelieved);
    grant(hand.workplace, TurnPiece{TurningMove::TippedOver});
    EXPECT_TRUE(endDialOf(hand.job(), Side::Turbine).arrowBelieved);
}

// A plate one hole off carries the gap along: common practice, no source.
TEST(EndDial, APlateOneHoleOffCarriesTheGapAlong) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Show);
    hand.point("PR-C1", Side::Compressor, 10.0);
    hand.point("PLATE", Side::Compressor, 60.0);
    const DialRing ring = ringOf(hand, Side::Compressor, "PR-C1");
    ASSERT_TRUE(ring.at);
    EXPECT_NEAR(ring.at->value, 70.0, 1e-9);
}

TEST(EndDial, PointingOnTheDialUndoesWhatCarries) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Show);
    hand.point("PLATE", Side::Compressor, 60.0);
    const SeatId seat = seatOf(PartId{"PR-C1"});
    const Clock index = indexFor(hand.job(), seat, Clock::seenFrom(Side::Compressor, Degrees{15.0}));
    hand.act(IndexTurned{seat, index, std::nullopt});
    EXPECT_NEAR(ringOf(hand, Side::Compressor, "PR-C1").at->value, 15.0, 1e-9);
}

// Gaps of the two rings of Birch-150 are 180 ± 20 apart (invented).
TEST(EndDial, TheSecondOfTwoRingsIsDemandedByTheFirst) {
    AtHand hand;
    hand.start("birch-150", Use::Practise);
    hand.place("PR-T1");
    hand.place("PR-T2");
    hand.point("PR-T1", Side::Turbine, 270.0);
    hand.point("PR-T2", Side::Turbine, 270.0);
    const DialRing second = ringOf(hand, Side::Turbine, "PR-T2");
    EXPECT_TRUE(allows(second, 90.0));
    EXPECT_FALSE(allows(second, 270.0));
}

TEST(EndDial, ANotchIsDemandedWhereItsPinIs) {
    AtHand hand;
    hand.start("alder-72-pinned", Use::Practise);
    hand.place("PIN-C");
    hand.place("BRG-C");
    hand.point("BRG-C", Side::Compressor, 90.0);
    const DialRing ring = ringOf(hand, Side::Compressor, "BRG-C");
    EXPECT_EQ(ring.index, IndexKind::Notch);
    EXPECT_TRUE(allows(ring, 180.0));
    EXPECT_FALSE(allows(ring, 90.0));
}

TEST(EndDial, WhatNobodySetCarriesAQuestionMark) {
    for (const Use use : {Use::Practise, Use::Bench, Use::Show}) {
        AtHand hand;
        hand.start("alder-72", use);
        EXPECT_EQ(signAtIndex(ringOf(hand, Side::Compressor, "SR-CO")), DialSign::Empty);
        hand.place("SR-CO");
        EXPECT_EQ(signAtIndex(ringOf(hand, Side::Compressor, "SR-CO")), DialSign::NotSet);
        hand.point("SR-CO", Side::Compressor, 270.0);
        const DialRing ring = ringOf(hand, Side::Compressor, "SR-CO");
        // At the bench what is on record is not shown before it is said.
        EXPECT_EQ(signAtIndex(ring), use == Use::Bench ? DialSign::NotSet : ring.state.sign);
    }
}

TEST(EndDial, EveryFrameHasBothDials) {
    for (const char* frame : {"alder-72", "alder-72-pinned", "birch-150"}) {
        AtHand hand;
        hand.start(frame, Use::Show);
        for (const Side side : {Side::Compressor, Side::Turbine}) {
            const EndDial dial = endDialOf(hand.job(), side);
            EXPECT_GE(dial.rings.size(), 3U) << frame;
            EXPECT_LE(dial.rings.size(), 8U) << frame;
        }
    }
}

} // namespace gapwise
