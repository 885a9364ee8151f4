#include "models/access/outline.h"

#include "tests/support/shapes.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace gapwise::test {

namespace {

/// Volume of what the slabs cover; they do not overlap here.
double volumeOf(const std::vector<Slab>& slabs) {
    double volume = 0.0;
    for (const auto& [r, z] : slabs)
        volume += std::numbers::pi * (r.to * r.to - r.from * r.from) * z.length();
    return volume;
}

bool covers(const std::vector<Slab>& slabs, double r, double z) {
    for (const Slab& slab : slabs)
        if (r > slab.radius.from && r < slab.radius.to && z > slab.z.from && z < slab.z.to)
            return true;
    return false;
}

std::vector<Slab> slabs(const Shape& shape, Side looks = Side::Compressor) {
    PartType type;
    type.shape = shape;
    Seat seat;
    seat.zMm = 100.0;
    return slabsOf(type, seat, looks);
}

const Shape kDisc = ringShape(20.0, 60.0, {0.0, 30.0});

} // namespace

// A recess turned out of a disc: bores pass what its blank would stop.
TEST(PartOutline, GroovesAreTurnedOutOfIt) {
    const auto recessed = slabs(with(kDisc, cutting(Groove{{10.0, 10.0}, {40.0, 40.0}, {20.0, 31.0}})));
    EXPECT_FALSE(covers(recessed, 15.0, 125.0));
    EXPECT_TRUE(covers(recessed, 25.0, 125.0));
    EXPECT_TRUE(covers(recessed, 15.0, 115.0));
    EXPECT_NEAR(volumeOf(recessed), std::numbers::pi * (800.0 * 30.0 - 300.0 * 10.0), 1e-6);
}

TEST(PartOutline, GrooveInsideLeavesMaterialAllRoundIt) {
    const auto hollow = slabs(with(kDisc, cutting(Groove{{30.0, 30.0}, {50.0, 50.0}, {10.0, 20.0}})));
    EXPECT_NEAR(volumeOf(hollow), std::numbers::pi * (800.0 * 30.0 - 400.0 * 10.0), 1e-6);
    EXPECT_FALSE(covers(hollow, 20.0, 115.0));
    EXPECT_TRUE(covers(hollow, 20.0, 105.0));
    EXPECT_TRUE(covers(hollow, 12.0, 115.0));
    EXPECT_TRUE(covers(hollow, 28.0, 115.0));
}

// A conical groove takes off only what it takes everywhere along it.
TEST(PartOutline, ConicalGrooveCountsWhereItIsNarrow) {
    const auto tapered = slabs(with(kDisc, cutting(Groove{{10.0, 10.0}, {30.0, 50.0}, {20.0, 31.0}})));
    EXPECT_FALSE(covers(tapered, 14.0, 125.0));
    EXPECT_TRUE(covers(tapered, 16.0, 125.0));
}

TEST(PartOutline, FollowsThePartTurnedAbout) {
    const auto turned =
        slabs(with(kDisc, cutting(Groove{{10.0, 10.0}, {40.0, 40.0}, {20.0, 31.0}})), Side::Turbine);
    EXPECT_FALSE(covers(turned, 15.0, 75.0));
    EXPECT_TRUE(covers(turned, 15.0, 85.0));
}

// Drillings and slots do not go round: nothing passes them.
TEST(PartOutline, OtherCutsLeaveItWhole) {
    EXPECT_EQ(slabs(with(kDisc, cutting(Slot{5.0, {5.0, 40.0}, {10.0, 20.0}}))).size(), 1U);
}

} // namespace gapwise::test
