#include "tests/viewer/command/run_program.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <sstream>

namespace gapwise::test {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using Json = nlohmann::json;

TEST(Program, HelpNamesEveryCommand) {
    const Ended ended = gapwise({"--help"});
    EXPECT_EQ(ended.status, 0);
    for (const char* word : {"check", "clock", "frame", "torque", "open", "render", "Exit status"})
        EXPECT_THAT(ended.out, HasSubstr(word));
    EXPECT_THAT(ended.err, IsEmpty());
}

TEST(Program, HelpOfACommandNamesItsOptions) {
    const Ended ended = gapwise({"clock", "--help"});
    EXPECT_EQ(ended.status, 0);
    for (const char* option : {"--from", "--up", "--drain", "--seen-from", "--stand", "--as-seen", "--json"})
        EXPECT_THAT(ended.out, HasSubstr(option));
}

TEST(Program, HelpFitsOneHundredColumns) {
    const std::vector<std::vector<std::string>> commands{{},
                                                         {"check"},
                                                         {"clock"},
                                                         {"frame"},
                                                         {"frame", "check"},
                                                         {"frame", "show"},
                                                         {"torque"},
                                                         {"torque", "convert"},
                                                         {"torque", "wrench"},
                                                         {"torque", "preload"},
                                                         {"torque", "nut-line"},
                                                         {"torque", "pattern"}};
    for (std::vector<std::string> arguments : commands) {
        arguments.emplace_back("--help");
        std::istringstream lines(gapwise(arguments).out);
        for (std::string line; std::getline(lines, line);)
            EXPECT_LE(line.size(), 100U) << line;
    }
}

TEST(Program, SaysItsVersion) {
    const Ended ended = gapwise({"--version"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_THAT(ended.out, ::testing::MatchesRegex("gapwise [0-9]+\\.[0-9]+\\.[0-9]+\n"));
}

TEST(Program, RefusesAnUnknownCommand) {
    const Ended ended = gapwise({"chek", "some.build.json"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("found \"chek\""));
    EXPECT_THAT(ended.err, HasSubstr("gapwise --help"));
}

TEST(Program, RefusesAnUnknownOptionInJsonToo) {
    const Ended ended = gapwise({"--sideways", "--json"});
    EXPECT_EQ(ended.status, 2);
    const Json document = Json::parse(ended.out, nullptr, false);
    ASSERT_FALSE(document.is_discarded());
    EXPECT_EQ(document["errors"][0]["file"], "command line");
    EXPECT_EQ(document["errors"][0]["found"], "\"--sideways\"");
}

TEST(Program, AnErrorWithBytesThatAreNoTextIsStillJson) {
    const Ended ended = gapwise({"clock", "\xff\xfe", "--from", "turbine", "--json"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_FALSE(Json::parse(ended.out, nullptr, false).is_discarded());
}

TEST(Program, SaysWhenStandardOutputIsFull) {
    const Ended ended = runProgram(
        "gapwise", {.arguments = {"clock", "3:00", "--from", "compressor"}, .outputTo = "/dev/full"});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("standard output cannot be written: No space left on device"));
}

TEST(Program, SaysWhenAnErrorInJsonCannotBeWritten) {
    const Ended ended =
        runProgram("gapwise", {.arguments = {"clock", "13:00", "--from", "compressor", "--json"},
                               .outputTo = "/dev/full"});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("CLOCK"));
    EXPECT_THAT(ended.err, HasSubstr("standard output cannot be written"));
}

/// The program alone in a folder: nothing lies beside it.
class LonelyProgram : public ::testing::Test {
protected:
    LonelyProgram() {
        std::filesystem::copy_file(GAPWISE_TEST_BINARY_DIR "/gapwise", folder_.path("gapwise"));
    }

    Ended run(std::vector<std::string> arguments) const {
        return runProgram(folder_.path("gapwise"), {.arguments = std::move(arguments)});
    }
    void put(const std::string& name, const std::string& script) const {
        std::filesystem::permissions(folder_.write(name, script), std::filesystem::perms::owner_all);
    }
    std::string beside(const std::string& name) const { return folder_.path(name); }

private:
    ScratchFolder folder_;
};

TEST_F(LonelyProgram, NamesTheMissingWindowProgram) {
    for (const auto& arguments : std::vector<std::vector<std::string>>{
             {}, {"open"}, {"render", "alder-72", "--out", "never.png"}, {beside("gapwise")}}) {
        const Ended ended = run(arguments);
        EXPECT_EQ(ended.status, 3);
        EXPECT_THAT(ended.err, HasSubstr(beside("gapwise-window") + ": found No such file"));
        EXPECT_THAT(ended.out, IsEmpty());
    }
}

// A program of the same name that only tells what it was given.
TEST_F(LonelyProgram, HandsItsArgumentsAndItsStatusToTheWindowProgram) {
    put("gapwise-window", "#!/bin/sh\nprintf '<%s>' \"$@\"\nexit 7\n");
    const Ended render = run({"render", "alder-72", "--out", "a b.png", "--json"});
    EXPECT_EQ(render.status, 7);
    EXPECT_EQ(render.out, "<render><alder-72><--out><a b.png><--json>");
    EXPECT_EQ(run({}).out, "<open>");
    EXPECT_EQ(run({beside("gapwise")}).out, "<open><" + beside("gapwise") + ">");
}

TEST_F(LonelyProgram, StillKnowsItsClocks) {
    EXPECT_EQ(run({"clock", "3:00", "--from", "compressor"}).status, 0);
}

} // namespace gapwise::test
