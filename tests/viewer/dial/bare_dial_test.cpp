#include "viewer/dial/dial.h"

#include "tests/viewer/workplace/at_hand.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace gapwise {

namespace {

BareDial dialOf(const AtHand& hand, const char* part) {
    return bareDialOf(hand.job(), seatOf(PartId{part}));
}

} // namespace

// Bench words of an upright piece: common practice, no source.
TEST(BareDial, IsDrawnAsThePersonSeesThePiece) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    hand.place("SR-CO");
    const BareDial dial = dialOf(hand, "SR-CO");
    EXPECT_EQ(dial.view.side, Side::Compressor);
    EXPECT_THAT(dial.words, testing::ElementsAre("away", "right", "toward you", "left"));
    EXPECT_DOUBLE_EQ(dial.drainAt.value, 0.0);
    EXPECT_DOUBLE_EQ(dial.inletAt.value, 180.0);
    EXPECT_TRUE(dial.unseen.empty());
}

TEST(BareDial, WalkingRoundTurnsTheDialNotThePiece) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    hand.place("SR-CO");
    Standpoint standpoint = hand.job().standpoint;
    standpoint.observer.stand = Degrees{90.0};
    grant(hand.workplace, LookAgain{standpoint});
    EXPECT_DOUBLE_EQ(dialOf(hand, "SR-CO").drainAt.value, 90.0);
    EXPECT_DOUBLE_EQ(hand.job().attitude().drain.value, 180.0);
}

TEST(BareDial, LevelWordsAreUpAndDown) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{levelAttitude(Side::Compressor, Degrees{180.0}), true});
    hand.place("SR-CO");
    EXPECT_THAT(dialOf(hand, "SR-CO").words, testing::ElementsAre("up", "right", "down", "left"));
}

TEST(BareDial, SaysWhyARingCannotBeSeenFromHere) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    hand.place("SR-TI");
    hand.place("BRG-T");
    hand.place("SR-TO");
    hand.place("SHIELD");
    EXPECT_TRUE(dialOf(hand, "SR-TI").unseen.empty()) << "through the bore";
    EXPECT_THAT(dialOf(hand, "SR-TO").unseen, testing::HasSubstr("turbine side"));
    hand.place("BRG-C");
    EXPECT_THAT(dialOf(hand, "SR-TI").unseen, testing::HasSubstr("any more"));
}

TEST(BareDial, WhatAnotherPartCarriesIsHeldAsItGoesIn) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    hand.place("PR-T1");
    const BareDial dial = dialOf(hand, "PR-T1");
    EXPECT_TRUE(dial.fromBeside);
    EXPECT_EQ(dial.heldOn.text, "ROTOR");
}

} // namespace gapwise
