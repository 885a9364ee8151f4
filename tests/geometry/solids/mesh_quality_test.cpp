#include "tests/geometry/solids/built.h"
#include "tests/support/mesh_checks.h"
#include "tests/support/shapes.h"

#include <vector>

namespace gapwise::test {

namespace {

EdgeBreak rounding(double diameter, double z, double radius) {
    return {EdgeBreak::Kind::Round, diameter, z, radius, Degrees{45.0}};
}

Shape snapRing() {
    Shape shape = ringShape(16.7, 19.9, {-0.5, 0.5});
    shape.edges = {rounding(16.7, 0.5, 0.25), rounding(19.9, 0.5, 0.25)};
    for (const double ear : {24.0, -24.0})
        shape = with(shape, adding(Slot{5.0, {7.35, 9.0}, {-0.5, 0.5}}, ear));
    shape = with(shape, cutting(Slot{3.5, {7.0, 10.5}, {-1.0, 1.0}}));
    for (const double ear : {24.0, -24.0})
        shape = with(shape, cutting(AxialHole{1.2, 8.4, {-1.0, 1.0}}, ear));
    return shape;
}

Shape drilledBody() {
    Shape shape = ringShape(20.0, 40.0, {0.0, 30.0});
    shape.rings.push_back(ring(30.0, 60.0, {10.0, 15.0}));
    shape = with(shape, adding(Slot{16.0, {15.0, 28.0}, {18.0, 28.0}}));
    shape = with(shape, cutting(RadialHole{5.0, {5.0, 30.0}, 23.0}));
    shape = with(shape, cutting(AxialHole{4.0, 15.0, {-1.0, 25.0}}, 0.0));
    return with(shape, cutting(InclinedHole{3.0, 18.0, 5.0, 8.0, 9.0}, 180.0));
}

Shape cone() {
    Shape shape = ringShape(0.0, 20.0, {0.0, 10.0});
    shape.rings[0].outside = Diameter{20.0, 0.0};
    return shape;
}

const QuarterEllipse kHub{36.0, -27.6, 45.0, -24.1};
const QuarterEllipse kEdge{36.0, -10.43, 36.0, -10.53};

Blades leaningBlades(double reach) {
    return {6, 0.9, Degrees{30.0}, Degrees{45.0}, 20.9, 45.0, reach, kHub, kEdge, std::nullopt};
}

Shape wheel() {
    Shape shape = ringShape(8.0, 72.0, {19.6, 20.9});
    shape.rings.push_back({Diameter{8.0, 8.0}, kHub, {20.9, 45.0}});
    return shape;
}

std::vector<std::pair<const char*, Shape>> samples() {
    return {
        {"snap ring", snapRing()}, {"drilled body", drilledBody()}, {"cone", cone()}, {"wheel hub", wheel()}};
}

/// Largest distance of triangle centres from the surface r(z) of the hub curve, among those that lie on it.
double strayFromHub(const TriangleMesh& mesh) {
    double largest = 0.0;
    for (const auto& [a, b, c] : mesh.triangles) {
        const Vec3 middle = (mesh.positions[a] + mesh.positions[b] + mesh.positions[c]) * (1.0 / 3.0);
        double onCurve = 0.0;
        for (const std::uint32_t corner : {a, b, c}) {
            const Vec3& p = mesh.positions[corner];
            onCurve = std::max(onCurve, std::abs(std::hypot(p.x, p.y) - kHub.radiusAt(p.z)));
        }
        if (onCurve > 1e-4 || middle.z < 20.9 + 1e-6)
            continue;
        // Distance from the ellipse, to first order: implicit value over its slope.
        const double u = (std::hypot(middle.x, middle.y) - kHub.r0) / kHub.r1;
        const double v = (middle.z - kHub.z0) / kHub.z1;
        const double slope = 2.0 * std::hypot(u / kHub.r1, v / kHub.z1);
        largest = std::max(largest, std::abs(u * u + v * v - 1.0) / slope);
    }
    return largest;
}

} // namespace

TEST(SolidMesh, ClosesWithoutAGap) {
    for (const auto& [name, shape] : samples())
        EXPECT_EQ(openSides(built(shape).mesh.faces), 0) << name;
}

TEST(SolidMesh, NormalsAreUnitAndLookOutward) {
    for (const auto& [name, shape] : samples())
        EXPECT_EQ(wrongNormals(built(shape).mesh.faces), 0) << name;
}

TEST(SolidMesh, EdgesAreSidesOfTriangles) {
    for (const auto& [name, shape] : samples()) {
        const SolidPart part = built(shape);
        EXPECT_GT(part.mesh.edges.lines.size(), 10U) << name;
        EXPECT_EQ(linesOffTheMesh(part.mesh), 0) << name;
    }
}

// Divergence sum against the mass properties of the solid (GEO-11), within area times sagitta.
TEST(SolidMesh, HoldsTheVolumeOfTheSolid) {
    const SolidPart part = built(snapRing());
    const double area = 2.0 * (kPi / 4.0 * (19.9 * 19.9 - 16.7 * 16.7) + kPi * 18.3);
    EXPECT_NEAR(signedVolume(part.mesh.faces), part.facts.volumeMm3, area * part.facts.sagittaMm);
    EXPECT_GT(signedVolume(part.mesh.faces), 0.0);
}

TEST(SolidMesh, NoTriangleStraysFurtherThanTheSagitta) {
    const SolidPart part = built(wheel());
    EXPECT_LE(strayFromHub(part.mesh.faces), part.facts.sagittaMm);
    EXPECT_GT(strayFromHub(part.mesh.faces), 0.0);
}

TEST(SolidMesh, NormalsAreThoseOfTheFace) {
    const SolidPart part = built(ringShape(0.0, 20.0, {0.0, 10.0}));
    for (std::size_t i = 0; i < part.mesh.faces.positions.size(); ++i) {
        const Vec3& p = part.mesh.faces.positions[i];
        const Vec3& n = part.mesh.faces.normals[i];
        const Vec3 radial{p.x / 10.0, p.y / 10.0, 0.0};
        const bool flat = std::abs(std::abs(n.z) - 1.0) < 1e-9;
        EXPECT_TRUE(flat || length(n - radial) < 1e-6);
    }
}

TEST(SolidMesh, SmoothEdgesAndSeamsAreNotDrawn) {
    const SolidPart sharp = built(ringShape(0.0, 20.0, {0.0, 10.0}));
    Shape shape = ringShape(0.0, 20.0, {0.0, 10.0});
    shape.edges = {rounding(20.0, 10.0, 2.0)};
    const SolidPart rounded = built(shape);
    for (const auto& [from, to] : rounded.mesh.edges.lines)
        EXPECT_NEAR(rounded.mesh.edges.positions[from].z, 0.0, 1e-9); // only the circle that is left sharp
    EXPECT_EQ(sharp.mesh.edges.lines.size(), 2 * rounded.mesh.edges.lines.size());
}

TEST(SolidMesh, FinerDeflectionGivesMoreTriangles) {
    const Shape shape = ringShape(10.0, 40.0, {0.0, 10.0});
    EXPECT_GT(built(shape, {.deflectionMm = 0.005, .angle = Degrees{20.0}}).facts.triangles,
              built(shape, {.deflectionMm = 0.02, .angle = Degrees{20.0}}).facts.triangles);
}

TEST(SolidMesh, SameShapeGivesTheSameMesh) {
    const SolidPart first = built(snapRing());
    const SolidPart second = built(snapRing());
    EXPECT_EQ(first.mesh.faces.positions, second.mesh.faces.positions);
    EXPECT_EQ(first.mesh.faces.triangles, second.mesh.faces.triangles);
    EXPECT_EQ(first.mesh.edges.lines, second.mesh.edges.lines);
}

TEST(BladeMesh, IsClosedOutwardAndSunkIntoTheHub) {
    for (const double reach : {1.0, 0.6}) {
        Shape shape = wheel();
        shape.blades = {leaningBlades(reach)};
        const SolidPart bladed = built(shape);
        EXPECT_EQ(openSides(bladed.mesh.faces), 0) << reach;
        EXPECT_EQ(wrongNormals(bladed.mesh.faces), 0) << reach;
        // What is sunk is in the mesh twice.
        EXPECT_GT(signedVolume(bladed.mesh.faces), bladed.facts.volumeMm3) << reach;
    }
}

// θ = θ_k + 45°·(z - 20.9)/24.1, clockwise looking at +Z: a blade that starts at 30° ends at 75°.
TEST(BladeMesh, LeansClockwiseWithZ) {
    Shape shape = wheel();
    shape.blades = {leaningBlades(1.0)};
    const SolidPart bladed = built(shape);
    double least = 180.0;
    double most = -180.0;
    for (const Vec3& p : bladed.mesh.faces.positions) {
        const double clock = std::atan2(p.x, p.y) * 180.0 / kPi;
        if (std::abs(p.z - 45.0) > 1e-9 || std::hypot(p.x, p.y) < 25.0 || clock < 45.0 || clock > 105.0)
            continue;
        least = std::min(least, clock);
        most = std::max(most, clock);
    }
    EXPECT_NEAR((least + most) / 2.0, 75.0, 1e-6);
    EXPECT_GT(most, least);
}

// The blades end at the diameter that the edge curve ends with, and nowhere beyond the wheel.
TEST(BladeMesh, StaysWithinTheEdgeCurve) {
    Shape shape = wheel();
    shape.blades = {leaningBlades(1.0)};
    for (const Vec3& p : built(shape).mesh.faces.positions) {
        const double r = std::hypot(p.x, p.y);
        EXPECT_LE(r, p.z > 36.0 ? 25.59 : 36.02);
    }
}

} // namespace gapwise::test
