#include "geometry/shape/shape.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

namespace gapwise {

namespace {

struct Exclusion {
    double width;
    double bore;
    double gap;
    double margin;
    double halfAngle;
};

} // namespace

// Exclusion half-angles of the demo frames: asin(w/D) + asin(g/D) + margin (arithmetic of invented sizes).
TEST(HalfAngle, ExclusionsOfTheDemoFrames) {
    constexpr std::array<Exclusion, 4> kExclusions{
        {{4, 19, 3.5, 10, 32.8}, {5, 19, 3.5, 10, 35.9}, {6, 38, 6, 10, 28.2}, {8, 38, 6, 10, 31.2}}};
    for (const Exclusion& e : kExclusions)
        EXPECT_NEAR(halfAngleOf(e.width, e.bore).value + halfAngleOf(e.gap, e.bore).value + e.margin,
                    e.halfAngle, 0.05);
}

TEST(HalfAngle, HalfOfWhatTheChordSubtends) {
    // A chord of width w on a circle of diameter D subtends 2·asin(w/D): geometry.
    for (const double degrees : {1.0, 10.6, 45.0, 89.0}) {
        const double width = 19.0 * std::sin(radians(Degrees{degrees}));
        EXPECT_NEAR(halfAngleOf(width, 19.0).value, degrees, 1e-9);
    }
    EXPECT_EQ(halfAngleOf(0.0, 19.0).value, 0.0);
    EXPECT_NEAR(halfAngleOf(19.0, 19.0).value, 90.0, 1e-9);
}

TEST(QuarterEllipse, RunsFromItsRimToItsEnd) {
    const QuarterEllipse rising{.r0 = 8.0, .r1 = 27.0, .z0 = 2.0, .z1 = 20.0};
    EXPECT_NEAR(rising.radiusAt(2.0), 35.0, 1e-12);
    EXPECT_NEAR(rising.radiusAt(22.0), 8.0, 1e-12);
    const QuarterEllipse falling{.r0 = 8.0, .r1 = 25.0, .z0 = -2.0, .z1 = -20.0};
    EXPECT_NEAR(falling.radiusAt(-22.0), 8.0, 1e-12);
    for (const double t : {10.0, 33.0, 60.0, 85.0}) {
        const double z = 2.0 + 20.0 * std::sin(radians(Degrees{t}));
        EXPECT_NEAR(rising.radiusAt(z), 8.0 + 27.0 * std::cos(radians(Degrees{t})), 1e-9);
    }
}

TEST(Extent, OfHolesSlotsAndSectors) {
    const Extent radial = extentOf(RadialHole{.diameterMm = 4.0, .r = {9.5, 30.0}, .zMm = -12.0});
    EXPECT_EQ(radial.z, (Span{-14.0, -10.0}));
    EXPECT_EQ(radial.r, (Span{9.5, 30.0}));
    EXPECT_EQ(radial.widthMm, 4.0);
    const Extent axial = extentOf(AxialHole{.diameterMm = 3.0, .circleRadiusMm = 20.0, .z = {0.0, 6.0}});
    EXPECT_EQ(axial.r, (Span{18.5, 21.5}));
    EXPECT_EQ(axial.z, (Span{0.0, 6.0}));
    const Extent slot = extentOf(Slot{.widthMm = 5.0, .r = {9.5, 14.0}, .z = {-8.4, -3.0}});
    EXPECT_EQ(slot.z, (Span{-8.4, -3.0}));
    EXPECT_EQ(slot.widthMm, 5.0);
    const Extent sector = extentOf(Sector{.angle = Degrees{60.0}, .r = {10.0, 12.0}, .z = {0.0, 1.0}});
    EXPECT_NEAR(sector.widthMm, 10.0, 1e-12); // The chord of 60° is the radius.
    const Extent groove = extentOf(Groove{.bore = {19.0, 19.0}, .outside = {20.4, 20.6}, .z = {-8.4, -7.3}});
    EXPECT_EQ(groove.r, (Span{9.5, 10.3}));
}

TEST(Extent, AnInclinedHoleReachesFromEndToEnd) {
    const Extent hole =
        extentOf(InclinedHole{.diameterMm = 2.0, .fromR = 30.0, .fromZ = -5.0, .toR = 9.5, .toZ = -15.0});
    EXPECT_EQ(hole.r, (Span{9.5, 30.0}));
    EXPECT_LE(hole.z.from, -15.0);
    EXPECT_GE(hole.z.to, -5.0);
    EXPECT_EQ(hole.widthMm, 2.0);
}

} // namespace gapwise
