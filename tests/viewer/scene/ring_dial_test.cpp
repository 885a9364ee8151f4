#include "viewer/scene/ring_dial.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

Vec3 hourOf(const RingDial& dial, int hour) {
    const auto found = std::ranges::find(dial.hours, hour, &RingDial::Hour::hour);
    return found == dial.hours.end() ? Vec3{} : found->at;
}

} // namespace

// Right of someone who looks from the compressor side is +X; from the turbine side it is -X.
TEST(RingDial, ThreeIsToTheRightOfWhoeverLooks) {
    for (const auto& [side, sign] : {std::pair{Side::Compressor, 1.0}, std::pair{Side::Turbine, -1.0}}) {
        const RingDial dial = ringDialOf({.zMm = 4.0, .seenFrom = side});
        EXPECT_GT(hourOf(dial, 3).x * sign, 10.0);
        EXPECT_GT(hourOf(dial, 12).y, 10.0);
        EXPECT_DOUBLE_EQ(hourOf(dial, 3).z, 4.0);
    }
}

TEST(RingDial, TwelveIsTheTopOfWhatCarriesTheRing) {
    const RingDial dial = ringDialOf({.top = Clock::seenFrom(Side::Compressor, Degrees{90.0})});
    EXPECT_GT(hourOf(dial, 12).x, 10.0);
    EXPECT_NEAR(hourOf(dial, 12).y, 0.0, 1e-9);
}

TEST(RingDial, TheWindowCoversItsArcOutsideTheRing) {
    const RingDial dial = ringDialOf({.ringRadiusMm = 20.0, .windows = {Arc{Degrees{60.0}, Degrees{40.0}}}});
    ASSERT_EQ(dial.windows.size(), 1U);
    EXPECT_NEAR(clockOf(dial.windows[0].front()).from(Side::Compressor).value, 60.0, 1e-9);
    EXPECT_NEAR(clockOf(dial.windows[0].back()).from(Side::Compressor).value, 100.0, 1e-9);
    for (const Vec3& point : dial.windows[0])
        EXPECT_GT(std::hypot(point.x, point.y), 20.0);
}

TEST(RingDial, AGapThatIsNotKnownIsNotDrawn) {
    EXPECT_TRUE(ringDialOf({}).gap.empty());
    const RingDial dial = ringDialOf({.gap = Clock::seenFrom(Side::Turbine, Degrees{90.0})});
    ASSERT_EQ(dial.gap.size(), 2U);
    EXPECT_NEAR(clockOf(dial.gap[1]).from(Side::Turbine).value, 90.0, 1e-9);
}

} // namespace gapwise
