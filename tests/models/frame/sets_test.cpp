#include "models/frame/sets.h"

#include "models/access/access.h"
#include "models/frame/read_frame.h"
#include "models/job/log.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;

Frame alder() {
    Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, "alder-72");
    EXPECT_TRUE(frame);
    return frame ? std::move(frame).value() : Frame{};
}

PartPlaced placed(const char* part) {
    return {.part = PartId{part}, .seat = seatOf(PartId{part})};
}

Build with(const Frame& frame, std::initializer_list<const char*> parts) {
    Build build;
    for (const char* part : parts)
        build = withEvent(frame, std::move(build), placed(part));
    return build;
}

} // namespace

TEST(Sets, ScrewsAndTheirWashersAreSetsOfTheirOwn) {
    const Frame frame = alder();
    EXPECT_THAT(piecesOf(frame, PartId{"T2-4"}), SizeIs(6));
    EXPECT_THAT(piecesOf(frame, PartId{"W2-1"}), SizeIs(6));
    EXPECT_EQ(piecesOf(frame, PartId{"T2-4"}).front(), PartId{"T2-1"});
    EXPECT_EQ(piecesOf(frame, PartId{"SR-CO"}), std::vector{PartId{"SR-CO"}});
}

TEST(Sets, AreNamedByTheirFastener) {
    const Frame frame = alder();
    EXPECT_EQ(setNameOf(frame, PartId{"T1-2"}), "T1 × 3");
    EXPECT_EQ(setNameOf(frame, PartId{"SR-CO"}), "SR-CO");
}

TEST(Sets, GoInTogetherAndComeOutTogether) {
    const Frame frame = alder();
    const Build screwed = with(frame, {"RETAINER", "T1-1"});
    for (const char* part : {"T1-1", "T1-2", "T1-3"})
        EXPECT_NE(screwed.of(PartId{part}), nullptr) << part;
    const Build off = withEvent(frame, screwed, PartTakenOff{SeatId{"seat-T1-2"}});
    EXPECT_THAT(off.seatings, SizeIs(1));
}

// Common practice, no source: the deflector covers the thrust screws, the wheel those of the seal plate.
TEST(Sets, AScrewIsShutInByWhatCoversIt) {
    const Frame frame = alder();
    const auto inTheWay = [&](std::initializer_list<const char*> standing, const char* part) {
        return blockersOf(frame, with(frame, standing), PartId{part}, seatOf(PartId{part}));
    };
    EXPECT_THAT(inTheWay({"RETAINER", "THRUST"}, "T1-1"), IsEmpty());
    EXPECT_THAT(inTheWay({"DEFLECTOR"}, "T1-1"), Not(IsEmpty()));
    EXPECT_THAT(inTheWay({"PLATE", "W2-1"}, "T2-1"), IsEmpty());
    EXPECT_THAT(inTheWay({"PLATE", "WHEEL"}, "T2-1"), Not(IsEmpty()));
    EXPECT_THAT(inTheWay({"PLATE", "T2-1"}, "W2-1"), Not(IsEmpty()));
    EXPECT_THAT(inTheWay({"T1-1"}, "RETAINER"), Not(IsEmpty()));
}

// The shroud follows the blades with half a millimetre between: it goes over them, and the shim does not go
// under it.
TEST(Sets, TheCoverPassesTheWheelItShrouds) {
    const Frame frame = alder();
    const PartId cover{"COVER"};
    EXPECT_THAT(blockersOf(frame, with(frame, {"PLATE", "WHEEL", "NUT", "SHIM"}), cover, seatOf(cover)),
                IsEmpty());
    EXPECT_THAT(blockersOf(frame, with(frame, {"COVER"}), PartId{"WHEEL"}, SeatId{"seat-WHEEL"}),
                Not(IsEmpty()));
    EXPECT_THAT(blockersOf(frame, with(frame, {"COVER"}), PartId{"SHIM"}, SeatId{"seat-SHIM"}),
                Not(IsEmpty()));
}

} // namespace gapwise
