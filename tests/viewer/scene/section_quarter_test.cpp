#include "cut_rest.h"
#include "lathe.h"
#include "viewer/scene/section_cut.h"

#include <gtest/gtest.h>

#include <cmath>

namespace gapwise {

using cut::closedRest;
using cut::lengthOf;
using cut::openEdges;

namespace {

/// A corner at every degree: a plane at a whole degree runs through corners, and areas are exact.
constexpr int kEachDegree = 360;

Section quarterAt(double degrees) {
    return {.kind = Section::Kind::Quarter, .removed = Clock::seenFrom(Side::Compressor, Degrees{degrees})};
}

DrawnMesh quartered(const PartMesh& mesh, double degrees, const Pose& pose = {}) {
    return cutMesh(mesh, inPartAxes(quarterAt(degrees), pose));
}

PartMesh tube(int sides) {
    return lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0}}, sides);
}

PartMesh shaft(int sides) {
    return lathe::turned({{.boreRadius = 0.0, .outerRadius = 3.0, .zFrom = -4.0, .zTo = 6.0}}, sides);
}

/// With its notch at +Y: no two quarters of it are alike.
PartMesh notched(int sides) {
    return lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0, .gapDeg = 20.0},
                          {.boreRadius = 0.0, .outerRadius = 2.0, .zFrom = 7.0, .zTo = 9.0}},
                         sides);
}

bool isInside(const Vec3& datum, double degrees) {
    const Section section = quarterAt(degrees);
    const TakenAway away = inPartAxes(section, Pose{});
    return away.first.beyond(datum) > 1e-6 && away.second->beyond(datum) > 1e-6;
}

} // namespace

// Areas, lengths and volumes: elementary geometry of rectangles and regular polygons.

TEST(Quarter, OfATubeShowsItsTwoHalfProfilesAtAnyClock) {
    for (int degrees = 0; degrees < 360; degrees += 15) {
        const DrawnMesh cut = quartered(tube(kEachDegree), degrees);
        EXPECT_NEAR(areaOf(cut.caps), 2.0 * 4.0 * 4.0, 1e-9) << degrees;
        EXPECT_NEAR(lengthOf(cut.cutOutline), 2.0 * 16.0, 1e-9) << degrees;
    }
}

TEST(Quarter, OfAShaftMeetsAtTheAxisInOneLine) {
    for (int degrees = 0; degrees < 360; degrees += 15) {
        const DrawnMesh cut = quartered(shaft(kEachDegree), degrees);
        EXPECT_NEAR(areaOf(cut.caps), 2.0 * 3.0 * 10.0, 1e-9) << degrees;
        EXPECT_NEAR(lengthOf(cut.cutOutline), 2.0 * (3.0 + 10.0 + 3.0) + 10.0, 1e-9) << degrees;
        const auto onAxis = [](const Vec3& p) { return std::hypot(p.x, p.y) < 1e-9; };
        double along = 0.0;
        for (const auto& [a, b] : cut.cutOutline.lines)
            if (onAxis(cut.cutOutline.positions[a]) && onAxis(cut.cutOutline.positions[b]))
                along += length(cut.cutOutline.positions[a] - cut.cutOutline.positions[b]);
        EXPECT_NEAR(along, 10.0, 1e-9) << degrees;
    }
}

TEST(Quarter, LeavesThreeQuartersOfABodyOfRevolution) {
    for (const PartMesh& body : {tube(kEachDegree), shaft(kEachDegree)})
        for (int degrees = 0; degrees < 360; degrees += 15) {
            const DrawnMesh cut = quartered(body, degrees);
            EXPECT_NEAR(signedVolume(closedRest(cut)), 0.75 * signedVolume(body.faces), 1e-9) << degrees;
            EXPECT_NEAR(lengthOf(cut.body.edges), 0.75 * lengthOf(body.edges), 1e-9) << degrees;
        }
}

TEST(Quarter, FourOfThemTakeTheWholeAway) {
    const PartMesh body = notched(37);
    for (double degrees = 0.0; degrees < 90.0; degrees += 6.7) {
        double kept = 0.0;
        for (const double next : {0.0, 90.0, 180.0, 270.0})
            kept += signedVolume(closedRest(quartered(body, degrees + next)));
        EXPECT_NEAR(kept, 3.0 * signedVolume(body.faces), 1e-6) << degrees;
    }
}

TEST(Quarter, OfAClosedMeshStaysClosed) {
    for (const int sides : {24, 37, 96})
        for (const PartMesh& body : {tube(sides), shaft(sides), notched(sides)}) {
            ASSERT_EQ(openEdges(body.faces), 0U);
            for (double degrees = 0.0; degrees < 360.0; degrees += 7.5) {
                const TriangleMesh rest = closedRest(quartered(body, degrees));
                EXPECT_EQ(openEdges(rest), 0U) << sides << " sides at " << degrees;
            }
        }
}

