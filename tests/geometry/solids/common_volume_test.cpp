#include "geometry/solids/common_volume.h"

#include "geometry/shape/inside.h"
#include "tests/geometry/solids/built.h"
#include "tests/support/shapes.h"

#include <array>

namespace gapwise::test {

namespace {

Solid solid(const Shape& shape) {
    Result<Solid> made = solidOf(shape, "shape");
    EXPECT_TRUE(made) << (made ? "" : describe(made.errors()[0]));
    return std::move(made).value();
}

double shared(const Shape& first, const Pose& firstPose, const Shape& second, const Pose& secondPose) {
    const Result<double> volume = commonVolumeMm3(solid(first), firstPose, solid(second), secondPose);
    EXPECT_TRUE(volume) << (volume ? "" : describe(volume.errors()[0]));
    return volume ? volume.value() : -1.0;
}

Pose at(double z, double x = 0.0) {
    return {.shift = {x, 0.0, z}};
}

/// Turned about its own Y, as a part is that looks the other way.
Pose facedAbout(double z) {
    return {{-1.0, 0.0, 0.0}, {0.0, 1.0, 0.0}, {0.0, 0.0, -1.0}, {0.0, 0.0, z}};
}

/// The shared volume counted point by point in a box, from the numbers alone.
double counted(const Shape& first, const Pose& firstPose, const Shape& second, const Pose& secondPose,
               const Bounds& box) {
    constexpr int kPoints = 200000;
    const Vec3 size = box.high - box.low;
    const auto own = [](const Pose& pose, const Vec3& p) {
        const Vec3 from = p - pose.shift;
        return Vec3{dot(from, pose.xAxis), dot(from, pose.yAxis), dot(from, pose.zAxis)};
    };
    int inside = 0;
    for (int i = 0; i < kPoints; ++i) {
        const Vec3 p =
            box.low + Vec3{size.x * std::fmod(i * 0.7548776662466927, 1.0),
                           size.y * std::fmod(i * 0.5698402909980532, 1.0), size.z * (i + 0.5) / kPoints};
        inside += isInside(first, own(firstPose, p)) && isInside(second, own(secondPose, p)) ? 1 : 0;
    }
    return size.x * size.y * size.z * inside / kPoints;
}

const Shape kPin = ringShape(0.0, 10.0, {0.0, 20.0});
const Shape kRing = ringShape(10.0, 20.0, {0.0, 5.0});

} // namespace

TEST(CommonVolume, NothingIsSharedWherePartsOnlyTouch) {
    EXPECT_DOUBLE_EQ(shared(kPin, at(0.0), kRing, at(3.0)), 0.0);   // round in round of the same size
    EXPECT_DOUBLE_EQ(shared(kRing, at(0.0), kRing, at(5.0)), 0.0);  // face on face
    EXPECT_DOUBLE_EQ(shared(kPin, at(0.0), kRing, at(100.0)), 0.0); // far apart
    EXPECT_DOUBLE_EQ(shared(kRing, facedAbout(5.0), kRing, at(5.0)), 0.0);
}

TEST(CommonVolume, PressFitSharesItsInterference) {
    const Shape pressed = ringShape(9.98, 20.0, {0.0, 5.0});
    EXPECT_NEAR(shared(kPin, at(0.0), pressed, at(3.0)), ringVolume(9.98, 10.0, 5.0), 1e-4);
}

TEST(CommonVolume, FollowsThePoses) {
    EXPECT_NEAR(shared(kPin, at(0.0), kPin, at(18.0)), ringVolume(0.0, 10.0, 2.0), 1e-3);
    EXPECT_NEAR(shared(kPin, at(0.0), kPin, facedAbout(18.0)), ringVolume(0.0, 10.0, 18.0), 1e-3);
    // Two circles of radius 5, 6 apart: 2·r²·acos(d/2r) - d/2·√(4r² - d²).
    const double lens = 2.0 * 25.0 * std::acos(0.6) - 3.0 * std::sqrt(100.0 - 36.0);
    EXPECT_NEAR(shared(kPin, at(0.0), kPin, at(0.0, 6.0)), lens * 20.0, 1e-2);
}

TEST(CommonVolume, AWholePartInsideAnotherIsAllShared) {
    const Shape block = ringShape(0.0, 40.0, {0.0, 40.0});
    EXPECT_NEAR(shared(block, at(0.0), kPin, at(10.0)), ringVolume(0.0, 10.0, 20.0), 1e-2);
}

// What the library gives against what is counted from the numbers, for parts with holes, slots and pads.
TEST(CommonVolume, AgreesWithPointsCountedFromTheNumbers) {
    Shape housing = ringShape(20.0, 60.0, {0.0, 30.0});
    housing = with(housing, adding(Slot{20.0, {20.0, 35.0}, {5.0, 25.0}}));
    housing = with(housing, cutting(RadialHole{8.0, {5.0, 40.0}, 15.0}));
    housing = with(housing, cutting(AxialHole{4.0, 20.0, {-1.0, 20.0}}, 0.0, 6));
    Shape ring = ringShape(18.0, 24.0, {0.0, 6.0});
    ring = with(ring, cutting(Slot{5.0, {5.0, 15.0}, {-1.0, 7.0}}));
    Shape screw = ringShape(0.0, 5.0, {0.0, 12.0});
    screw.rings.push_back(gapwise::test::ring(0.0, 9.0, {12.0, 16.0}));
    struct Pair {
        const Shape& second;
        Pose pose;
    };
    const std::array<Pair, 4> pairs{Pair{ring, at(12.0)}, Pair{ring, facedAbout(4.0)},
                                    Pair{screw, {.shift = {0.0, 20.0, 20.0}}},
                                    Pair{screw, {.shift = {22.0, 0.0, 20.0}}}};
    for (const auto& [second, pose] : pairs) {
        const double exact = shared(housing, at(0.0), second, pose);
        const double points = counted(housing, at(0.0), second, pose, boundsOf(solid(second), pose));
        EXPECT_GT(exact, 10.0);
        EXPECT_NEAR(points, exact, 0.01 * exact);
    }
}

// A blade is sunk 1 mm into its hub; a ring that the blades just clear shares nothing, a narrower one does.
TEST(CommonVolume, BladesCount) {
    Shape wheel = ringShape(8.0, 72.0, {19.62, 20.9});
    const QuarterEllipse hub{36.0, -27.6, 45.0, -24.1};
    wheel.rings.push_back({Diameter{8.0, 8.0}, hub, {20.9, 45.0}});
    wheel.blades = {{6, 0.9, Degrees{0.0}, Degrees{45.0}, 20.9, 45.0, 1.0, hub,
                     QuarterEllipse{36.0, -10.43, 36.0, -10.53}, std::nullopt}};
    EXPECT_DOUBLE_EQ(shared(wheel, at(0.0), ringShape(52.0, 60.0, {36.0, 50.0}), at(0.0)), 0.0);
    // Ø50.14 to the tips at Ø51.14, over 9 mm: six blades, as thick as the lean makes them across,
    // less what straight pieces stray inward between their stations: at most 0.02 mm.
    const double across = 0.9 * std::hypot(1.0, 25.32 * kPi / 4.0 / 24.1);
    EXPECT_NEAR(shared(wheel, at(0.0), ringShape(50.14, 60.0, {36.0, 50.0}), at(0.0)),
                6.0 * across * 0.5 * 9.0, 6.0 * across * 0.02 * 9.0);
}

TEST(CommonVolume, BoxHoldsTheTurnedSolid) {
    const Bounds box = boundsOf(solid(ringShape(0.0, 10.0, {0.0, 20.0})), facedAbout(5.0));
    EXPECT_NEAR(box.low.z, -15.0, 1e-3);
    EXPECT_NEAR(box.high.z, 5.0, 1e-3);
    EXPECT_NEAR(box.high.x, 5.0, 1e-3);
}

TEST(CommonVolume, ShapesThatMakeNoSolidAreRefused) {
    const Result<Solid> made = solidOf(ringShape(50.0, 40.0, {0.0, 10.0}), "shape");
    ASSERT_FALSE(made);
    EXPECT_EQ(made.errors()[0].where, "shape/rings/0/bore_mm");
}

} // namespace gapwise::test
