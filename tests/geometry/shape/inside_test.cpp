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
