#include "geometry/shape/inside.h"
#include "tests/geometry/solids/built.h"
#include "tests/support/mesh_checks.h"
#include "tests/support/shapes.h"

#include <array>
#include <vector>

namespace gapwise::test {

namespace {

/// 20/40, 10 thick: 9425 mm³.
const Shape kBody = ringShape(20.0, 40.0, {0.0, 10.0});
/// Where round meets round, the library integrates to 1e-5 of the body.
constexpr double kRound = 0.1;

double takenBy(FeatureForm form, double offset = 0.0, int count = 1) {
    return volumeOf(kBody) - volumeOf(with(kBody, cutting(std::move(form), offset, count)));
}

double addedBy(FeatureForm form, double offset = 0.0, int count = 1) {
    return volumeOf(with(kBody, adding(std::move(form), offset, count))) - volumeOf(kBody);
}

/// A round hole of radius a from the axis outward through a cylinder of radius r: ∫√(r² - x²) over its width.
double holeDepth(double r, double a) {
    constexpr int kSteps = 20000;
    double sum = 0.0;
    for (int i = 0; i < kSteps; ++i) {
        const double x = -a + 2.0 * a * (i + 0.5) / kSteps;
        sum += std::sqrt(r * r - x * x) * 2.0 * std::sqrt(a * a - x * x) * 2.0 * a / kSteps;
    }
    return sum;
}

} // namespace

// Each volume below by calculus; holes through round walls by the integral above.

TEST(Features, RadialHoleGoesThroughTheWall) {
    EXPECT_NEAR(takenBy(RadialHole{3.0, {5.0, 25.0}, 5.0}, 30.0), holeDepth(20.0, 1.5) - holeDepth(10.0, 1.5),
                kRound);
}

TEST(Features, RadialHoleMayEndInTheWall) {
    EXPECT_NEAR(takenBy(RadialHole{3.0, {5.0, 15.0}, 5.0}), kPi * 2.25 * 15.0 - holeDepth(10.0, 1.5), kRound);
}

TEST(Features, AxialHolesStandOnTheirCircle) {
    EXPECT_NEAR(takenBy(AxialHole{3.0, 15.0, {-1.0, 11.0}}, 30.0, 6), 6.0 * kPi * 2.25 * 10.0, 1e-3);
    EXPECT_NEAR(takenBy(AxialHole{3.0, 15.0, {4.0, 11.0}}), kPi * 2.25 * 6.0, 1e-3);
}

TEST(Features, InclinedHoleRunsFromPointToPoint) {
    const double length = std::hypot(4.0, 3.0);
    EXPECT_NEAR(takenBy(InclinedHole{1.0, 13.0, 3.0, 17.0, 6.0}, 77.0), kPi * 0.25 * length, 1e-4);
}

TEST(Features, SlotTakesABlockOutOfTheWall) {
    EXPECT_NEAR(takenBy(Slot{6.0, {9.0, 21.0}, {4.0, 11.0}}, 225.0), 6.0 * slotArea(20.0, 40.0, -3.0, 3.0),
                1e-3);
}

// √3/2·w² across flats, a corner outward.
TEST(Features, HexagonalHolesStandOnTheirCircle) {
    const double area = std::sqrt(3.0) / 2.0 * 4.0 * 4.0;
    EXPECT_NEAR(takenBy(HexHole{4.0, 15.0, {-1.0, 11.0}}, 20.0, 3), 3.0 * area * 10.0, 1e-3);
    const SolidPart part = built(with(kBody, cutting(HexHole{4.0, 15.0, {4.0, 11.0}}, 90.0)));
    double outermost = 0.0;
    for (const Vec3& p : part.mesh.faces.positions)
        outermost = std::abs(p.z - 4.0) < 1e-9 ? std::max(outermost, p.x) : outermost;
    EXPECT_NEAR(outermost, 15.0 + 4.0 / std::sqrt(3.0), 1e-6);
}

// A plate from r 25 to r 15, 20° on: its length by the law of cosines; what lies within Ø40 is there already.
TEST(Features, VanesAreStraightPlates) {
    const double length =
        std::sqrt(15.0 * 15.0 + 25.0 * 25.0 - 2.0 * 15.0 * 25.0 * std::cos(20.0 * kPi / 180.0));
    const Vane vane{2.0, {15.0, 25.0}, Degrees{20.0}, {0.0, 10.0}};
    const Shape alone = with(Shape{}, adding(vane, 40.0));
    EXPECT_NEAR(volumeOf(alone), length * 2.0 * 10.0, 1e-6);
    const Shape vaned = with(kBody, adding(vane, 40.0, 5));
    EXPECT_NEAR(volumeOf(vaned), countedVolume(vaned, 100000), 0.005 * volumeOf(vaned));
    EXPECT_GT(volumeOf(vaned), volumeOf(kBody) + 5.0 * 80.0);
}

TEST(Features, HolesAndBlocksMayStandBesideTheirRadius) {
    EXPECT_NEAR(takenBy(Slot{6.0, {8.0, 21.0}, {4.0, 11.0}, 2.0}, 225.0),
                6.0 * slotArea(20.0, 40.0, -1.0, 5.0), 1e-3);
    const SolidPart right = built(with(kBody, adding(Slot{4.0, {15.0, 25.0}, {2.0, 8.0}, 6.0})));
    EXPECT_NEAR(right.facts.centreMm.x, 0.13, 0.05);
    const SolidPart pin = built(with(Shape{}, adding(RadialHole{2.0, {5.0, 9.0}, 3.0, -4.0}, 90.0)));
    EXPECT_NEAR(pin.facts.volumeMm3, kPi * 4.0, 1e-6);
    EXPECT_NEAR(pin.facts.centreMm.x, 7.0, 1e-9);
    EXPECT_NEAR(pin.facts.centreMm.y, 4.0, 1e-9);
    EXPECT_NEAR(pin.facts.centreMm.z, 3.0, 1e-9);
}

// 44 × 30 × 0.8 on the pad, its holes drilled through.
TEST(Features, GasketIsOneDrilledBlock) {
    Shape gasket = with(Shape{}, adding(Slot{44.0, {50.0, 50.8}, {-15.0, 15.0}}));
    gasket = with(gasket, cutting(RadialHole{12.0, {49.0, 52.0}, 0.0}));
    for (const double aside : {-15.0, 17.0})
        gasket = with(gasket, cutting(RadialHole{9.0, {49.0, 52.0}, 0.0, aside}));
    const SolidPart part = built(gasket);
    EXPECT_NEAR(part.facts.volumeMm3, 0.8 * (44.0 * 30.0 - kPi / 4.0 * (144.0 + 2.0 * 81.0)), 1e-3);
    EXPECT_EQ(openSides(part.mesh.faces), 0);
    EXPECT_EQ(wrongNormals(part.mesh.faces), 0);
    EXPECT_LT(part.facts.centreMm.x, 0.0); // more is drilled on the right
}

// What is no ring may be round all the same: a washer of one groove.
TEST(Features, PartWithoutRingsMayBeRound) {
    Shape washer = with(Shape{}, adding(Groove{{10.0, 10.0}, {16.0, 16.0}, {0.0, 2.0}}));
    washer = with(washer, cutting(Slot{1.0, {4.0, 9.0}, {-1.0, 3.0}}));
    EXPECT_NEAR(volumeOf(washer), ringVolume(10.0, 16.0, 2.0) - 2.0 * slotArea(10.0, 16.0, -0.5, 0.5), 1e-3);
    EXPECT_EQ(openSides(built(washer).mesh.faces), 0);
}

TEST(Features, SectorTakesItsShareOfTheCircle) {
    EXPECT_NEAR(takenBy(Sector{Degrees{90.0}, {5.0, 25.0}, {-1.0, 11.0}}, 180.0),
                ringVolume(20.0, 40.0, 10.0) / 4.0, 1e-3);
}

TEST(Features, GrooveRunsRoundTheBody) {
    EXPECT_NEAR(takenBy(Groove{{38.0, 38.0}, {42.0, 42.0}, {4.0, 6.0}}), ringVolume(38.0, 40.0, 2.0), 1e-3);
    // Conical: frustum of a bore 36 to 38 in Ø40.
    const double frustum = kPi / 12.0 * 2.0 * (36.0 * 36.0 + 36.0 * 38.0 + 38.0 * 38.0);
    EXPECT_NEAR(takenBy(Groove{{36.0, 38.0}, {42.0, 42.0}, {4.0, 6.0}}), ringVolume(0.0, 40.0, 2.0) - frustum,
                1e-3);
}

// Two openings of half the width and the slit of 0.1 between the lands.
TEST(Features, SteppedJointTakesTwoOpeningsAndASlit) {
    const double opening = slotArea(20.0, 40.0, 1.9, 2.1) * 5.05 * 2.0;
    const double slit = slotArea(20.0, 40.0, -1.9, 1.9) * 0.1;
    EXPECT_NEAR(takenBy(SteppedJoint{0.2, 4.0}), opening + slit, 1e-3);
}

// The shaft of 0.35 and the head of the width, as drawn: 7 long, head 3.15 (0.45 of the length).
TEST(Features, ArrowIsSunkOrRaised) {
    const double head = 0.45 * 7.0;
    const double area = 0.35 * 4.0 * (7.0 - head) + 4.0 * head / 2.0;
    EXPECT_NEAR(takenBy(ArrowMark{{11.0, 18.0}, 4.0, 0.5, 10.0}, 90.0), area * 0.5, 1e-4);
    EXPECT_NEAR(addedBy(ArrowMark{{11.0, 18.0}, 4.0, 0.5, 10.0}, 90.0), area * 0.5, 1e-4);
}

// T: a bar of 4 and a stem of 6, each lengthened by its width of 0.9, in cells of a sixth of the height.
TEST(Features, LettersAreSunkOrRaised) {
    const double area = (4.9 + 6.9 - 0.9) * 0.9;
    const LetterMark letter{"T", 6.0, 15.0, 0.5, 10.0, true};
    EXPECT_NEAR(takenBy(letter, 45.0), area * 0.5, 1e-4);
    EXPECT_NEAR(addedBy(letter, 45.0), area * 0.5, 1e-4);
}

TEST(Features, BlocksPinsAndBossesAreAdded) {
    const double padOverWall = 6.0 * 25.0 - discBetween(20.0, -3.0, 3.0) / 2.0;
    EXPECT_NEAR(addedBy(Slot{6.0, {15.0, 25.0}, {2.0, 8.0}}, 120.0), padOverWall * 6.0, 1e-3);
    EXPECT_NEAR(addedBy(AxialHole{2.0, 15.0, {5.0, 12.5}}, 330.0), kPi * 2.5, 1e-4);
    EXPECT_NEAR(addedBy(RadialHole{2.0, {15.0, 25.0}, 5.0}), kPi * 25.0 - holeDepth(20.0, 1.0), kRound);
    EXPECT_NEAR(addedBy(Sector{Degrees{30.0}, {15.0, 22.0}, {2.0, 8.0}}), ringVolume(40.0, 44.0, 6.0) / 12.0,
                1e-3);
    EXPECT_NEAR(addedBy(Groove{{30.0, 30.0}, {44.0, 44.0}, {2.0, 8.0}}), ringVolume(40.0, 44.0, 6.0), 1e-3);
}

TEST(Features, PartWithoutRingsIsWhatIsAddedFirst) {
    const SolidPart pin = built(with(Shape{}, adding(RadialHole{2.5, {8.1, 13.9}, 0.0})));
    EXPECT_NEAR(pin.facts.volumeMm3, kPi / 4.0 * 6.25 * 5.8, 1e-4);
    EXPECT_NEAR(pin.facts.centreMm.y, 11.0, 1e-9);
    EXPECT_NEAR(pin.facts.bounds.low.y, 8.1, 1e-6);
    EXPECT_NEAR(pin.facts.bounds.high.y, 13.9, 1e-6);
}

// The library threw while it joined the faces that these leave; they are right without that.
TEST(Features, FacesThatCannotBeJoinedStayApart) {
    Shape shape;
    shape.rings = {ring(13.65, 38.6, {0.0, 12.45}), ring(12.45, 46.6, {12.45, 24.2}),
                   ring(19.25, 43.75, {24.2, 34.65}), ring(13.3, 32.95, {34.65, 48.95}),
                   ring(7.85, 38.8, {48.95, 57.15})};
    shape.rings[1].outside = Diameter{46.6, 33.8};
    shape = with(shape, cutting(RadialHole{1.5, {4.7, 34.8}, 33.3}, 90.0, 5));
    shape = with(shape, cutting(Slot{6.35, {9.9, 29.9}, {7.75, 52.5}}, 330.0));
    const double counted = countedVolume(shape, 100000);
    EXPECT_NEAR(volumeOf(shape), counted, 0.005 * counted);
}

// One tool with all its neighbours was too much for the library; one after another they are made.
TEST(Features, AreMadeOneByOneWhereTogetherTheyFail) {
    Shape shape;
    shape.rings = {ring(1.2, 52.95, {0.0, 2.4}), ring(2.1, 42.0, {2.4, 15.6}),
                   ring(16.4, 52.75, {9.0, 23.95}), ring(3.65, 45.85, {23.95, 32.55}),
                   ring(14.15, 43.8, {32.55, 41.55})};
    shape.rings[1].bore = Diameter{2.1, 17.05};
    shape.rings[2].bore = Diameter{16.4, 13.7};
    shape.rings[4].bore = Diameter{14.15, 5.8};
    shape = with(shape, adding(Slot{2.25, {6.6, 28.45}, {0.0, 41.55}}, 15.0));
    shape = with(shape, cutting(AxialHole{2.2, 15.8, {4.85, 30.3}}, 315.0));
    shape = with(shape, adding(LetterMark{"P", 3.95, 20.15, 1.0, 41.55, false}, 195.0));
    shape = with(shape, adding(Sector{Degrees{53.2}, {2.3, 27.15}, {3.85, 23.55}}, 240.0, 3));
    const double counted = countedVolume(shape, 100000);
    EXPECT_NEAR(volumeOf(shape), counted, 0.01 * counted);
}

TEST(Features, OrderIsKept) {
    const Slot pad{6.0, {15.0, 25.0}, {2.0, 8.0}};
    const RadialHole bore{2.0, {5.0, 30.0}, 5.0};
    const double drilled = volumeOf(with(with(kBody, adding(pad)), cutting(bore)));
    const double covered = volumeOf(with(with(kBody, cutting(bore)), adding(pad)));
    EXPECT_GT(covered, drilled + 20.0);
}

// The opening lies clockwise of the index over the half toward the reference face.
TEST(Features, SteppedJointLeavesNoStraightWay) {
    const SolidPart part = built(with(kBody, cutting(SteppedJoint{0.2, 4.0})));
    bool clockwiseAbove = false;
    bool clockwiseBelow = false;
    for (const Vec3& p : part.mesh.faces.positions) {
        const bool wall = p.y > 0.0 && std::abs(p.x - 1.9) < 1e-6;
        clockwiseAbove = clockwiseAbove || (wall && p.z > 9.9);
        clockwiseBelow = clockwiseBelow || (wall && p.z < 0.1);
    }
    EXPECT_TRUE(clockwiseAbove);
    EXPECT_FALSE(clockwiseBelow);
}

} // namespace gapwise::test
