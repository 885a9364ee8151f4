#include "tests/viewer/command/run_program.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace gapwise {

using testing::HasSubstr;

namespace {

const std::string kBuilds = std::string{GAPWISE_TEST_SHARE} + "/builds/";

test::Ended render(std::vector<std::string> arguments, std::map<std::string, std::string> environment = {}) {
    arguments.insert(arguments.begin(), "render");
    return test::runProgram("gapwise",
                            {.arguments = std::move(arguments), .environment = std::move(environment)});
}

std::string bytesOf(const std::string& file) {
    std::ostringstream bytes;
    bytes << std::ifstream{file, std::ios::binary}.rdbuf();
    return bytes.str();
}

/// Width and height as the PNG's header says (PNG specification, section 11.2.2).
std::pair<unsigned, unsigned> pngSize(const std::string& file) {
    const std::string bytes = bytesOf(file);
    const auto numberAt = [&](std::size_t at) {
        unsigned number = 0U;
        for (std::size_t i = 0; i < 4; ++i)
            number = number << 8U | static_cast<unsigned char>(bytes.at(at + i));
        return number;
    };
    return {numberAt(16), numberAt(20)};
}

bool nothingIn(const test::ScratchFolder& folder) {
    return std::filesystem::is_empty(folder.path(""));
}

} // namespace

TEST(RenderProgram, DrawsAFrameByItsId) {
    const test::ScratchFolder folder;
    const std::string out = folder.path("a.png");
    const auto ended = render({"alder-72", "--out", out, "--explode", "1", "--size", "480x320"});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_EQ(pngSize(out), (std::pair{480U, 320U}));
    EXPECT_THAT(ended.out, HasSubstr("not for work on a machine"));
    EXPECT_EQ(ended.err, "");
}

TEST(RenderProgram, DrawsOnePartAlone) {
    const test::ScratchFolder folder;
    const std::string out = folder.path("a.png");
    for (const char* part : {"SR-CO", "HOUSING", "COVER"})
        EXPECT_EQ(render({"alder-72", "--alone", part, "--out", out, "--size", "320x320"}).status, 0) << part;
    EXPECT_EQ(pngSize(out), (std::pair{320U, 320U}));
}

TEST(RenderProgram, RefusesAPartThatIsNotInItsPlace) {
    const test::ScratchFolder folder;
    const auto unknown = render({"alder-72", "--alone", "SR-XX", "--out", folder.path("a.png")});
    EXPECT_EQ(unknown.status, 2);
    EXPECT_THAT(unknown.err,
                HasSubstr("--alone: found \"SR-XX\"; allowed: a part that is in its place: HOUSING"));
    const auto tray = render(
        {kBuilds + "birch-150-half-a-turn.build.json", "--alone", "PLATE", "--out", folder.path("a.png")});
    EXPECT_EQ(tray.status, 2) << "it is on the tray";
    EXPECT_TRUE(nothingIn(folder));
}

TEST(RenderProgram, DrawsABuildFromAFileAndFromStandardInput) {
    const test::ScratchFolder folder;
    const std::string sheet = kBuilds + "birch-150-half-a-turn.build.json";
    ASSERT_EQ(render({sheet, "--out", folder.path("file.png"), "--section", "--size", "400x320"}).status, 0);
    const auto piped = test::runProgram(
        "gapwise", {.arguments = {"render", "-", "--out", folder.path("input.png"), "--size", "400x320"},
                    .input = bytesOf(sheet)});
    EXPECT_EQ(piped.status, 0) << piped.err;
    EXPECT_EQ(pngSize(folder.path("input.png")), (std::pair{400U, 320U}));
}

TEST(RenderProgram, DrawsTheSamePictureTwice) {
    const test::ScratchFolder folder;
    for (const char* name : {"one.png", "two.png"})
        ASSERT_EQ(
            render({"alder-72", "--out", folder.path(name), "--from", "turbine", "--size", "320x320"}).status,
            0);
    EXPECT_EQ(bytesOf(folder.path("one.png")), bytesOf(folder.path("two.png")));
}

