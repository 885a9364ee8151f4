#include "geometry/meshfile/meshfile.h"
#include "tests/viewer/command/run_program.h"

#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <nlohmann/json.hpp>
#include <sstream>

namespace gapwise::test {

using ::testing::HasSubstr;
using ::testing::Not;

namespace {

const std::string kSmallFrame = GAPWISE_TEST_FRAMES "/small.json";

Ended shapes(std::vector<std::string> arguments) {
    return runProgram("gapwise-shapes", {.arguments = std::move(arguments)});
}

std::string textOf(const std::filesystem::path& file) {
    std::ifstream stream{file, std::ios::binary};
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

std::size_t filesIn(const std::filesystem::path& folder) {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::recursive_directory_iterator{folder})
        files += entry.is_regular_file() ? 1U : 0U;
    return files;
}

/// The small frame with something changed.
std::string changedFrame(const ScratchFolder& scratch, const std::function<void(nlohmann::json&)>& change) {
    nlohmann::json frame = nlohmann::json::parse(textOf(kSmallFrame));
    change(frame);
    return scratch.write("changed.json", frame.dump());
}

nlohmann::json& shapeOf(nlohmann::json& frame, std::size_t type) {
    return frame["part_types"][type]["shape"];
}

} // namespace

TEST(ShapesProgram, MakesOneMeshAPartType) {
    const ScratchFolder scratch;
    const Ended ended = shapes({kSmallFrame, "--out", scratch.path("meshes")});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_THAT(ended.out, HasSubstr("small: 7 part types"));
    const nlohmann::json frame = nlohmann::json::parse(textOf(kSmallFrame));
    for (const auto& type : frame["part_types"]) {
        const std::string id = type["id"];
        EXPECT_TRUE(readMesh(scratch.path("meshes/" + id + ".glb"), "small")) << id;
    }
    EXPECT_EQ(filesIn(scratch.path("")), 14U); // nothing else is left
}

TEST(ShapesProgram, LeavesAMeshThatIsUpToDate) {
    const ScratchFolder scratch;
    const std::string pin = scratch.path("meshes/pin.glb");
    ASSERT_EQ(shapes({kSmallFrame, "--out", scratch.path("meshes")}).status, 0);
    const auto written = std::filesystem::last_write_time(pin);
    const Ended again = shapes({kSmallFrame, "--out", scratch.path("meshes")});
    EXPECT_EQ(again.status, 0);
    EXPECT_THAT(again.out, Not(HasSubstr(" s\n")));
    EXPECT_THAT(again.out, HasSubstr("up to date"));
    EXPECT_EQ(std::filesystem::last_write_time(pin), written);
    const Ended forced = shapes({kSmallFrame, "--out", scratch.path("meshes"), "--force"});
    EXPECT_THAT(forced.out, Not(HasSubstr("up to date")));
}

TEST(ShapesProgram, MakesABrokenOrMissingMeshAnew) {
    const ScratchFolder scratch;
    ASSERT_EQ(shapes({kSmallFrame, "--out", scratch.path("meshes")}).status, 0);
    const std::string whole = textOf(scratch.path("meshes/pin.glb"));
    std::ofstream{scratch.path("meshes/pin.glb"), std::ios::binary} << whole.substr(0, 100);
    std::filesystem::remove(scratch.path("meshes/bush.glb"));
    const Ended again = shapes({kSmallFrame, "--out", scratch.path("meshes")});
    EXPECT_EQ(again.status, 0);
    EXPECT_EQ(textOf(scratch.path("meshes/pin.glb")), whole);
    EXPECT_TRUE(readMesh(scratch.path("meshes/bush.glb"), "small"));
}

TEST(ShapesProgram, ChangedSizeOrDensityMakesOnlyThatMeshAnew) {
    const ScratchFolder scratch;
    ASSERT_EQ(shapes({kSmallFrame, "--out", scratch.path("meshes")}).status, 0);
    const std::string changed = changedFrame(scratch, [](nlohmann::json& frame) {
        frame["part_types"][6]["density_g_cm3"] = 2.7;
        frame["part_types"][6]["name"] = "another name";
        frame["part_types"][5]["name"] = "another name";
    });
    const Ended ended = shapes({changed, "--out", scratch.path("meshes"), "--jobs", "1"});
    ASSERT_EQ(ended.status, 0) << ended.err;
    std::istringstream lines{ended.out};
    std::vector<std::string> madeAnew;
    for (std::string line; std::getline(lines, line);) {
        if (line.find("triangles ") != std::string::npos && line.find("up to date") == std::string::npos)
            madeAnew.push_back(line.substr(0, line.find(' ')));
    }
    EXPECT_THAT(madeAnew, ::testing::ElementsAre("collar", "small:"));
}

TEST(ShapesProgram, SizesThatMakeNoSolidAreRefusedAndNothingIsWritten) {
    const ScratchFolder scratch;
    const std::string changed = changedFrame(scratch, [](nlohmann::json& frame) {
        shapeOf(frame, 2)["edges"][0]["radius_mm"] = 5.0; // on a ring 1 mm thick
    });
    const Ended ended = shapes({changed, "--out", scratch.path("meshes")});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("changed.json#/part_types/2/shape/edges/0"));
    EXPECT_EQ(filesIn(scratch.path("")), 1U);
}

TEST(ShapesProgram, BoreLargerThanItsHousingIsRefused) {
    const ScratchFolder scratch;
    const std::string changed =
        changedFrame(scratch, [](nlohmann::json& frame) { shapeOf(frame, 6)["rings"][0]["bore_mm"] = 19.0; });
    const Ended ended = shapes({changed, "--out", scratch.path("meshes")});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("/part_types/6/shape/rings/0"));
    EXPECT_EQ(filesIn(scratch.path("")), 1U);
}

TEST(ShapesProgram, FrameThatIsNotThereIsNamed) {
    const Ended ended = shapes({"no-such-frame"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("no-such-frame"));
}

TEST(ShapesProgram, WrongUsageIsRefused) {
    EXPECT_EQ(shapes({}).status, 2);
    EXPECT_EQ(shapes({kSmallFrame, "--jobs", "0"}).status, 2);
    EXPECT_EQ(shapes({kSmallFrame, "--sideways"}).status, 2);
    EXPECT_EQ(shapes({"--help"}).status, 0);
}

TEST(ShapesProgram, PlaceThatCannotBeWrittenIsNotBadInput) {
    const ScratchFolder scratch;
    const std::string file = scratch.write("file", "where a folder should be");
    const Ended ended = shapes({kSmallFrame, "--out", file + "/meshes"});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr(file));
}

} // namespace gapwise::test
