#include "geometry/shape/inside.h"

#include "tests/support/shapes.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace gapwise::test {

namespace {

constexpr double kPi = std::numbers::pi;
const Shape kPlain = ringShape(10.0, 20.0, {0.0, 5.0});

/// A point on a radius, `clockwise` degrees from +Y looking at +Z.
Vec3 at(double clockwise, double r, double z) {
    const double turn = clockwise * kPi / 180.0;
    return {r * std::sin(turn), r * std::cos(turn), z};
}

} // namespace

TEST(InsideShape, RingHoldsWhatLiesBetweenItsDiameters) {
    EXPECT_TRUE(isInside(kPlain, at(123.0, 7.5, 2.0)));
    EXPECT_FALSE(isInside(kPlain, at(123.0, 4.9, 2.0)));
    EXPECT_FALSE(isInside(kPlain, at(123.0, 10.1, 2.0)));
    EXPECT_FALSE(isInside(kPlain, at(123.0, 7.5, 5.1)));
}

TEST(InsideShape, OffsetsRunClockwiseLookingAtTheReferenceFace) {
    const Shape holed = with(kPlain, cutting(AxialHole{2.0, 7.5, {-1.0, 6.0}}, 90.0));
    EXPECT_FALSE(isInside(holed, {7.5, 0.0, 2.0}));
    EXPECT_TRUE(isInside(holed, {-7.5, 0.0, 2.0}));
}

TEST(InsideShape, FeaturesAreMadeInTheirOrder) {
    const Slot slot{2.0, {5.0, 12.0}, {0.0, 5.0}};
    EXPECT_TRUE(isInside(with(with(kPlain, cutting(slot)), adding(slot)), at(0.0, 11.0, 2.0)));
    EXPECT_FALSE(isInside(with(with(kPlain, adding(slot)), cutting(slot)), at(0.0, 11.0, 2.0)));
}

TEST(InsideShape, CountSpreadsOverTheCircle) {
    const Shape holed = with(kPlain, cutting(AxialHole{1.0, 7.5, {-1.0, 6.0}}, 10.0, 4));
    for (const double clockwise : {10.0, 100.0, 190.0, 280.0})
        EXPECT_FALSE(isInside(holed, at(clockwise, 7.5, 2.0)));
    EXPECT_TRUE(isInside(holed, at(55.0, 7.5, 2.0)));
}

TEST(InsideShape, HexagonHasACornerAtTheIndex) {
    Shape nut = ringShape(0.0, 20.0, {0.0, 5.0});
    nut.rings[0].outside = AcrossFlats{10.0};
    EXPECT_TRUE(isInside(nut, {0.0, 5.7, 2.0}));
    EXPECT_FALSE(isInside(nut, {5.1, 0.0, 2.0}));
}

TEST(InsideShape, InclinedHoleRunsFromPointToPoint) {
    const Shape holed = with(kPlain, cutting(InclinedHole{1.0, 6.0, 1.0, 9.0, 4.0}));
    EXPECT_FALSE(isInside(holed, at(0.0, 7.5, 2.5)));
    EXPECT_TRUE(isInside(holed, at(0.0, 7.5, 4.0)));
    EXPECT_TRUE(isInside(holed, at(0.0, 9.5, 4.5)));
}

TEST(InsideShape, SectorAndGrooveFollowTheCircle) {
    const Shape open = with(kPlain, cutting(Sector{Degrees{60.0}, {0.0, 11.0}, {-1.0, 6.0}}, 180.0));
    EXPECT_FALSE(isInside(open, at(209.0, 7.5, 2.0)));
    EXPECT_TRUE(isInside(open, at(211.0, 7.5, 2.0)));
    const Shape grooved = with(kPlain, cutting(Groove{{18.0, 18.0}, {21.0, 21.0}, {2.0, 3.0}}));
    EXPECT_FALSE(isInside(grooved, at(77.0, 9.5, 2.5)));
    EXPECT_TRUE(isInside(grooved, at(77.0, 8.5, 2.5)));
}

TEST(InsideShape, HexagonalHoleTurnsACornerOutward) {
    const Shape plate = ringShape(0.0, 40.0, {0.0, 5.0});
    const Shape holed = with(plate, cutting(HexHole{6.0, 12.0, {-1.0, 6.0}}, 90.0));
    const double corner = 6.0 / std::sqrt(3.0);
    EXPECT_FALSE(isInside(holed, {12.0 + corner - 0.01, 0.0, 2.0}));
    EXPECT_TRUE(isInside(holed, {12.0 + corner + 0.01, 0.0, 2.0}));
    EXPECT_FALSE(isInside(holed, {12.0, 2.99, 2.0}));
    EXPECT_TRUE(isInside(holed, {12.0, 3.01, 2.0}));
}

