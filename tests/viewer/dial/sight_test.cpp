#include "viewer/dial/dial.h"

#include "tests/viewer/workplace/at_hand.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

Sight sightOf(const AtHand& hand, const char* part) {
    return sightOf(hand.job().frame, hand.build(), seatOf(PartId{part}));
}

} // namespace

// An inner ring's back can be seen through the bore until the other bearing goes in: common practice, no
// source.
TEST(Sight, AnInnerRingIsSeenThroughTheBoreUntilTheOtherBearingIsIn) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-TI");
    EXPECT_EQ(sightOf(hand, "SR-TI"), Sight::Plain);
    hand.place("BRG-T");
    EXPECT_EQ(sightOf(hand, "SR-TI"), Sight::ThroughTheBore);
    hand.place("SR-CI");
    EXPECT_EQ(sightOf(hand, "SR-TI"), Sight::ThroughTheBore);
    hand.place("BRG-C");
    EXPECT_EQ(sightOf(hand, "SR-TI"), Sight::Hidden);
}

TEST(Sight, AnOuterRingIsInSightUntilTheRotorIsIn) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-TI");
    hand.place("BRG-T");
    hand.place("SR-TO");
    EXPECT_EQ(sightOf(hand, "SR-TO"), Sight::Plain);
    hand.place("ROTOR");
    EXPECT_EQ(sightOf(hand, "SR-TO"), Sight::Hidden);
}

TEST(Sight, ASealRingOnTheRotorIsSeenFromBesideUntilItEnters) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("PR-T1");
    EXPECT_EQ(sightOf(hand, "PR-T1"), Sight::FromBeside);
    hand.place("ROTOR");
    EXPECT_EQ(sightOf(hand, "PR-T1"), Sight::Hidden);
}

TEST(Sight, ABearingBehindAnInnerRingHidesNothingOfIt) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-TO");
    hand.place("SR-CO");
    EXPECT_EQ(sightOf(hand, "SR-CO"), Sight::Plain);
    hand.place("COLLAR-A");
    EXPECT_EQ(sightOf(hand, "SR-CO"), Sight::ThroughTheBore) << "its back, from the turbine end";
}

TEST(Sight, FromTheOtherEndOnlyARingInAGrooveShowsItsBack) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CI");
    hand.place("THRUST");
    const Frame& frame = hand.job().frame;
    EXPECT_TRUE(inSightFrom(frame, hand.build(), seatOf(PartId{"SR-CI"}), Side::Turbine));
    EXPECT_FALSE(inSightFrom(frame, hand.build(), seatOf(PartId{"THRUST"}), Side::Turbine));
    EXPECT_TRUE(inSightFrom(frame, hand.build(), seatOf(PartId{"THRUST"}), Side::Compressor));
}

TEST(Sight, HasAWordForEach) {
    EXPECT_EQ(wordOf(Sight::Plain), "in sight");
    EXPECT_EQ(wordOf(Sight::ThroughTheBore), "through the bore");
    EXPECT_EQ(wordOf(Sight::FromBeside), "from beside");
    EXPECT_EQ(wordOf(Sight::Hidden), "hidden");
}

TEST(Sight, ASeatThatTheFrameLacksIsHidden) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_EQ(sightOf(hand, "NOTHING"), Sight::Hidden);
}

} // namespace gapwise
