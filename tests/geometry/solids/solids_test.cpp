#include "tests/geometry/solids/built.h"
#include "tests/support/mesh_checks.h"
#include "tests/support/shapes.h"

namespace gapwise::test {

namespace {

/// A torus of four quarter circles: R 10, r 1.
Shape torus() {
    Shape shape;
    const Diameter spine{20.0, 20.0};
    for (const double up : {1.0, -1.0}) {
        const Span z = up > 0.0 ? Span{0.0, 1.0} : Span{-1.0, 0.0};
        shape.rings.push_back({spine, QuarterEllipse{10.0, 1.0, 0.0, up}, z});
        shape.rings.push_back({QuarterEllipse{10.0, -1.0, 0.0, up}, spine, z});
    }
    return shape;
}

Shape cone(double fromDiameter, double toDiameter) {
    Shape shape = ringShape(0.0, fromDiameter, {0.0, 10.0});
    shape.rings[0].outside = Diameter{fromDiameter, toDiameter};
    return shape;
}

/// What the rounding of an outer edge takes off, by Pappus.
double roundedOff(double outside, double radius) {
    const double area = (1.0 - kPi / 4.0) * radius * radius;
    const double fromCorner =
        (radius * radius * radius / 2.0 - kPi * radius * radius / 4.0 * radius * (1.0 - 4.0 / (3.0 * kPi))) /
        area;
    return area * 2.0 * kPi * (outside / 2.0 - fromCorner);
}

} // namespace

// Ring 20/17 × 1.5: 130.769 mm³ (GEO-11).
TEST(Solids, RingHasItsClosedFormVolume) {
    const SolidPart part = built(ringShape(17.0, 20.0, {0.0, 1.5}));
    EXPECT_NEAR(part.facts.volumeMm3, 130.769, 5e-4);
    EXPECT_NEAR(part.facts.centreMm.z, 0.75, 1e-9);
    EXPECT_NEAR(part.facts.bounds.high.x, 10.0, part.facts.sagittaMm);
    EXPECT_EQ(part.facts.triangles, part.mesh.faces.triangles.size());
}

// Torus R 10, r 1: 197.392 mm³; with a 10° gap 191.909 mm³ (GEO-11).
TEST(Solids, TorusOfFourCurvesHasItsClosedFormVolume) {
    EXPECT_NEAR(volumeOf(torus()), 197.392, 5e-4);
    const Shape open = with(torus(), cutting(Sector{Degrees{10.0}, {8.0, 12.0}, {-2.0, 2.0}}));
    EXPECT_NEAR(volumeOf(open), 191.909, 5e-4);
}

// π/12·h·(D² + D·d + d²).
TEST(Solids, ConesHaveTheirClosedFormVolume) {
    EXPECT_NEAR(volumeOf(cone(20.0, 10.0)), kPi / 12.0 * 10.0 * 700.0, 1e-3);
    EXPECT_NEAR(volumeOf(cone(20.0, 0.0)), kPi / 12.0 * 10.0 * 400.0, 1e-3);
}

// π·a²·b·2/3 for half a spheroid.
TEST(Solids, CurveOnAnOutsideIsAnEllipse) {
    Shape dome = ringShape(0.0, 1.0, {0.0, 12.0});
    dome.rings[0].outside = QuarterEllipse{0.0, 8.0, 0.0, 12.0};
    EXPECT_NEAR(volumeOf(dome), 2.0 / 3.0 * kPi * 64.0 * 12.0, 1e-2);
}

// A ring with rings inside one another counts each place once.
TEST(Solids, OverlappingRingsAreJoined) {
    Shape shape = ringShape(0.0, 10.0, {0.0, 20.0});
    shape.rings.push_back(ring(0.0, 30.0, {5.0, 10.0}));
    shape.rings.push_back(ring(4.0, 20.0, {8.0, 15.0}));
    const double expected =
        ringVolume(0.0, 10.0, 20.0) + ringVolume(10.0, 30.0, 5.0) + ringVolume(10.0, 20.0, 5.0);
    EXPECT_NEAR(volumeOf(shape), expected, 1e-2);
}

// The flats' hexagon: √3/2·s² for s across flats.
TEST(Solids, HexagonIsAPrismWithACornerAtTheIndex) {
    Shape nut = ringShape(8.0, 13.0, {0.0, 7.5});
    nut.rings[0].outside = AcrossFlats{13.0};
    const SolidPart part = built(nut);
    EXPECT_NEAR(part.facts.volumeMm3, std::sqrt(3.0) / 2.0 * 169.0 * 7.5 - ringVolume(0.0, 8.0, 7.5), 1e-3);
    EXPECT_NEAR(part.facts.bounds.high.y, 13.0 / std::sqrt(3.0), 1e-6);
    EXPECT_NEAR(part.facts.bounds.high.x, 6.5, 1e-6);
}

TEST(Solids, HexagonMayBeASocketInARoundBody) {
    Shape socket = ringShape(0.0, 20.0, {0.0, 10.0});
    socket.rings = {ring(0.0, 20.0, {0.0, 5.0}), {AcrossFlats{8.0}, Diameter{20.0, 20.0}, {5.0, 10.0}}};
    EXPECT_NEAR(volumeOf(socket), ringVolume(0.0, 20.0, 10.0) - std::sqrt(3.0) / 2.0 * 64.0 * 5.0, 1e-3);
}

// A drilling that breaks into the hexagon through one of its flats: what lies beyond x = 4 of it.
TEST(Solids, HexagonalBoreMayBeDrilled) {
    Shape socket = ringShape(0.0, 20.0, {0.0, 10.0});
    socket.rings[0].bore = AcrossFlats{8.0};
    const double whole = volumeOf(socket);
    EXPECT_NEAR(whole, ringVolume(0.0, 20.0, 10.0) - std::sqrt(3.0) / 2.0 * 64.0 * 10.0, 1e-3);
    const Shape drilled = with(socket, cutting(RadialHole{2.0, {0.0, 9.0}, 5.0}, 90.0));
    EXPECT_NEAR(whole - volumeOf(drilled), kPi * (9.0 - 4.0), 1e-3);
    EXPECT_EQ(openSides(built(drilled).mesh.faces), 0);
}

// Pappus: the spandrel of a quarter circle; the triangle of a chamfer of leg 2 along r, 2/tan 30° along z.
TEST(Solids, EdgesAreRoundedAndChamferedOnTheProfile) {
    const Shape plain = ringShape(10.0, 40.0, {0.0, 10.0});
    const double whole = ringVolume(10.0, 40.0, 10.0);
    EXPECT_NEAR(volumeOf(with(plain, EdgeBreak{EdgeBreak::Kind::Round, 40.0, 10.0, 2.0, Degrees{45.0}})),
                whole - roundedOff(40.0, 2.0), 1e-3);
    const double alongZ = 2.0 / std::tan(kPi / 6.0);
    EXPECT_NEAR(volumeOf(with(plain, EdgeBreak{EdgeBreak::Kind::Chamfer, 40.0, 10.0, 2.0, Degrees{30.0}})),
                whole - 2.0 * alongZ / 2.0 * 2.0 * kPi * (20.0 - 2.0 / 3.0), 1e-3);
}

TEST(Solids, FilletFillsAShoulder) {
    Shape shaft = ringShape(0.0, 8.0, {0.0, 10.0});
    shaft.rings.push_back(ring(0.0, 12.0, {-10.0, 0.0}));
    const double sharp = volumeOf(shaft);
    const double filled =
        volumeOf(with(shaft, EdgeBreak{EdgeBreak::Kind::Round, 8.0, 0.0, 0.4, Degrees{45.0}}));
    EXPECT_NEAR(filled - sharp, (1.0 - kPi / 4.0) * 0.16 * 2.0 * kPi * (4.0 + 0.4 * 0.2234), 1e-3);
}

// A stamped ring: two edges of the reference face rounded, a straight gap. Chord areas.
TEST(Solids, SnapRingWithAStraightGapHasItsClosedFormVolume) {
    const Shape sharp =
        with(ringShape(16.7, 19.9, {-0.5, 0.5}), cutting(Slot{3.5, {7.0, 11.0}, {-1.0, 1.0}}));
    EXPECT_NEAR(volumeOf(sharp), ringVolume(16.7, 19.9, 1.0) - slotArea(16.7, 19.9, -1.75, 1.75), 1e-4);
    Shape stamped = with(sharp, EdgeBreak{EdgeBreak::Kind::Round, 16.7, 0.5, 0.25, Degrees{45.0}});
    stamped = with(stamped, EdgeBreak{EdgeBreak::Kind::Round, 19.9, 0.5, 0.25, Degrees{45.0}});
    EXPECT_LT(volumeOf(stamped), volumeOf(sharp));
    EXPECT_LT(built(stamped).facts.centreMm.z, 0.0); // less material on the rounded face
}

// A wheel's volume counts its blades from the hub on.
TEST(Solids, BladesAddWhatStandsFreeOfTheHub) {
    Shape wheel = ringShape(0.0, 60.0, {-5.0, 0.0});
    const QuarterEllipse hub{30.0, -20.0, 30.0, -30.0};
    wheel.rings.push_back({Diameter{}, hub, {0.0, 30.0}});
    const double bare = volumeOf(wheel);
    // Straight blades, 2 thick: the area between hub and edge in (r, z) times the thickness.
    const QuarterEllipse edge{30.0, -10.0, 20.0, -10.0};
    wheel.blades = {{3, 2.0, Degrees{0.0}, Degrees{0.0}, 0.0, 30.0, 1.0, hub, edge, std::nullopt}};
    const SolidPart bladed = built(wheel);
    const double underEdge = 30.0 * 10.0 + (30.0 * 10.0 - kPi / 4.0 * 100.0) + 20.0 * 10.0;
    const double underHub = 30.0 * 30.0 - kPi / 4.0 * 20.0 * 30.0;
    EXPECT_NEAR(bladed.facts.volumeMm3 - bare, 3.0 * 2.0 * (underEdge - underHub), 0.5);
    EXPECT_NEAR(bladed.facts.centreMm.x, 0.0, 1e-6);
    EXPECT_NEAR(bladed.facts.centreMm.y, 0.0, 1e-6);
}

// N-gon prism: N/2·sin(2π/N)·r² (GEO-12), N as sagitta and tolerance demand (GEO-13).
TEST(Solids, CylinderIsAPrismOfAsManySidesAsTheSagittaDemands) {
    const SolidPart part =
        built(ringShape(0.0, 20.0, {0.0, 10.0}), {.deflectionMm = 0.01, .angle = Degrees{30.0}});
    const auto sides = static_cast<double>(part.mesh.edges.lines.size()) / 2.0; // two circles
    EXPECT_NEAR(signedVolume(part.mesh.faces), sides / 2.0 * std::sin(2.0 * kPi / sides) * 100.0 * 10.0,
                1e-6);
    EXPECT_GE(sides, 71.0); // ⌈π / acos(1 - 0.01/10)⌉
    EXPECT_LE(sagitta(10.0, static_cast<int>(sides)), 0.01);
}

TEST(Solids, VersionNamesTheLibrary) {
    EXPECT_NE(solidsVersion().find("Open CASCADE 7"), std::string::npos);
}

} // namespace gapwise::test
