#include "viewer/scene/seat_places.h"

#include "models/frame/read_frame.h"
#include "viewer/scene/scene_of.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace gapwise {

namespace {

using ::testing::UnorderedElementsAre;

Frame alder() {
    return readFrame(DataFolder{GAPWISE_TEST_SHARE}, "alder-72").value();
}

std::vector<std::string> seatsOf(const std::vector<SeatPlace>& places) {
    std::vector<std::string> seats;
    for (const SeatPlace& place : places)
        seats.push_back(place.seat.text);
    return seats;
}

const SeatPlace& placeOf(const std::vector<SeatPlace>& places, const char* seat) {
    return *std::ranges::find(places, SeatId{seat}, &SeatPlace::seat);
}

SceneCamera fromTheCompressor() {
    return {.camera = Camera{{0.0, 0.0, 1000.0}, {}, {0.0, 1.0, 0.0}}, .heightMm = 100.0};
}

} // namespace

// The four snap rings of the demo frame are of one type (invented): each groove takes each of them.
TEST(SeatPlaces, TheWrongGroovesAreAmongThem) {
    const Frame frame = alder();
    EXPECT_THAT(seatsOf(seatPlacesFor(frame, {}, {}, PartId{"SR-CO"})),
                UnorderedElementsAre("seat-SR-TI", "seat-SR-TO", "seat-SR-CI", "seat-SR-CO"));
}

TEST(SeatPlaces, ATakenSeatIsNotAmongThem) {
    const Frame frame = alder();
    const Build build{.seatings = {{.part = PartId{"SR-CI"}, .seat = SeatId{"seat-SR-CO"}}}};
    EXPECT_THAT(seatsOf(seatPlacesFor(frame, build, {}, PartId{"SR-CO"})),
                UnorderedElementsAre("seat-SR-TI", "seat-SR-TO", "seat-SR-CI"));
}

TEST(SeatPlaces, LieWhereTheirGroovesLie) {
    const Frame frame = alder();
    const auto places = seatPlacesFor(frame, {}, {}, PartId{"SR-CO"});
    const RingGroove& groove = *frame.seat(SeatId{"seat-SR-CO"})->groove;
    EXPECT_NEAR(placeOf(places, "seat-SR-CO").zMm, groove.z.middle(), 0.5);
    EXPECT_GT(placeOf(places, "seat-SR-CO").zMm, placeOf(places, "seat-SR-CI").zMm);
    EXPECT_GT(placeOf(places, "seat-SR-CI").zMm, placeOf(places, "seat-SR-TI").zMm);
}

TEST(SeatAt, ReadsTheClockOnTheCircle) {
    const std::vector<SeatPlace> places{{SeatId{"near"}, 5.0, 20.0}, {SeatId{"wide"}, 5.0, 40.0}};
    constexpr PictureSize kSize{500, 500}; // 5 pixels a millimetre.
    const auto hit = seatAt(places, fromTheCompressor(), kSize, {250.0 + 102.0, 250.0});
    ASSERT_TRUE(hit);
    EXPECT_EQ(hit->seat, SeatId{"near"});
    EXPECT_NEAR(hit->clock.from(Side::Compressor).value, 90.0, 0.5);
    EXPECT_NEAR(hit->pixels, 2.0, 1e-6);
}

TEST(SeatAt, NothingFarFromEveryCircle) {
    const std::vector<SeatPlace> places{{SeatId{"near"}, 5.0, 20.0}};
    EXPECT_FALSE(seatAt(places, fromTheCompressor(), {500, 500}, {250.0, 250.0}));
    EXPECT_FALSE(seatAt({}, fromTheCompressor(), {500, 500}, {350.0, 250.0}));
}

} // namespace gapwise
