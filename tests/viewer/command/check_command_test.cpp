#include "tests/viewer/command/run_program.h"
#include "tests/viewer/command/sheets.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <functional>

namespace gapwise::test {

using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using Json = nlohmann::json;

namespace {

constexpr const char* kGood = "builds/alder-72-good.build.json";
constexpr const char* kHalfTurn = "builds/birch-150-half-a-turn.build.json";

/// Checks a sheet as text and as JSON, and insists that both refuse it in the same words.
std::string refusalOf(const std::string& file, const std::string& input = {}) {
    const Ended text = runProgram("gapwise", {.arguments = {"check", file}, .input = input});
    EXPECT_EQ(text.status, 2);
    EXPECT_THAT(text.out, IsEmpty());
    const Ended json = runProgram("gapwise", {.arguments = {"check", file, "--json"}, .input = input});
    EXPECT_EQ(json.status, 2);
    const Json document = parsed(json.out);
    EXPECT_FALSE(document["errors"].empty());
    for (const Json& error : document["errors"])
        for (const char* key : {"file", "pointer", "found", "allowed"})
            EXPECT_TRUE(error.contains(key) && error[key].is_string()) << key;
    EXPECT_EQ(text.err, json.err);
    return text.err;
}

/// The refusal of the good sheet after a change.
std::string refusalOf(const std::function<void(Json&)>& change) {
    const ScratchFolder scratch;
    Json sheet = bundledJson(kGood);
    change(sheet);
    return refusalOf(scratch.write("changed.build.json", sheet.dump()));
}

} // namespace

TEST(CheckCommand, AGoodBuildHolds) {
    const Ended ended = gapwise({"check", bundled(kGood), "--complete"});
    EXPECT_EQ(ended.status, 0) << ended.out;
    EXPECT_THAT(ended.err, IsEmpty());
    EXPECT_THAT(ended.out, EndsWith("\nconsistent with the loaded rules of frame alder-72, revision 1; the "
                                    "maker's manual, local codes and authorised persons prevail\n"));
    EXPECT_THAT(ended.out, HasSubstr("Practice frame – invented numbers – not for work on a machine\n"));
}

TEST(CheckCommand, ABrokenRuleIsStatusOneInTextAndJson) {
    const Ended text = gapwise({"check", bundled(kHalfTurn)});
    EXPECT_EQ(text.status, 1);
    EXPECT_THAT(text.out, HasSubstr("✗ BROKEN  SR-CO.gap"));
    EXPECT_THAT(text.out,
                HasSubstr("\nnot consistent with the loaded rules of frame birch-150, revision 1;"));
    const Ended json = gapwise({"check", bundled(kHalfTurn), "--json"});
    EXPECT_EQ(json.status, 1);
    EXPECT_EQ(parsed(json.out)["findings"][0]["rule"], "SR-CO.gap");
}

TEST(CheckCommand, CompleteCountsWhatIsNotDue) {
    Json sheet = bundledJson(kGood);
    sheet["seatings"].clear();
    sheet["steps_done"].clear();
    const ScratchFolder scratch;
    const std::string file = scratch.write("empty.build.json", sheet.dump());
    EXPECT_EQ(gapwise({"check", file}).status, 0);
    EXPECT_EQ(gapwise({"check", file, "--complete"}).status, 1);
}

TEST(CheckCommand, JsonHasTheDocumentedKeysOnly) {
    const Json document = parsed(gapwise({"check", bundled(kHalfTurn), "--json"}).out);
    EXPECT_EQ(document.size(), 4U);
    EXPECT_EQ(document["frame"], "birch-150");
    EXPECT_EQ(document["holds"], false);
    for (const char* key : {"holds", "broken", "open", "not_due"})
        EXPECT_TRUE(document["counts"][key].is_number_integer()) << key;
    const Json& finding = document["findings"][0];
    for (const char* key : {"rule", "parts", "kind", "severity", "verdict", "expected", "actual",
                            "deviation_deg", "as_seen", "as_printed", "mistakes", "turn", "words"})
        EXPECT_TRUE(finding.contains(key)) << key;
}

TEST(CheckCommand, ReadsAHyphenAsStandardInput) {
    const Ended ended =
        runProgram("gapwise", {.arguments = {"check", "-"}, .input = bundledJson(kHalfTurn).dump()});
    EXPECT_EQ(ended.status, 1);
    EXPECT_THAT(ended.out, HasSubstr("standard input: "));
}

TEST(CheckCommand, FindsAFrameByItsPathBesideTheSheet) {
    const ScratchFolder scratch;
    std::filesystem::copy_file(bundled("frames/alder-72.json"), scratch.path("mine.json"));
    Json sheet = bundledJson(kGood);
    sheet["frame"] = "mine.json";
    EXPECT_EQ(gapwise({"check", scratch.write("k.build.json", sheet.dump())}).status, 0);
}

TEST(CheckCommand, SaysThatItsOutputCouldNotBeWritten) {
    const Ended ended =
        runProgram("gapwise", {.arguments = {"check", bundled(kHalfTurn)}, .outputTo = "/dev/full"});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("standard output cannot be written"));
}