TEST(Quarter, WithOneFaceInAFaceOfThePartStaysClosed) {
    // The ends of the notch lie at 350 and 10: a quarter that begins or ends there cuts in that very face.
    for (const double degrees : {10.0 + 45.0, 10.0 - 45.0, 350.0 + 45.0, 350.0 - 45.0})
        EXPECT_EQ(openEdges(closedRest(quartered(notched(34), degrees))), 0U) << degrees;
}

TEST(Quarter, CapsBorderWhatIsTakenAwayAndNothingElse) {
    const DrawnMesh cut = quartered(shaft(96), 20.0);
    const TakenAway away = inPartAxes(quarterAt(20.0), Pose{});
    for (const Vec3& p : cut.caps.positions) {
        EXPECT_GT(away.first.beyond(p), -1e-9);
        EXPECT_GT(away.second->beyond(p), -1e-9);
        EXPECT_NEAR(std::min(away.first.beyond(p), away.second->beyond(p)), 0.0, 1e-9);
    }
    for (const auto& [a, b, c] : cut.caps.triangles) {
        const Vec3 turn = cross(cut.caps.positions[b] - cut.caps.positions[a],
                                cut.caps.positions[c] - cut.caps.positions[a]);
        EXPECT_GE(dot(turn, cut.caps.normals[a]), 0.0);
    }
}

TEST(Quarter, OfAPartWithANotchIsCappedWhereThereIsMaterial) {
    const PartMesh ring = lathe::turned(
        {{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0, .gapDeg = 20.0}}, 340);
    EXPECT_NEAR(areaOf(quartered(ring, 0.0).caps), 2.0 * 16.0, 1e-9) << "the notch goes whole";
    EXPECT_NEAR(areaOf(quartered(ring, 45.0).caps), 16.0, 1e-9) << "one plane lies in the notch";
    EXPECT_NEAR(areaOf(quartered(ring, 180.0).caps), 2.0 * 16.0, 1e-9) << "the notch stays";
}

TEST(Quarter, TakesTheSameAwayHoweverThePartSits) {
    const PartMesh body = notched(96);
    for (const Side looks : {Side::Compressor, Side::Turbine})
        for (const double index : {0.0, 100.0, 231.0})
            for (const double degrees : {45.0, 120.0, 300.0}) {
                const Pose pose = poseOf({.index = Clock::seenFrom(Side::Compressor, Degrees{index}),
                                          .referenceFaceLooks = looks,
                                          .stationMm = 12.0});
                const DrawnMesh cut = quartered(body, degrees, pose);
                EXPECT_EQ(openEdges(closedRest(cut)), 0U);
                for (const Vec3& p : cut.body.faces.positions)
                    EXPECT_FALSE(isInside(pose.point(p), degrees));
                for (const Vec3& p : cut.body.edges.positions)
                    EXPECT_FALSE(isInside(pose.point(p), degrees));
            }
}

TEST(Quarter, CountsOverlappingSolidsOnce) {
    const PartMesh body = lathe::turned({{.boreRadius = 0.0, .outerRadius = 9.0, .zFrom = 0.0, .zTo = 4.0},
                                         {.boreRadius = 0.0, .outerRadius = 5.0, .zFrom = 2.0, .zTo = 7.0}},
                                        kEachDegree);
    EXPECT_NEAR(areaOf(quartered(body, 45.0).caps), 2.0 * (9.0 * 4.0 + 5.0 * 3.0), 1e-5);
}

TEST(Quarter, BesideABodyLeavesItWhole) {
    PartMesh aside = shaft(24);
    for (Vec3& p : aside.faces.positions)
        p = p + Vec3{-20.0, -20.0, 0.0};
    const DrawnMesh cut = quartered(aside, 45.0);
    EXPECT_EQ(cut.body.faces.triangles.size(), aside.faces.triangles.size());
    EXPECT_TRUE(cut.caps.triangles.empty());
    EXPECT_TRUE(quartered(aside, 225.0).body.faces.triangles.empty());
}

TEST(Quarter, OfAScrewOffTheAxisIsCutByOnePlane) {
    PartMesh screw = shaft(kEachDegree);
    for (Vec3& p : screw.faces.positions)
        p = p + Vec3{0.0, 20.0, 0.0};
    // From 12:00 to 3:00: half of what stands at 12:00.
    const DrawnMesh cut = quartered(screw, 45.0);
    EXPECT_NEAR(areaOf(cut.caps), 6.0 * 10.0, 1e-9);
    EXPECT_NEAR(signedVolume(closedRest(cut)), signedVolume(screw.faces) / 2.0, 1e-9);
}

} // namespace gapwise
