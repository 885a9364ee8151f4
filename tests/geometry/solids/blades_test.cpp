#include "geometry/solids/blades.h"

#include "tests/geometry/solids/built.h"
#include "tests/support/mesh_checks.h"

#include <algorithm>
#include <vector>

namespace gapwise::test {

namespace {

// Two invented compressor wheels and a turbine wheel, one set of blades each.

Blades compressorOf72(double first, double reach) {
    return {6,
            0.9,
            Degrees{first},
            Degrees{45.0},
            20.9,
            45.0,
            reach,
            {36.0, -27.6, 45.0, -24.1},
            {36.0, -10.43, 36.0, -10.53},
            Span{20.9, 25.47}};
}

Blades compressorOf150(double first, double reach) {
    return {7,
            1.6,
            Degrees{first},
            Degrees{45.0},
            39.5,
            88.0,
            reach,
            {75.0, -58.0, 90.0, -50.5},
            {75.0, -21.65, 68.0, -18.85},
            Span{39.5, 49.15}};
}

Blades turbineOf66() {
    return {11,
            1.3,
            Degrees{0.0},
            Degrees{-35.0},
            -79.3,
            -105.0,
            1.0,
            {33.0, -25.0, -105.0, 25.7},
            {33.0, -6.0, -96.0, 9.0},
            Span{-87.0, -79.3}};
}

double degreesOf(const Vec3& p) {
    return std::atan2(p.x, p.y) * 180.0 / kPi;
}

/// The corners of the tip of one blade nearest to a z: they stand either side of its surface.
std::vector<Vec3> tipAt(const TriangleMesh& blade, double z, double r) {
    std::vector<Vec3> tip;
    for (const Vec3& p : blade.positions) {
        if (std::abs(p.z - z) < 1e-9 && std::abs(std::hypot(p.x, p.y) - r) < 0.05)
            tip.push_back(p);
    }
    return tip;
}

/// Clock of the middle of the tip there, clockwise looking at +Z.
double clockAt(const TriangleMesh& blade, double z, double r) {
    const std::vector<Vec3> tip = tipAt(blade, z, r);
    EXPECT_FALSE(tip.empty());
    const auto [low, high] = std::minmax_element(
        tip.begin(), tip.end(), [](const Vec3& a, const Vec3& b) { return degreesOf(a) < degreesOf(b); });
    return tip.empty() ? 0.0 : degreesOf(*low + *high);
}

/// The way across the tip, square to the radius.
double widthAt(const TriangleMesh& blade, double z, double r) {
    const std::vector<Vec3> tip = tipAt(blade, z, r);
    double widest = 0.0;
    for (const Vec3& p : tip)
        widest = std::max(widest, length(p - tip.front()));
    return widest;
}

} // namespace

TEST(Blades, EachIsAClosedSheet) {
    const std::vector<Blades> sets{compressorOf72(0.0, 1.0), compressorOf72(30.0, 0.6),
                                   compressorOf150(0.0, 1.0), compressorOf150(180.0 / 7.0, 0.6),
                                   turbineOf66()};
    for (const Blades& blades : sets) {
        const std::vector<TriangleMesh> sheets = bladeSheets(blades, 0.03);
        EXPECT_EQ(static_cast<int>(sheets.size()), blades.count);
        for (const TriangleMesh& sheet : sheets) {
            EXPECT_EQ(openSides(sheet), 0);
            EXPECT_EQ(wrongNormals(sheet), 0);
            EXPECT_GT(signedVolume(sheet), 0.0);
        }
    }
}

// A wheel that turns clockwise seen from the compressor meets the air with its inducer edge first: that edge
// stands further clockwise than the outlet edge of the same blade. In a mirrored wheel it stands behind.
TEST(Blades, InducerEdgeOfACompressorBladeLeads) {
    const TriangleMesh small = bladeSheets(compressorOf72(0.0, 1.0), 0.03).front();
    EXPECT_NEAR(clockAt(small, 45.0, 25.57), 45.0, 1e-6);
    EXPECT_NEAR(clockAt(small, 20.9, 36.0), 0.0, 1e-6);
    const TriangleMesh large = bladeSheets(compressorOf150(0.0, 1.0), 0.03).front();
    EXPECT_NEAR(clockAt(large, 88.0, 53.35), 45.0, 1e-6);
    EXPECT_NEAR(clockAt(large, 39.5, 75.0), 0.0, 1e-6);
}

// The gas leaves a turbine wheel against its turning: the exducer edge stands behind.
TEST(Blades, ExducerEdgeOfATurbineBladeLags) {
    const TriangleMesh blade = bladeSheets(turbineOf66(), 0.03).front();
    EXPECT_NEAR(clockAt(blade, -79.3, 33.0), 0.0, 1e-6);
    EXPECT_NEAR(clockAt(blade, -105.0, 27.0), -35.0, 1e-6);
}

TEST(Blades, StandEvenlyClockwiseFromTheFirst) {
    const std::vector<TriangleMesh> sheets = bladeSheets(compressorOf72(30.0, 0.6), 0.03);
    for (std::size_t k = 0; k < 3; ++k)
        EXPECT_NEAR(clockAt(sheets[k], 20.9, 36.0), 30.0 + 60.0 * static_cast<double>(k), 1e-6);
}

// 0.6 of the way from 20.9 to 45.0 and from 39.5 to 88.0.
TEST(Blades, SplittersEndAfterSixTenthsOfTheWay) {
    const auto reachOf = [](const Blades& blades) {
        return boundsOf(bladeSheets(blades, 0.03).front().positions);
    };
    EXPECT_NEAR(reachOf(compressorOf72(30.0, 0.6)).high.z, 20.9 + 0.6 * 24.1, 1e-9);
    EXPECT_NEAR(reachOf(compressorOf150(30.0, 0.6)).high.z, 39.5 + 0.6 * 48.5, 1e-9);
    EXPECT_NEAR(reachOf(compressorOf72(0.0, 1.0)).high.z, 45.0, 1e-9);
}

// At the tip of the inducer the surface slopes by r·45°/24.1 mm: 0.9 square to it is 0.9·√(1 + slope²)
// across.
TEST(Blades, ThicknessIsSquareToTheLeaningSurface) {
    const double r = 36.0 - 10.43;
    const double slope = r * kPi / 4.0 / 24.1;
    EXPECT_NEAR(widthAt(bladeSheets(compressorOf72(0.0, 1.0), 0.03).front(), 45.0, r),
                0.9 * std::hypot(1.0, slope), 1e-6);
}

// The outlet edge runs straight along the largest radius, from the hub's rim to where the tip curve begins.
TEST(Blades, OutletEdgeIsStraight) {
    const TriangleMesh blade = bladeSheets(compressorOf72(0.0, 1.0), 0.03).front();
    EXPECT_FALSE(tipAt(blade, 25.47, 36.0).empty());
    for (const Vec3& p : blade.positions)
        EXPECT_LE(std::hypot(p.x, p.y), p.z > 25.47 + 1e-9 ? 36.0 : 36.02);
    EXPECT_NEAR(clockAt(blade, 25.47, 36.0), 45.0 * (25.47 - 20.9) / 24.1, 1e-6);
}

} // namespace gapwise::test
