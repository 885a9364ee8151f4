#include "models/procedure/flange.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::ElementsAre;

/// A frame with one set of screws at these clocks, as seen from the compressor side, and its washers.
Frame frameWith(std::initializer_list<double> clocks, Side headsLookTo = Side::Compressor) {
    Frame frame;
    PartType screw{.id = PartTypeId{"screw"}};
    screw.shape.threads.emplace_back();
    frame.types = {screw, {.id = PartTypeId{"washer"}}};
    Fastener fastener{.id = FastenerId{"T9"}, .handSeenFrom = headsLookTo};
    fastener.plan = TorquePlan{.groups = {{"", static_cast<int>(clocks.size())}}};
    int number = 0;
    for (const double clock : clocks)
        for (const char* type : {"washer", "screw"}) {
            const PartId id{type + std::to_string(number += type[0] == 'w' ? 1 : 0)};
            frame.parts.push_back({.id = id, .type = PartTypeId{type}, .fastener = fastener.id});
            frame.seats.push_back({.id = seatOf(id), .types = {PartTypeId{type}}});
            frame.seats.back().aside = Aside{30.0, Clock::seenFrom(Side::Compressor, Degrees{clock})};
        }
    frame.fasteners = {fastener};
    return frame;
}

std::vector<std::string> seatsOf(const FlangeGroup& group) {
    std::vector<std::string> seats;
    for (const FlangeScrew& screw : group.screws)
        seats.push_back(screw.seat.text);
    return seats;
}

Facing facing(Side headsLookTo, const Attitude& attitude, const Observer& observer = {}) {
    Fastener fastener;
    fastener.handSeenFrom = headsLookTo;
    return facingOf(fastener, attitude, observer);
}

const Attitude kCompressorUp = uprightAttitude(Side::Compressor, Degrees{180.0});
const Attitude kTurbineUp = uprightAttitude(Side::Turbine, Degrees{180.0});

} // namespace

TEST(Flange, ScrewsAreNumberedClockwiseFromTwelveOn) {
    const Frame frame = frameWith({150.0, 30.0, 270.0});
    const auto groups = flangeOf(frame, frame.fasteners[0]);
    ASSERT_EQ(groups.size(), 1U);
    EXPECT_TRUE(groups[0].drawn);
    EXPECT_THAT(seatsOf(groups[0]), ElementsAre("seat-screw2", "seat-screw1", "seat-screw3"))
        << "washers are not screwed";
    EXPECT_EQ(groups[0].screws[0].number, 1);
    EXPECT_DOUBLE_EQ(groups[0].screws[2].at.value, 270.0);
    EXPECT_DOUBLE_EQ(groups[0].screws[2].radiusMm, 30.0);
}

TEST(Flange, FromTheOtherSideTheNumbersRunTheOtherWay) {
    const Frame frame = frameWith({30.0, 150.0, 270.0}, Side::Turbine);
    const auto groups = flangeOf(frame, frame.fasteners[0]);
    EXPECT_THAT(seatsOf(groups[0]), ElementsAre("seat-screw3", "seat-screw2", "seat-screw1"));
    EXPECT_DOUBLE_EQ(groups[0].screws[0].at.value, 90.0) << "9 from the compressor side is 3 from here";
}

TEST(Flange, AGroupWithoutPiecesStandsInAnEvenRing) {
    const Frame frame = course::smallFrame();
    const auto groups = flangeOf(frame, frame.fasteners[0]);
    ASSERT_EQ(groups.size(), 2U);
    EXPECT_EQ(groups[0].name, "inlet");
    EXPECT_FALSE(groups[0].drawn);
    ASSERT_EQ(groups[0].screws.size(), 4U);
    EXPECT_DOUBLE_EQ(groups[0].screws[3].at.value, 270.0);
    EXPECT_TRUE(groups[0].screws[0].seat.empty());
    EXPECT_EQ(groups[1].screws.size(), 2U);
    EXPECT_TRUE(flangeOf(frame, Fastener{}).empty()) << "no plan";
}

TEST(Flange, FacedItIsWhatThePersonSeesBeforeHim) {
    const Facing before = facing(Side::Compressor, kCompressorUp);
    EXPECT_FALSE(before.fromBehind);
    EXPECT_DOUBLE_EQ(before.drainAt().value, 180.0) << "drain toward the person";
    EXPECT_DOUBLE_EQ(before.seen({.at = Degrees{90.0}}).value, 90.0);
    EXPECT_DOUBLE_EQ(before.towardYouAt().value, 180.0);
    const Facing turned = facing(Side::Compressor, uprightAttitude(Side::Compressor, Degrees{90.0}));
    EXPECT_DOUBLE_EQ(turned.inletAt().value, 270.0);
    EXPECT_DOUBLE_EQ(turned.seen({.at = Degrees{0.0}}).value, 270.0);
}

TEST(Flange, HeadsThatLookDownAreSeenFromBelowWithRightStillRight) {
    const Facing below = facing(Side::Compressor, kTurbineUp);
    EXPECT_TRUE(below.fromBehind);
    EXPECT_EQ(below.view.side, Side::Compressor);
    // Looking down on the turbine end, drain toward one, compressor 3:00 lies to the left.
    const Clock three = Clock::seenFrom(Side::Compressor, Degrees{90.0});
    EXPECT_DOUBLE_EQ(seenIn(viewFromFront(kTurbineUp), three).value, 270.0);
    EXPECT_DOUBLE_EQ(below.seen({.at = Degrees{90.0}}).value, 270.0) << "and to the left it stays";
    EXPECT_DOUBLE_EQ(below.drainAt().value, 0.0);
    EXPECT_DOUBLE_EQ(below.towardYouAt().value, 0.0) << "the drain points toward the person in both";
    EXPECT_THAT(facingWords(below), ::testing::HasSubstr("from below"));
}

TEST(Flange, ALevelPieceIsWalkedRound) {
    const Attitude level = levelAttitude(Side::Compressor, Degrees{180.0});
    const Facing other = facing(Side::Turbine, level);
    EXPECT_TRUE(other.fromBehind);
    EXPECT_DOUBLE_EQ(other.inletAt().value, 0.0);
    EXPECT_THAT(facingWords(other), ::testing::HasSubstr("walk round"));
    EXPECT_FALSE(facing(Side::Turbine, level, {.levelSide = Side::Turbine}).fromBehind);
}

} // namespace gapwise
