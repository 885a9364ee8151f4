#include "geometry/meshfile/meshfile.h"
#include "models/frame/read_frame.h"
#include "tests/support/mesh_checks.h"
#include "tests/support/print_error.h"

#include <cmath>
#include <gtest/gtest.h>

namespace gapwise::test {

namespace {

const DataFolder kData{GAPWISE_TEST_SHARE};

const std::vector<Frame>& frames() {
    static const std::vector<Frame> all = [] {
        std::vector<Frame> read;
        for (const std::string& id : bundledFrames(kData))
            read.push_back(readFrame(kData, id).value());
        return read;
    }();
    return all;
}

MeshFacts factsOf(const Frame& frame, const PartType& type) {
    const Result<MeshFacts> facts = readMeshFacts(kData.meshFile(frame.id, type.id), frame.id.text);
    EXPECT_TRUE(facts) << (facts ? "" : describe(facts.errors()[0]));
    return facts ? facts.value() : MeshFacts{};
}

PartMesh meshOf(const Frame& frame, const PartType& type) {
    const Result<PartMesh> mesh = readMesh(kData.meshFile(frame.id, type.id), frame.id.text);
    EXPECT_TRUE(mesh) << (mesh ? "" : describe(mesh.errors()[0]));
    return mesh ? mesh.value() : PartMesh{};
}

std::string nameOf(const Frame& frame, const PartType& type) {
    return frame.id.text + " " + type.id.text;
}

/// Parts lists state masses to two digits: half a unit of the second.
double roundingOf(double mass) {
    return 0.5 * std::pow(10.0, std::floor(std::log10(mass)) - 1.0);
}

/// Area of the triangles that lie in the plane z.
double flatArea(const TriangleMesh& mesh, double z) {
    double area = 0.0;
    for (const auto& [a, b, c] : mesh.triangles) {
        const Vec3& p = mesh.positions[a];
        const Vec3& q = mesh.positions[b];
        const Vec3& r = mesh.positions[c];
        if (std::max({std::abs(p.z - z), std::abs(q.z - z), std::abs(r.z - z)}) < 1e-4)
            area += length(cross(q - p, r - p)) / 2.0;
    }
    return area;
}

double areaOf(const TriangleMesh& mesh) {
    double area = 0.0;
    for (const auto& [a, b, c] : mesh.triangles)
        area +=
            length(cross(mesh.positions[b] - mesh.positions[a], mesh.positions[c] - mesh.positions[a])) / 2.0;
    return area;
}

/// How far the mesh is from being its own mirror image in the plane through axis and index: largest
/// difference of how much of it lies on both sides at each corner's distance.
double sidedness(const TriangleMesh& mesh) {
    double right = 0.0;
    double left = 0.0;
    for (const Vec3& p : mesh.positions) {
        right = std::max(right, p.x);
        left = std::max(left, -p.x);
    }
    return std::abs(right - left);
}

} // namespace

TEST(BundledMeshes, AreThereForEveryFrame) {
    EXPECT_EQ(frames().size(), 3U);
    for (const Frame& frame : frames())
        EXPECT_GT(frame.types.size(), 10U) << frame.id.text;
}

// The masses of the parts list against volume times density, within 3 % and their own rounding; invented
// numbers, computed once from the same sizes by another way.
TEST(BundledMeshes, MassesAreThoseOfThePartsList) {
    for (const Frame& frame : frames()) {
        for (const PartType& type : frame.types) {
            const double allowed = 0.03 * type.massKg + roundingOf(type.massKg);
            EXPECT_NEAR(factsOf(frame, type).massKg, type.massKg, allowed) << nameOf(frame, type);
        }
    }
}

TEST(BundledMeshes, CartridgeTakesAtMostSixtyThousandTriangles) {
    for (const Frame& frame : frames()) {
        std::size_t triangles = 0;
        for (const Part& part : frame.parts)
            triangles += part.casing ? 0 : factsOf(frame, *frame.type(part.type)).triangles;
        EXPECT_GT(triangles, 10000U) << frame.id.text;
        EXPECT_LE(triangles, 60000U) << frame.id.text;
    }
}

TEST(BundledMeshes, CloseAndLookOutward) {
    for (const Frame& frame : frames()) {
        for (const PartType& type : frame.types) {
            const PartMesh mesh = meshOf(frame, type);
            EXPECT_EQ(openSides(mesh.faces), 0) << nameOf(frame, type);
            EXPECT_EQ(wrongNormals(mesh.faces), 0) << nameOf(frame, type);
            EXPECT_EQ(mesh.faces.triangles.size(), factsOf(frame, type).triangles) << nameOf(frame, type);
        }
    }
}

TEST(BundledMeshes, EdgesLieOnTheTriangles) {
    for (const Frame& frame : frames()) {
        for (const PartType& type : frame.types) {
            const PartMesh mesh = meshOf(frame, type);
            EXPECT_GT(mesh.edges.lines.size(), 0U) << nameOf(frame, type);
            // Where a blade stands on the hub, its line crosses triangles; a thread is drawn, not cut.
            const bool besides = !type.shape.blades.empty() || !type.shape.threads.empty();
            EXPECT_TRUE(besides || linesOffTheMesh(mesh) == 0) << nameOf(frame, type);
        }
    }
}

// Divergence sum against the solid's own volume (GEO-11), within area times sagitta; bladed parts hold what
// is sunk twice.
TEST(BundledMeshes, HoldTheVolumeOfTheirSolids) {
    for (const Frame& frame : frames()) {
        for (const PartType& type : frame.types) {
            const MeshFacts facts = factsOf(frame, type);
            const TriangleMesh mesh = meshOf(frame, type).faces;
            const double stray = std::min(areaOf(mesh) * facts.sagittaMm, 0.03 * facts.volumeMm3);
            const double sunk = type.shape.blades.empty() ? 0.0 : 0.05 * facts.volumeMm3;
            EXPECT_GT(signedVolume(mesh), facts.volumeMm3 - stray) << nameOf(frame, type);
            EXPECT_LT(signedVolume(mesh), facts.volumeMm3 + stray + sunk) << nameOf(frame, type);
        }
    }
}

// Outside diameter and thickness of a seated ring; the gap at the index; one rounded and one sharp face.
TEST(BundledMeshes, SnapRingsHaveTheirGapAtTheIndexAndOneRoundedFace) {
    for (const Frame& frame : frames()) {
        const PartType& type = *frame.type(PartTypeId{"snap-ring"});
        const TriangleMesh mesh = meshOf(frame, type).faces;
        const Bounds box = boundsOf(mesh.positions);
        const double radius = std::get<Diameter>(type.shape.rings[0].outside).atFrom / 2.0;
        EXPECT_NEAR(box.low.y, -radius, factsOf(frame, type).sagittaMm) << frame.id.text;
        EXPECT_NEAR(box.high.x, radius, factsOf(frame, type).sagittaMm) << frame.id.text;
        EXPECT_NEAR(box.high.z - box.low.z, type.shape.rings[0].z.length(), 1e-4) << frame.id.text;
        EXPECT_LT(sidedness(mesh), 0.02) << frame.id.text;
        EXPECT_NEAR(factsOf(frame, type).centreMm.x, 0.0, 1e-3) << frame.id.text;
        for (const Vec3& p : mesh.positions)
            ASSERT_FALSE(p.y > 0.0 && std::abs(p.x) < *type.gapMm / 2.0 - 1e-4) << frame.id.text;
        EXPECT_LT(flatArea(mesh, box.high.z), 0.95 * flatArea(mesh, box.low.z)) << frame.id.text;
    }
}

// The pad of the oil inlet looks up, that of the drain down.
TEST(BundledMeshes, HousingHasItsInletOnTopAndItsDrainBelow) {
    for (const Frame& frame : frames()) {
        const PartType& type = *frame.typeOf(frame.housing);
        const TriangleMesh mesh = meshOf(frame, type).faces;
        const auto reach = [&](const char* id) {
            return extentOf(frame.feature(FeatureId{id}).feature->form);
        };
        const Extent inlet = reach("F01-pad");
        const Extent drain = reach("F16-pad");
        int up = 0;
        int down = 0;
        for (const Vec3& p : mesh.positions) {
            up += std::abs(p.y - inlet.r.to) < 1e-4 && std::abs(p.x) < inlet.widthMm / 2.0 + 1e-4 ? 1 : 0;
            down += std::abs(p.y + drain.r.to) < 1e-4 && std::abs(p.x) < drain.widthMm / 2.0 + 1e-4 ? 1 : 0;
        }
        EXPECT_GE(up, 8) << frame.id.text;
        EXPECT_GE(down, 8) << frame.id.text;
    }
}

} // namespace gapwise::test