TEST(RenderProgram, SpeaksJson) {
    const test::ScratchFolder folder;
    const std::string out = folder.path("a.png");
    const auto ended = render({"alder-72", "--out", out, "--size", "320x320", "--json"});
    const auto json = nlohmann::json::parse(ended.out);
    EXPECT_EQ(json["file"], out);
    EXPECT_EQ(json["width"], 320);
    EXPECT_EQ(json["frame"], "alder-72");
}

TEST(RenderProgram, WithoutEglSaysWhatItNeedsAndWritesNothing) {
    const test::ScratchFolder folder;
    const auto ended = render({"alder-72", "--out", folder.path("a.png")},
                              {{"__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent"}});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, testing::AllOf(HasSubstr("EGL"), HasSubstr("OpenGL 3.3")));
    EXPECT_TRUE(nothingIn(folder));
}

TEST(RenderProgram, WithAnOlderOpenGlSaysWhatItNeedsAndWritesNothing) {
    const test::ScratchFolder folder;
    const auto ended =
        render({"alder-72", "--out", folder.path("a.png")}, {{"MESA_GL_VERSION_OVERRIDE", "2.1"}});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("OpenGL 3.3"));
    EXPECT_TRUE(nothingIn(folder));
}

TEST(RenderProgram, RefusesASizeOutOfRange) {
    const test::ScratchFolder folder;
    for (const char* size : {"8001x900", "900x8001", "10x10", "big"}) {
        const auto ended = render({"alder-72", "--out", folder.path("a.png"), "--size", size});
        EXPECT_EQ(ended.status, 2) << size;
        EXPECT_THAT(ended.err, testing::AllOf(HasSubstr("--size"), HasSubstr("320 to 8000")));
    }
    EXPECT_TRUE(nothingIn(folder));
}

TEST(RenderProgram, RefusesWhatItCannotRead) {
    const test::ScratchFolder folder;
    EXPECT_EQ(render({"no-such-frame", "--out", folder.path("a.png")}).status, 2);
    EXPECT_EQ(render({folder.path(""), "--out", folder.path("a.png")}).status, 2);
    EXPECT_EQ(render({"alder-72"}).status, 2);
    EXPECT_EQ(render({}).status, 2);
    EXPECT_TRUE(nothingIn(folder));
}

TEST(RenderProgram, OfABuildWithAnUnknownPartNamesIt) {
    const test::ScratchFolder folder;
    const std::string sheet =
        folder.write("x.build.json", R"({"format": "gapwise.build/1", "frame": "alder-72",
        "seatings": [{"part": "SR-XX", "seat": "seat-SR-CO"}], "steps_done": []})");
    const auto ended = render({sheet, "--out", folder.path("a.png")});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("SR-XX"));
}

TEST(RenderProgram, WithoutAFolderToWriteToIsBadInput) {
    const test::ScratchFolder folder;
    const auto ended = render({"alder-72", "--out", folder.path("missing/a.png"), "--size", "320x320"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("missing/a.png"));
}

TEST(RenderProgram, OnAFullDiskCannotNow) {
    const auto ended = render({"alder-72", "--out", "/dev/full", "--size", "320x320"});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("/dev/full"));
}

TEST(RenderProgram, WithoutMeshesNamesTheCommandThatMakesThem) {
    const test::ScratchFolder folder;
    const std::string share = folder.path("share");
    std::filesystem::create_directories(share);
    for (const char* part : {"frames", "schema"})
        std::filesystem::copy(std::string{GAPWISE_TEST_SHARE} + "/" + part, share + "/" + part,
                              std::filesystem::copy_options::recursive);
    const auto ended = render({"alder-72", "--out", folder.path("a.png")}, {{"GAPWISE_DATA", share}});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, testing::AllOf(HasSubstr("gapwise-shapes alder-72"), HasSubstr("snap-ring"),
                                          HasSubstr("housing")));
    EXPECT_FALSE(std::filesystem::exists(folder.path("a.png")));
}

} // namespace gapwise