// The inner end of the middle line stands 20° clockwise of the outer one.
TEST(InsideShape, VaneLeadsInwardClockwise) {
    const Shape vaned = with(ringShape(0.0, 20.0, {0.0, 5.0}),
                             adding(Vane{2.0, {15.0, 25.0}, Degrees{20.0}, {0.0, 5.0}}, 40.0));
    EXPECT_TRUE(isInside(vaned, at(60.0, 15.1, 2.0)));
    EXPECT_TRUE(isInside(vaned, at(40.0, 24.9, 2.0)));
    EXPECT_FALSE(isInside(vaned, at(40.0, 15.1, 2.0)));
    EXPECT_FALSE(isInside(vaned, at(20.0, 15.1, 2.0)));
    EXPECT_FALSE(isInside(vaned, at(40.0, 24.9, 5.1)));
}

// Clockwise looking at the reference face: to the right of a radius that points up.
TEST(InsideShape, AsideIsClockwiseOfTheRadius) {
    const Shape body = ringShape(0.0, 40.0, {0.0, 10.0});
    const Shape drilled = with(body, cutting(RadialHole{2.0, {0.0, 25.0}, 5.0, 6.0}));
    EXPECT_FALSE(isInside(drilled, {6.0, 10.0, 5.0}));
    EXPECT_TRUE(isInside(drilled, {-6.0, 10.0, 5.0}));
    EXPECT_TRUE(isInside(drilled, {0.0, 10.0, 5.0}));
    const Shape slotted = with(body, cutting(Slot{2.0, {0.0, 25.0}, {4.0, 6.0}, 6.0}, 90.0));
    EXPECT_FALSE(isInside(slotted, {10.0, -6.0, 5.0}));
    EXPECT_TRUE(isInside(slotted, {10.0, 6.0, 5.0}));
}

TEST(InsideShape, TubeHoldsWhatStandsBesideItsRadius) {
    const Shape body = ringShape(10.0, 40.0, {0.0, 10.0});
    const Shape padded = with(body, adding(Slot{4.0, {15.0, 25.0}, {-2.0, 8.0}, -6.0}));
    EXPECT_NEAR(tubeAround(padded).r.to, std::hypot(25.0, 8.0), 1e-12);
    EXPECT_EQ(tubeAround(padded).z, (Span{-2.0, 10.0}));
}

// A gasket: one block far off the axis, drilled. π/4·d² off the plate, over its thickness.
TEST(InsideShape, CountsPartsWithoutRings) {
    Shape gasket = with(Shape{}, adding(Slot{44.0, {50.0, 50.8}, {-15.0, 15.0}}, 180.0));
    gasket = with(gasket, cutting(RadialHole{12.0, {49.0, 52.0}, 0.0}, 180.0));
    gasket = with(gasket, cutting(RadialHole{9.0, {49.0, 52.0}, 0.0, 17.0}, 180.0));
    const double area = 44.0 * 30.0 - kPi / 4.0 * (144.0 + 81.0);
    EXPECT_NEAR(countedVolume(gasket, 60000), area * 0.8, 0.003 * area * 0.8);
    EXPECT_NEAR(tubeAround(gasket).r.from, 50.0, 1e-12);
    EXPECT_EQ(tubeAround(gasket).z, (Span{-15.0, 15.0}));
}

TEST(InsideShape, SteppedJointOpensClockwiseTowardTheReferenceFace) {
    const Shape joint = with(kPlain, cutting(SteppedJoint{0.4, 2.0}));
    EXPECT_FALSE(isInside(joint, {1.0, 7.0, 4.0}));
    EXPECT_TRUE(isInside(joint, {1.0, 7.0, 1.0}));
    EXPECT_FALSE(isInside(joint, {-1.0, 7.0, 1.0}));
    EXPECT_TRUE(isInside(joint, {0.0, -7.0, 1.0}));
}

// Ring volume: π/4·(D² - d²)·h.
TEST(CountedVolume, MeetsTheClosedFormWithinHalfAPerCent) {
    const double exact = kPi / 4.0 * (400.0 - 100.0) * 5.0;
    EXPECT_NEAR(countedVolume(with(kPlain, adding(Slot{2.0, {9.0, 15.0}, {0.0, 5.0}})), 100000),
                exact + 50.167, 0.005 * exact);
    EXPECT_NEAR(countedVolume(kPlain, 1000), exact, 1e-9 * exact); // the tube about it is the ring itself
}

TEST(TubeAroundShape, TakesInWhatIsAdded) {
    const Tube tube = tubeAround(with(kPlain, adding(Slot{6.0, {9.0, 15.0}, {-2.0, 3.0}})));
    EXPECT_DOUBLE_EQ(tube.r.from, 5.0);
    EXPECT_DOUBLE_EQ(tube.r.to, std::hypot(15.0, 3.0));
    EXPECT_DOUBLE_EQ(tube.z.from, -2.0);
    EXPECT_DOUBLE_EQ(tube.z.to, 5.0);
}

} // namespace gapwise::test
