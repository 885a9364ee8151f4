#include "models/torque/turning.h"

#include <gtest/gtest.h>

namespace gapwise::test {

namespace {

constexpr FacedThread kLeftNutAtTheNose{ThreadHand::Left, Side::Compressor};

/// Which way a person sees it turn who looks along −axis, told by the screw thread alone: positive turns (by
/// the right-hand rule about an axis) look counter-clockwise to whom the axis points at.
Sense seenBy(Side side, double turnAboutZ) {
    const bool towardMe = (side == Side::Compressor) == (turnAboutZ > 0.0);
    return towardMe ? Sense::CounterClockwise : Sense::Clockwise;
}

} // namespace

// Thread convention (TQ-29); that a left-hand shaft nut tightens counter-clockwise to whoever faces it is
// common practice, no source.
TEST(Tightening, RightHandIsClockwiseAndLeftHandCounterClockwiseAsFaced) {
    EXPECT_EQ(tighteningAsFaced(ThreadHand::Right), Sense::Clockwise);
    EXPECT_EQ(tighteningAsFaced(ThreadHand::Left), Sense::CounterClockwise);
}

TEST(Tightening, FromBehindItIsTheOtherWayAbout) {
    EXPECT_EQ(tighteningSeenFrom(kLeftNutAtTheNose, Side::Compressor), Sense::CounterClockwise);
    EXPECT_EQ(tighteningSeenFrom(kLeftNutAtTheNose, Side::Turbine), Sense::Clockwise);
    const FacedThread turbineScrew{ThreadHand::Right, Side::Turbine};
    EXPECT_EQ(tighteningSeenFrom(turbineScrew, Side::Turbine), Sense::Clockwise);
    EXPECT_EQ(tighteningSeenFrom(turbineScrew, Side::Compressor), Sense::CounterClockwise);
}

// A second way to the same answer: a nut tightens while it travels away from its outer face, and the travel
// follows from the helix by the right-hand rule (TQ-30).
TEST(Tightening, AgreesWithTheTravelOfTheHelix) {
    for (const ThreadHand hand : {ThreadHand::Right, ThreadHand::Left})
        for (const Side looksTo : {Side::Compressor, Side::Turbine})
            for (const Side seenFrom : {Side::Compressor, Side::Turbine}) {
                const MetricThread thread{.diameterMm = 8.0, .pitchMm = 1.0, .hand = hand};
                const double forward = axialTravelMm(thread, Degrees{90.0});
                const double wanted = -signOf(looksTo); // +Z is toward the compressor
                const double turnAboutZ = forward * wanted > 0.0 ? 90.0 : -90.0;
                EXPECT_EQ(tighteningSeenFrom({hand, looksTo}, seenFrom), seenBy(seenFrom, turnAboutZ));
            }
}

// Common practice: the drag of the wheel tightens the nut, so nut and shaft turn against each other.
TEST(Tightening, TheShaftNutTightensAgainstTheRotation) {
    EXPECT_EQ(handForRotation(Sense::Clockwise), ThreadHand::Left);
    EXPECT_EQ(handForRotation(Sense::CounterClockwise), ThreadHand::Right);
    EXPECT_TRUE(fitsRotation(ThreadHand::Left, Sense::Clockwise));
    EXPECT_FALSE(fitsRotation(ThreadHand::Right, Sense::Clockwise));
}

TEST(Tightening, HandAndSenseTellEachOther) {
    for (const ThreadHand hand : {ThreadHand::Right, ThreadHand::Left})
        EXPECT_EQ(handThatTightens(tighteningAsFaced(hand)), hand);
}

TEST(Tightening, IsSaidAsThePersonStands) {
    EXPECT_EQ(turningWords(kLeftNutAtTheNose, Side::Compressor), "counter-clockwise as you face the nut");
    EXPECT_EQ(turningWords(kLeftNutAtTheNose, Side::Turbine),
              "clockwise seen from the turbine side, from behind the nut");
    EXPECT_EQ(turningWords({ThreadHand::Right, Side::Turbine}, Side::Turbine, "head"),
              "clockwise as you face the head");
}

TEST(Tightening, HasAWordForPeopleAndOneForFiles) {
    EXPECT_EQ(nameOf(Sense::CounterClockwise), "counter-clockwise");
    EXPECT_EQ(keyOf(Sense::CounterClockwise), "counter_clockwise");
    EXPECT_EQ(nameOf(opposite(Sense::CounterClockwise)), "clockwise");
    EXPECT_EQ(keyOf(opposite(Sense::CounterClockwise)), "clockwise");
}

} // namespace gapwise::test
