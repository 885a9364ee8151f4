#include "geometry/meshfile/meshfile.h"

#include "geometry/solids/solids.h"
#include "tests/support/mesh_checks.h"
#include "tests/support/print_error.h"
#include "tests/support/shapes.h"

#include <cmath>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <sstream>
#include <unistd.h>

namespace gapwise::test {

namespace {

class MeshFile : public testing::Test {
protected:
    MeshFile() { std::filesystem::create_directories(folder_); }
    ~MeshFile() override { std::filesystem::remove_all(folder_); }
    MeshFile(const MeshFile&) = delete;
    MeshFile& operator=(const MeshFile&) = delete;

    std::filesystem::path glb() const { return folder_ / "meshes" / "part.glb"; }
    std::filesystem::path folder() const { return folder_; }

private:
    std::filesystem::path folder_ = std::filesystem::temp_directory_path() /
                                    ("gapwise-meshfile-" + std::to_string(::getpid()) + "-" +
                                     testing::UnitTest::GetInstance()->current_test_info()->name());
};

/// A chiral part: a pad to r 30 at the index, one to r 25 a quarter turn clockwise looking at the reference
/// face, and a collar on the reference face.
Shape chiral() {
    Shape shape = ringShape(10.0, 40.0, {-5.0, 5.0});
    shape.rings.push_back(ring(10.0, 20.0, {5.0, 12.0}));
    shape = with(shape, adding(Slot{6.0, {15.0, 30.0}, {-5.0, 5.0}}));
    return with(shape, adding(Slot{6.0, {15.0, 25.0}, {-5.0, 5.0}}, 90.0));
}

const SolidPart& part() {
    static const SolidPart made = buildSolid(chiral(), {}, "chiral").value();
    return made;
}

MeshFacts facts() {
    return {.contentKey = contentKeyOf("chiral"),
            .sagittaMm = 0.04,
            .volumeMm3 = part().facts.volumeMm3,
            .massKg = 0.125,
            .centreMm = part().facts.centreMm,
            .bounds = part().facts.bounds,
            .triangles = part().facts.triangles};
}

std::string contents(const std::filesystem::path& file) {
    std::ifstream stream{file, std::ios::binary};
    std::stringstream text;
    text << stream.rdbuf();
    return text.str();
}

void overwrite(const std::filesystem::path& file, const std::string& bytes) {
    std::ofstream{file, std::ios::binary} << bytes;
}

/// The JSON chunk of a binary glTF file, read by the layout that its specification gives.
nlohmann::json jsonChunk(const std::string& bytes) {
    std::uint32_t length = 0;
    std::memcpy(&length, bytes.data() + 12, 4);
    EXPECT_EQ(bytes.substr(0, 4), "glTF");
    EXPECT_EQ(bytes.substr(16, 4), "JSON");
    return nlohmann::json::parse(bytes.substr(20, length));
}

} // namespace

TEST_F(MeshFile, ComesBackAsItWasWritten) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    const Result<PartMesh> read = readMesh(glb(), "demo");
    ASSERT_TRUE(read) << describe(read.errors()[0]);
    const PartMesh& mesh = part().mesh;
    ASSERT_EQ(read->faces.triangles, mesh.faces.triangles);
    ASSERT_EQ(read->edges.lines, mesh.edges.lines);
    double stray = 0.0;
    for (std::size_t i = 0; i < mesh.faces.positions.size(); ++i)
        stray = std::max({stray, length(read->faces.positions[i] - mesh.faces.positions[i]),
                          length(read->faces.normals[i] - mesh.faces.normals[i])});
    EXPECT_LT(stray, 1e-5); // metres as 32-bit numbers
}

// Right-handed, +Y up: the datum axes as they are (GLTF-01, GLTF-03, GLTF-04, read by another library).
TEST_F(MeshFile, KeepsAxesAndHandedness) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    const PartMesh read = readMesh(glb(), "demo").value();
    const Bounds box = boundsOf(read.faces.positions);
    EXPECT_NEAR(box.high.y, std::hypot(30.0, 0.0), 1e-4); // index at +Y
    EXPECT_NEAR(box.high.x, 25.0, 1e-4);                  // clockwise from it, looking at +Z: +X
    EXPECT_NEAR(box.low.x, -20.0, 0.05);
    EXPECT_NEAR(box.high.z, 12.0, 1e-4); // reference face toward +Z
    EXPECT_NEAR(box.low.z, -5.0, 1e-4);
    EXPECT_GT(signedVolume(read.faces), 0.0);
    EXPECT_EQ(wrongNormals(read.faces), 0);
}

// Metres, nodes without a transform (GLTF-02); modes 4 and 1 are triangles and lines (glTF 2.0, 5.24).
TEST_F(MeshFile, FileIsPlainGltfInMetres) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    const nlohmann::json json = jsonChunk(contents(glb()));
    EXPECT_EQ(json["asset"]["version"], "2.0");
    ASSERT_EQ(json["nodes"].size(), 2U);
    EXPECT_EQ(json["nodes"][0]["name"], "faces");
    EXPECT_EQ(json["nodes"][1]["name"], "edges");
    for (const auto& node : json["nodes"])
        for (const char* const key : {"matrix", "rotation", "scale", "translation"})
            EXPECT_FALSE(node.contains(key)) << key;
    const auto& faces = json["meshes"][json["nodes"][0]["mesh"].get<std::size_t>()]["primitives"][0];
    const auto& edges = json["meshes"][json["nodes"][1]["mesh"].get<std::size_t>()]["primitives"][0];
    EXPECT_EQ(faces.value("mode", 4), 4);
    EXPECT_EQ(edges.value("mode", 4), 1);
    const auto& positions = json["accessors"][faces["attributes"]["POSITION"].get<std::size_t>()];
    EXPECT_NEAR(positions["max"][1].get<double>(), 0.030, 1e-6);
    EXPECT_TRUE(faces["attributes"].contains("NORMAL"));
}

