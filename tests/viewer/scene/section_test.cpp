#include "viewer/scene/section_cut.h"

#include "cut_rest.h"
#include "lathe.h"
#include "viewer/scene/cap.h"
#include "viewer/scene/section_cuts.h"
#include "viewer/scene/weld.h"

#include <gtest/gtest.h>

namespace gapwise {

using cut::closedRest;
using cut::lengthOf;

namespace {

constexpr TakenAway kRemoveRight{}; // x > 0 is taken away.

} // namespace

// Areas and volumes: elementary geometry of rectangles and regular polygons.

TEST(Section, OfAClosedRingIsTwoRectangles) {
    const PartMesh ring = lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0}});
    const DrawnMesh cut = cutMesh(ring, kRemoveRight);
    EXPECT_NEAR(areaOf(cut.caps), 2.0 * 4.0 * 4.0, 1e-9);
    EXPECT_NEAR(lengthOf(cut.cutOutline), 2.0 * 16.0, 1e-9);
}

TEST(Section, ThroughTheGapOfARingCutsItOnlyOpposite) {
    const PartMesh ring =
        lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0, .gapDeg = 20.0}});
    const DrawnMesh cut = cutMesh(ring, kRemoveRight);
    EXPECT_NEAR(areaOf(cut.caps), 4.0 * 4.0, 1e-9);
    for (const Vec3& p : cut.caps.positions)
        EXPECT_LT(p.y, 0.0);
}

TEST(Section, LeavesHalfTheVolumeAndClosesIt) {
    const PartMesh ring = lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0}});
    const DrawnMesh cut = cutMesh(ring, kRemoveRight);
    EXPECT_NEAR(signedVolume(closedRest(cut)), signedVolume(ring.faces) / 2.0, 1e-9);
    for (const Vec3& p : cut.body.faces.positions)
        EXPECT_LE(p.x, 1e-9);
    for (const Vec3& p : cut.body.edges.positions)
        EXPECT_LE(p.x, 1e-6);
}

TEST(Section, OffTheAxisClosesTooForAnyAngle) {
    const PartMesh body = lathe::turned({{.boreRadius = 3.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0},
                                         {.boreRadius = 0.0, .outerRadius = 2.0, .zFrom = 7.0, .zTo = 9.0}},
                                        37);
    for (int degrees = 0; degrees < 360; degrees += 7) {
        const double angle = radians(Degrees{static_cast<double>(degrees)});
        const CuttingPlane plane{.normal = {std::sin(angle), std::cos(angle), 0.0}, .offsetMm = 1.3};
        const CuttingPlane other{.normal = plane.normal * -1.0, .offsetMm = -plane.offsetMm};
        const double both = signedVolume(closedRest(cutMesh(body, {plane}))) +
                            signedVolume(closedRest(cutMesh(body, {other})));
        EXPECT_NEAR(both, signedVolume(body.faces), 1e-6) << degrees;
    }
}

TEST(Section, CountsOverlappingSolidsOnce) {
    const PartMesh body = lathe::turned({{.boreRadius = 0.0, .outerRadius = 9.0, .zFrom = 0.0, .zTo = 4.0},
                                         {.boreRadius = 0.0, .outerRadius = 5.0, .zFrom = 2.0, .zTo = 7.0}});
    EXPECT_NEAR(areaOf(cutMesh(body, kRemoveRight).caps), 18.0 * 4.0 + 10.0 * 3.0, 1e-5);
}

TEST(Section, BesideABodyLeavesItWholeOrTakesItAll) {
    const PartMesh disc = lathe::turned({{.boreRadius = 0.0, .outerRadius = 9.0, .zFrom = 0.0, .zTo = 4.0}});
    const DrawnMesh whole = cutMesh(disc, {CuttingPlane{.offsetMm = 20.0}});
    EXPECT_NEAR(signedVolume(whole.body.faces), signedVolume(disc.faces), 1e-9);
    EXPECT_TRUE(whole.caps.triangles.empty());
    const DrawnMesh none = cutMesh(disc, {CuttingPlane{.offsetMm = -20.0}});
    EXPECT_TRUE(none.body.faces.triangles.empty());
    EXPECT_TRUE(none.body.edges.lines.empty());
}

TEST(Section, OfAnOpenMeshGetsNoCapWhereItDoesNotClose) {
    PartMesh open = lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0}});
    open.faces.triangles.resize(open.faces.triangles.size() / 2U);
    EXPECT_LT(areaOf(cutMesh(open, kRemoveRight).caps), 1e-9);
    EXPECT_TRUE(cutMesh({}, kRemoveRight).caps.triangles.empty());
}

TEST(Section, CapsLookToTheSideThatIsTakenAway) {
    const DrawnMesh cut = cutMesh(
        lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0}}), kRemoveRight);
    for (const Vec3& n : cut.caps.normals)
        EXPECT_EQ(n, (Vec3{1.0, 0.0, 0.0}));
    for (const auto& [a, b, c] : cut.caps.triangles)
        EXPECT_GT(cross(cut.caps.positions[b] - cut.caps.positions[a],
                        cut.caps.positions[c] - cut.caps.positions[a])
                      .x,
                  0.0);
}

TEST(Section, PlaneTurnsWithThePart) {
    // A part whose index points to 3:00 from the compressor side: datum +X is its own +Y.
    const Pose pose = poseOf({.index = Clock::seenFrom(Side::Compressor, Degrees{90.0}), .stationMm = 12.0});
    const CuttingPlane own = inPartAxes(Section{}, pose).first;
    EXPECT_NEAR(own.normal.y, 1.0, 1e-12);
    EXPECT_NEAR(own.offsetMm, 0.0, 1e-12);
    const Pose flipped = poseOf(
        {.index = Clock::seenFrom(Side::Compressor, Degrees{0.0}), .referenceFaceLooks = Side::Turbine});
    EXPECT_NEAR(inPartAxes(Section{}, flipped).first.normal.x, -1.0, 1e-12);
}

TEST(Cap, HasHolesWhereClockwiseLoopsAre) {
    const Loop outer{{0.0, 0.0, 0.0}, {0.0, 10.0, 0.0}, {0.0, 10.0, 10.0}, {0.0, 0.0, 10.0}};
    const Loop hole{{0.0, 2.0, 2.0}, {0.0, 2.0, 5.0}, {0.0, 5.0, 5.0}, {0.0, 5.0, 2.0}};
    EXPECT_NEAR(areaOf(capOver({outer, hole}, {1.0, 0.0, 0.0}).face), 100.0 - 9.0, 1e-9);
    EXPECT_TRUE(capOver({}, {1.0, 0.0, 0.0}).face.triangles.empty());
}

TEST(Weld, JoinsWhatLiesTogetherAndNothingElse) {
    const std::vector<Vec3> points{{0.0, 0.0, 0.0}, {1.0, 0.0, 0.0}, {0.0, 0.00005, 0.0}, {0.0, 0.001, 0.0}};
    const auto numbers = weldedCorners(points);
    EXPECT_EQ(numbers[0], numbers[2]);
    EXPECT_NE(numbers[0], numbers[1]);
    EXPECT_NE(numbers[0], numbers[3]);
    // A border of the search's cells lies at 0.0032: what straddles it is joined all the same.
    const std::vector<Vec3> straddling{{0.00319, 0.0, 0.0}, {0.00321, 0.0, 0.0}};
    const auto two = weldedCorners(straddling);
    EXPECT_EQ(two[0], two[1]);
}

} // namespace gapwise
