#include "geometry/mesh/mesh.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

constexpr double kPi = std::numbers::pi;

void addQuad(TriangleMesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
}

/// A closed (r, z) outline swept about Z by `angle`, in `steps`; capped at both ends unless it closes on
/// itself. The outline runs counter-clockwise with r to the right and z up; it must be convex.
TriangleMesh swept(const std::vector<std::array<double, 2>>& outline, double angle, int steps) {
    TriangleMesh mesh;
    const bool whole = angle >= 2.0 * kPi;
    const int rows = whole ? steps : steps + 1;
    const auto side = static_cast<std::uint32_t>(outline.size());
    for (int row = 0; row < rows; ++row) {
        const double t = angle * row / steps;
        for (const auto& [r, z] : outline)
            mesh.positions.push_back({r * std::cos(t), r * std::sin(t), z});
    }
    const auto at = [&](int row, std::uint32_t k) {
        return static_cast<std::uint32_t>(row % rows) * side + k % side;
    };
    for (int row = 0; row < steps; ++row)
        for (std::uint32_t k = 0; k < side; ++k)
            addQuad(mesh, at(row, k), at(row + 1, k), at(row + 1, k + 1), at(row, k + 1));
    for (std::uint32_t k = 1; !whole && k + 1 < side; ++k) {
        mesh.triangles.push_back({at(0, 0), at(0, k), at(0, k + 1)});
        mesh.triangles.push_back({at(steps, 0), at(steps, k + 1), at(steps, k)});
    }
    return mesh;
}

TriangleMesh box(double size) {
    return swept({{0.0, 0.0}, {size, 0.0}, {size, size}, {0.0, size}}, 2.0 * kPi, 4);
}

std::vector<std::array<double, 2>> circleOutline(double centre, double radius, int sides) {
    std::vector<std::array<double, 2>> outline;
    for (int k = 0; k < sides; ++k)
        outline.push_back(
            {centre + radius * std::cos(2.0 * kPi * k / sides), radius * std::sin(2.0 * kPi * k / sides)});
    return outline;
}

TriangleMesh mirrored(TriangleMesh mesh) {
    for (Vec3& p : mesh.positions)
        p.x = -p.x;
    return mesh;
}

TriangleMesh cornerTetrahedron() {
    return TriangleMesh{.positions = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
                        .normals = {},
                        .triangles = {{0, 2, 1}, {0, 1, 3}, {0, 3, 2}, {1, 2, 3}}};
}

} // namespace

// Signed tetrahedron volume changes sign under mirroring: algebra (GEO-10).
TEST(Volume, MirroringTurnsItsSign) {
    EXPECT_NEAR(signedVolume(cornerTetrahedron()), 1.0 / 6.0, 1e-12);
    EXPECT_NEAR(signedVolume(mirrored(cornerTetrahedron())), -1.0 / 6.0, 1e-12);
}

// Divergence sum: calculus (GEO-11). A square of diagonal 2 swept in four steps is a box.
TEST(Volume, BoxIsExact) {
    EXPECT_NEAR(signedVolume(box(std::sqrt(0.5))), std::sqrt(0.5), 1e-12);
    TriangleMesh cube{
        .positions = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}, {0, 0, 1}, {1, 0, 1}, {1, 1, 1}, {0, 1, 1}},
        .normals = {},
        .triangles = {}};
    addQuad(cube, 0, 3, 2, 1);
    addQuad(cube, 4, 5, 6, 7);
    addQuad(cube, 0, 1, 5, 4);
    addQuad(cube, 1, 2, 6, 5);
    addQuad(cube, 2, 3, 7, 6);
    addQuad(cube, 3, 0, 4, 7);
    EXPECT_NEAR(signedVolume(cube), 1.0, 1e-12);
}

// Ring 20/17 × 1.5: 130.769 mm³ (GEO-11), less the facets' share N/2·sin(2π/N) (GEO-12).
TEST(Volume, RingIsItsClosedForm) {
    constexpr int kSteps = 720;
    const TriangleMesh ring = swept({{8.5, 0.0}, {10.0, 0.0}, {10.0, 1.5}, {8.5, 1.5}}, 2.0 * kPi, kSteps);
    const double exact = kPi * (100.0 - 72.25) * 1.5;
    EXPECT_NEAR(exact, 130.769, 5e-4);
    EXPECT_NEAR(signedVolume(ring), exact, exact * 2e-5);
    const double facets = kSteps / (2.0 * kPi) * std::sin(2.0 * kPi / kSteps);
    EXPECT_NEAR(signedVolume(ring), exact * facets, 1e-9);
}