TEST(CheckCommand, SaysThatItsDataAreNotThere) {
    const Ended ended = runProgram("gapwise", {.arguments = {"check", bundled(kGood)},
                                               .environment = {{"GAPWISE_DATA", "/nonexistent"}}});
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("/nonexistent"));
}

TEST(CheckRefusal, NoBuildNamed) {
    const Ended ended = gapwise({"check"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("gapwise check: BUILD: found nothing"));
}

TEST(CheckRefusal, TwoBuildsNamed) {
    const Ended ended = gapwise({"check", bundled(kGood), bundled(kHalfTurn)});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("half-a-turn"));
}

TEST(CheckRefusal, AFileThatIsNotThere) {
    EXPECT_THAT(refusalOf("nowhere.build.json"), HasSubstr("nowhere.build.json: found no such file"));
}

TEST(CheckRefusal, ADirectory) {
    const ScratchFolder scratch;
    EXPECT_THAT(refusalOf(scratch.path("")), HasSubstr("found a directory; allowed: a file"));
}

TEST(CheckRefusal, EveryTruncatedStartOfASheet) {
    const std::string whole = bundledJson("builds/alder-72-ring-face-reversed.build.json").dump();
    for (const std::size_t length : {std::size_t{0}, std::size_t{1}, whole.size() / 3, whole.size() - 1})
        EXPECT_THAT(refusalOf("-", whole.substr(0, length)), HasSubstr("standard input"));
}

TEST(CheckRefusal, TextAfterTheSheet) {
    EXPECT_THAT(refusalOf("-", bundledJson(kGood).dump() + " {}"), HasSubstr("standard input"));
}

TEST(CheckRefusal, AHundredMegabytesOfGarbage) {
    const ScratchFolder scratch;
    std::string piece(1U << 20U, '\0');
    std::uint32_t state = 12345; // a fixed seed: the same garbage every time
    for (char& byte : piece) {
        state = state * 1664525U + 1013904223U;
        byte = static_cast<char>(state >> 24U);
    }
    {
        std::ofstream file(scratch.path("garbage.build.json"), std::ios::binary);
        for (int i = 0; i < 100; ++i)
            file << piece;
    }
    EXPECT_THAT(refusalOf(scratch.path("garbage.build.json")), HasSubstr("found more than 16 MiB"));
}

TEST(CheckRefusal, NestingAHundredThousandDeep) {
    EXPECT_THAT(refusalOf("-", std::string(100000, '[')), HasSubstr("standard input"));
    std::string objects;
    for (int i = 0; i < 100000; ++i)
        objects += R"({"a":)";
    EXPECT_THAT(refusalOf("-", objects), HasSubstr("standard input"));
}

TEST(CheckRefusal, ADuplicateKey) {
    std::string text = bundledJson(kGood).dump();
    text.insert(1, R"("frame":"birch-150",)");
    EXPECT_THAT(refusalOf("-", text), HasSubstr("#/frame"));
}

TEST(CheckRefusal, IdsThatTheFrameLacks) {
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["frame"] = "alder-73"; }), HasSubstr("alder-73"));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["seatings"][1]["part"] = "SR-XX"; }),
                HasSubstr("#/seatings/1/part: found \"SR-XX\""));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["seatings"][1]["seat"] = "seat-SR-XX"; }),
                HasSubstr("#/seatings/1/seat: found \"seat-SR-XX\""));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["steps_done"][0] = "S999"; }),
                HasSubstr("#/steps_done/0: found \"S999\""));
}

TEST(CheckRefusal, KeysThatTheFormatLacks) {
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["seatings"][1]["clock"] = 90; }),
                HasSubstr("#/seatings/1/clock"));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet.erase("frame"); }), HasSubstr("frame"));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["format"] = "gapwise.build/2"; }), HasSubstr("#/format"));
}

TEST(CheckRefusal, ClocksWithoutASideOrBeyondTheCircle) {
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["seatings"][1].erase("seen_from"); }),
                HasSubstr("#/seatings/1"));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["seatings"][1]["clock_deg"] = 360; }),
                HasSubstr("#/seatings/1/clock_deg: found 360"));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["seatings"][1]["clock_deg"] = "3:00"; }),
                HasSubstr("#/seatings/1/clock_deg: found \"3:00\""));
}

TEST(CheckRefusal, AnAttitudeThatContradictsItself) {
    EXPECT_THAT(refusalOf([](Json& sheet) {
                    sheet["attitude"] = {{"up", "turbine"}, {"drain_deg", 0}, {"seen_from", "compressor"}};
                }),
                HasSubstr("#/attitude"));
    EXPECT_THAT(refusalOf([](Json& sheet) { sheet["attitude"] = {{"up", "level"}, {"drain_deg", 0}}; }),
                HasSubstr("#/attitude"));
}

TEST(CheckRefusal, TellsEveryErrorAtOnce) {
    const std::string message = refusalOf([](Json& sheet) {
        sheet["seatings"][1]["part"] = "SR-XX";
        sheet["steps_done"][0] = "S999";
    });
    EXPECT_THAT(message, HasSubstr("#/seatings/1/part"));
    EXPECT_THAT(message, HasSubstr("#/steps_done/0"));
}

} // namespace gapwise::test
