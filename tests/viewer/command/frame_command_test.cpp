#include "tests/viewer/command/run_program.h"
#include "tests/viewer/command/sheets.h"

#include "viewer/command/text_layout.h"

#include <gmock/gmock.h>

#include <functional>
#include <sstream>

namespace gapwise::test {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using Json = nlohmann::json;

namespace {

constexpr const char* kNotice = "Practice frame – invented numbers – not for work on a machine\n";

/// What `frame check` says of a bundled frame after a change, as its errors; the status must be 2.
Json errorsOf(const std::function<void(Json&)>& change) {
    const ScratchFolder scratch;
    Json frame = bundledJson("frames/alder-72.json");
    change(frame);
    const Ended ended = gapwise({"frame", "check", scratch.write("changed.json", frame.dump()), "--json"});
    EXPECT_EQ(ended.status, 2);
    return parsed(ended.out)["errors"];
}

Json& ruleOf(Json& frame, const std::string& id) {
    for (Json& rule : frame["rules"])
        if (rule["id"] == id)
            return rule;
    throw std::out_of_range(id);
}

class BundledFrame : public ::testing::TestWithParam<const char*> {};

} // namespace

INSTANTIATE_TEST_SUITE_P(All, BundledFrame, ::testing::Values("alder-72", "alder-72-pinned", "birch-150"));

TEST_P(BundledFrame, CanBeUsedById) {
    const Ended text = gapwise({"frame", "check", GetParam()});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr(std::string{"frame "} + GetParam() + ", revision 1: can be used"));
    EXPECT_THAT(text.out, HasSubstr(kNotice));
    const Json document = parsed(gapwise({"frame", "check", GetParam(), "--json"}).out);
    EXPECT_EQ(document["frame"], GetParam());
    EXPECT_EQ(document["usable"], true);
}

TEST_P(BundledFrame, ShowsEveryPartSeatRuleAndStep) {
    const std::string text = gapwise({"frame", "show", GetParam()}).out;
    const Json frame = bundledJson(std::string{"frames/"} + GetParam() + ".json");
    for (const char* list : {"parts", "seats", "rules", "steps", "measurements", "chains", "fasteners"})
        for (const Json& thing : frame[list])
            EXPECT_THAT(text, HasSubstr("  " + thing["id"].get<std::string>() + " "));
    EXPECT_THAT(text, HasSubstr(kNotice));
}

TEST_P(BundledFrame, IsReadableAtAHundredColumns) {
    std::istringstream lines(gapwise({"frame", "show", GetParam()}).out);
    for (std::string line; std::getline(lines, line);)
        EXPECT_LE(columnsOf(line), kTextColumns) << line;
}

TEST_P(BundledFrame, ShowsTheSameAsJson) {
    const Json document = parsed(gapwise({"frame", "show", GetParam(), "--json"}).out);
    const Json frame = bundledJson(std::string{"frames/"} + GetParam() + ".json");
    for (const char* list :
         {"parts", "seats", "rules", "steps", "measurements", "chains", "fasteners", "rests"})
        EXPECT_EQ(document[list].size(), frame[list].size()) << list;
    for (const char* key : {"frame", "name", "size", "variant", "sister", "purpose", "source", "rotation"})
        EXPECT_TRUE(document.contains(key)) << key;
}

TEST(FrameShow, GivesEveryPrintedClockFromBothSides) {
    const std::string text = gapwise({"frame", "show", "alder-72"}).out;
    EXPECT_THAT(text,
                HasSubstr("gap at 3:00 seen from the turbine side = 9:00 seen from the compressor side,"));
    Json document = parsed(gapwise({"frame", "show", "alder-72", "--json"}).out);
    EXPECT_EQ(ruleOf(document, "SR-TO.gap")["clocks"],
              Json::parse(R"([{"clock_deg":90.0,"seen_from":"turbine"},
                              {"clock_deg":270.0,"seen_from":"compressor"}])"));
}

TEST(FrameCheck, TellsWhereAndWhatIsAllowed) {
    const Json errors = errorsOf([](Json& frame) { ruleOf(frame, "SR-TO.gap")["seen_from"] = "left"; });
    ASSERT_FALSE(errors.empty());
    EXPECT_THAT(errors[0]["file"].get<std::string>(), ::testing::EndsWith("changed.json"));
    EXPECT_THAT(errors[0]["pointer"].get<std::string>(), HasSubstr("/seen_from"));
    EXPECT_EQ(errors[0]["found"], "\"left\"");
    EXPECT_THAT(errors[0]["allowed"].get<std::string>(), HasSubstr("turbine"));
}

TEST(FrameCheck, RefusesAClockThatNamesNoSide) {
    EXPECT_FALSE(errorsOf([](Json& frame) { ruleOf(frame, "SR-TO.gap").erase("seen_from"); }).empty());
}

TEST(FrameCheck, RefusesRulesThatExcludeEachOther) {
    EXPECT_FALSE(errorsOf([](Json& frame) {
                     Json rule = ruleOf(frame, "SR-TO.gap");
                     rule["id"] = "SR-TO.gap-2";
                     rule["clock_deg"] = 270;
                     rule.erase("twin");
                     frame["rules"].push_back(rule);
                 }).empty());
}

TEST(FrameCheck, RefusesAStepThatWaitsForItself) {
    EXPECT_FALSE(errorsOf([](Json& frame) {
                     frame["steps"][0]["after"] = {{{"step", frame["steps"][0]["id"]},
                                                    {"reason", "PHY"},
                                                    {"why", "it waits for itself"}}};
                 }).empty());
}

TEST(FrameCheck, TellsEveryErrorAtOnce) {
    const Json errors = errorsOf([](Json& frame) {
        ruleOf(frame, "SR-TO.gap")["severity"] = 9;
        frame["parts"][0]["colour"] = "grey";
        frame["part_types"][0]["mass_kg"] = "heavy";
    });
    EXPECT_GE(errors.size(), 3U);
}

TEST(FrameCommand, RefusesAnUnknownFrame) {
    for (const char* act : {"check", "show"}) {
        const Ended ended = gapwise({"frame", act, "alder-73"});
        EXPECT_EQ(ended.status, 2);
        EXPECT_THAT(ended.err, HasSubstr("alder-73"));
        EXPECT_THAT(ended.out, IsEmpty());
    }
}

TEST(FrameCommand, WantsToKnowWhatToDo) {
    const Ended ended = gapwise({"frame"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("gapwise frame: arguments: found no command"));
    EXPECT_EQ(gapwise({"frame", "draw", "alder-72"}).status, 2);
    EXPECT_EQ(gapwise({"frame", "check"}).status, 2);
}

TEST(FrameCommand, ReadsAHyphenAsStandardInput) {
    const Ended ended = runProgram("gapwise", {.arguments = {"frame", "check", "-"},
                                               .input = bundledJson("frames/birch-150.json").dump()});
    EXPECT_EQ(ended.status, 0) << ended.err;
}

} // namespace gapwise::test