TEST_F(MeshFile, FactsComeBackAsTheyWereWritten) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    const Result<MeshFacts> read = readMeshFacts(glb(), "demo");
    ASSERT_TRUE(read);
    const MeshFacts wrote = facts();
    EXPECT_EQ(read->contentKey, wrote.contentKey);
    EXPECT_EQ(read->volumeMm3, wrote.volumeMm3);
    EXPECT_EQ(read->massKg, wrote.massKg);
    EXPECT_EQ(read->centreMm, wrote.centreMm);
    EXPECT_EQ(read->bounds.low, wrote.bounds.low);
    EXPECT_EQ(read->bounds.high, wrote.bounds.high);
    EXPECT_EQ(read->sagittaMm, wrote.sagittaMm);
    EXPECT_EQ(read->triangles, wrote.triangles);
}

TEST_F(MeshFile, MeshWithoutEdgesHasNoSuchNode) {
    PartMesh bare = part().mesh;
    bare.edges = {};
    ASSERT_FALSE(writeMesh(glb(), bare, facts()));
    const Result<PartMesh> read = readMesh(glb(), "demo");
    ASSERT_TRUE(read);
    EXPECT_TRUE(read->edges.lines.empty());
}

TEST_F(MeshFile, LeavesNothingElseInItsFolder) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    int files = 0;
    for ([[maybe_unused]] const auto& entry : std::filesystem::directory_iterator{glb().parent_path()})
        ++files;
    EXPECT_EQ(files, 2);
}

TEST_F(MeshFile, MissingFileNamesTheCommand) {
    const Result<PartMesh> read = readMesh(glb(), "alder-72");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.errors()[0].where, glb().string());
    EXPECT_EQ(read.errors()[0].found, "no such file");
    EXPECT_EQ(read.errors()[0].allowed, "a mesh made by `gapwise-shapes alder-72`");
}

TEST_F(MeshFile, FolderInsteadOfAFileIsRefused) {
    std::filesystem::create_directories(glb());
    EXPECT_EQ(readMesh(glb(), "demo").errors()[0].found, "not a file");
}

TEST_F(MeshFile, MissingFactsAreNamed) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    std::filesystem::remove(factsFileOf(glb()));
    EXPECT_EQ(readMesh(glb(), "demo").errors()[0].where, factsFileOf(glb()).string());
}

TEST_F(MeshFile, EveryTruncatedLengthIsRefused) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    const std::string whole = contents(glb());
    const std::size_t step = std::max<std::size_t>(1, whole.size() / 200);
    for (std::size_t kept = 0; kept < whole.size(); kept += step) {
        overwrite(glb(), whole.substr(0, kept));
        const Result<PartMesh> read = readMesh(glb(), "demo");
        ASSERT_FALSE(read) << kept;
        EXPECT_EQ(read.errors()[0].allowed, "a mesh made by `gapwise-shapes demo`");
    }
}

TEST_F(MeshFile, ChangedByteTrailingTextAndForeignFilesAreRefused) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    const std::string whole = contents(glb());
    std::string changed = whole;
    changed[whole.size() / 2] = static_cast<char>(changed[whole.size() / 2] ^ 1);
    for (const std::string& bytes :
         {changed, whole + "x", std::string{"solid foreign\nendsolid\n"}, std::string(4096, '\xff')}) {
        overwrite(glb(), bytes);
        EXPECT_FALSE(readMesh(glb(), "demo"));
        EXPECT_FALSE(readMeshFacts(glb(), "demo"));
    }
}

TEST_F(MeshFile, BrokenFactsAreRefused) {
    ASSERT_FALSE(writeMesh(glb(), part().mesh, facts()));
    for (const char* const text : {"", "{", "[]", "{}", "{\"format\": 3}", "{\"format\": \"gapwise.mesh/2\"}",
                                   "{\"format\": \"gapwise.mesh/1\", \"glb_sha256\": 4}"}) {
        overwrite(factsFileOf(glb()), text);
        const Result<MeshFacts> read = readMeshFacts(glb(), "demo");
        ASSERT_FALSE(read) << text;
        EXPECT_EQ(read.errors()[0].where, factsFileOf(glb()).string());
    }
}

TEST_F(MeshFile, PlaceThatIsNoFolderIsAFailureInWords) {
    overwrite(folder() / "meshes", "a file where the folder should be");
    const std::optional<WriteFailure> failure = writeMesh(glb(), part().mesh, facts());
    ASSERT_TRUE(failure);
    EXPECT_FALSE(failure->diskFull);
    EXPECT_FALSE(failure->error.where.empty());
}

// SHA-256 of "abc": FIPS 180-4, example 1 of SHA-256.
TEST(ContentKey, IsTheShaOfTheText) {
    EXPECT_EQ(contentKeyOf("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

} // namespace gapwise::test