// Torus R 10, r 1: 197.392; with a gap of 10°: 191.909 mm³ (GEO-11).
TEST(Volume, TorusWithAndWithoutAGap) {
    const double exact = 2.0 * kPi * kPi * 10.0;
    EXPECT_NEAR(exact, 197.392, 5e-4);
    EXPECT_NEAR(exact * 350.0 / 360.0, 191.909, 5e-4);
    const auto outline = circleOutline(10.0, 1.0, 200);
    EXPECT_NEAR(signedVolume(swept(outline, 2.0 * kPi, 360)), exact, exact * 5e-4);
    EXPECT_NEAR(signedVolume(swept(outline, 2.0 * kPi * 350.0 / 360.0, 350)), 191.909, 191.909 * 5e-4);
}

// Area of an N-gon prism: geometry (GEO-12).
TEST(Volume, PrismFallsShortOfItsCylinder) {
    const TriangleMesh prism = swept({{0.0, 0.0}, {10.0, 0.0}, {10.0, 1.0}, {0.0, 1.0}}, 2.0 * kPi, 64);
    EXPECT_NEAR(signedVolume(prism), 313.655, 1e-3);
    EXPECT_NEAR(signedVolume(prism) / (kPi * 100.0), 1.0 - 0.0016, 1e-4);
}

// Sagitta r(1 - cos(π/N)), and the N that a tolerance needs: geometry (GEO-13).
TEST(Sagitta, NumbersOfTheClosedForm) {
    EXPECT_NEAR(sagitta(10.0, 64), 0.01205, 1e-5);
    EXPECT_GT(sagitta(10.0, 70), 0.01);
    EXPECT_LE(sagitta(10.0, 71), 0.01);
    EXPECT_GT(sagitta(25.0, 111), 0.01);
    EXPECT_LE(sagitta(25.0, 112), 0.01);
}

TEST(Volume, MovingAndFlippingAPartKeepsIt) {
    TriangleMesh mesh = cornerTetrahedron();
    mesh.normals = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {0, 0, 1}};
    for (const Side face : {Side::Compressor, Side::Turbine}) {
        const Pose pose = poseOf(Seated{.index = Clock::seenFrom(Side::Turbine, Degrees{37.0}),
                                        .referenceFaceLooks = face,
                                        .stationMm = -52.4});
        const TriangleMesh there = moved(mesh, pose);
        EXPECT_NEAR(signedVolume(there), 1.0 / 6.0, 1e-12);
        EXPECT_NEAR(there.normals[2].z, face == Side::Compressor ? 1.0 : -1.0, 1e-12);
        EXPECT_NEAR(length(there.normals[0]), 1.0, 1e-12);
        EXPECT_NEAR(there.positions[0].z, -52.4, 1e-12); // Normals are turned, points also shifted.
    }
}

TEST(Edges, MoveAsThePartMoves) {
    const EdgeLines edge{.positions = {{0, 5, 0}, {0, 5, 2}}, .lines = {{0, 1}}};
    const Pose pose = poseOf(Seated{.index = Clock::seenFrom(Side::Compressor, Degrees{90.0}),
                                    .referenceFaceLooks = Side::Turbine,
                                    .stationMm = 10.0});
    const EdgeLines there = moved(edge, pose);
    EXPECT_NEAR(there.positions[0].x, 5.0, 1e-12);
    EXPECT_NEAR(there.positions[0].z, 10.0, 1e-12);
    EXPECT_NEAR(there.positions[1].z, 8.0, 1e-12);
    EXPECT_EQ(there.lines, edge.lines);
}

TEST(Bounds, HoldAllPointsAndNoMore) {
    const std::array<Vec3, 3> points{{{1, -2, 3}, {-4, 5, 0}, {0, 0, -6}}};
    const Bounds bounds = boundsOf(points);
    EXPECT_EQ(bounds.low, (Vec3{-4, -2, -6}));
    EXPECT_EQ(bounds.high, (Vec3{1, 5, 3}));
    EXPECT_EQ(boundsOf(std::array<Vec3, 1>{{{1, 2, 3}}}).low, (Vec3{1, 2, 3}));
}

} // namespace gapwise
