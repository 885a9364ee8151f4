#include "tests/viewer/command/run_program.h"
#include "tests/viewer/command/sheets.h"

#include "viewer/command/text_layout.h"

#include <gmock/gmock.h>

#include <sstream>

namespace gapwise::test {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using Json = nlohmann::json;

namespace {

constexpr const char* kNotice = "Practice frame – invented numbers – not for work on a machine\n";

Ended step(const char* frame, const std::string& id) {
    return gapwise({"frame", "show", frame, "--step", id});
}

Json stepJson(const char* frame, const std::string& id) {
    return parsed(gapwise({"frame", "show", frame, "--step", id, "--json"}).out);
}

/// What a frame file says that the program's JSON must say too, under the same keys.
void expectSaid(const Json& file, const Json& shown, const std::string& at) {
    if (file.is_object()) {
        for (const auto& [key, value] : file.items()) {
            ASSERT_TRUE(shown.contains(key)) << at << "/" << key;
            expectSaid(value, shown[key], at + "/" + key);
        }
    } else if (file.is_array()) {
        ASSERT_EQ(shown.size(), file.size()) << at;
        for (std::size_t i = 0; i < file.size(); ++i)
            expectSaid(file[i], shown[i], at + "/" + std::to_string(i));
    } else {
        EXPECT_EQ(shown, file) << at;
    }
}

class StepsOf : public ::testing::TestWithParam<const char*> {};

} // namespace

INSTANTIATE_TEST_SUITE_P(All, StepsOf, ::testing::Values("alder-72", "alder-72-pinned", "birch-150"));

TEST(StepCommand, PrintsTheWholeCard) {
    const Ended ended = step("alder-72", "S29");
    EXPECT_EQ(ended.status, 0) << ended.err;
    for (const char* words :
         {"S29  Tighten the shaft nut", "After\n  S28", "Cautions\n  WARNING", "Do\n  1. ", "Lubricate\n",
          "T3   shaft nut, M8×1 left hand; tightens counter-clockwise, seen from the compressor side",
          "seat 16 N·m, slacken, snug 5 N·m, final 14 N·m", "Tools\n", "Look, feel, listen\n", "Write down\n",
          "Asked before it is done\n  drag torque", kNotice})
        EXPECT_THAT(ended.out, HasSubstr(words));
}

TEST(StepCommand, SaysWhatIsParticularOfAStep) {
    EXPECT_THAT(step("birch-150", "S35").out, HasSubstr("from here on the rotor is held; stands for S17b"));
    EXPECT_THAT(step("alder-72", "S17b").out, HasSubstr("HOLD POINT; only when the rotor was lowered in"));
    EXPECT_THAT(step("alder-72", "D1").out, HasSubstr("may be skipped with a reason"));
    EXPECT_THAT(step("alder-72", "S43").out, HasSubstr("closes the record"));
}

TEST_P(StepsOf, JsonSaysWhatTheFileSays) {
    const Json frame = bundledJson(std::string{"frames/"} + GetParam() + ".json");
    const Json shown = parsed(gapwise({"frame", "show", GetParam(), "--json"}).out);
    for (const char* list : {"steps", "fasteners", "rests"})
        expectSaid(frame[list], shown[list], list);
}

TEST_P(StepsOf, TextIsReadableAtAHundredColumns) {
    for (const char* id : {"S01", "S22", "S35"}) {
        std::istringstream lines(step(GetParam(), id).out);
        std::string last;
        for (std::string line; std::getline(lines, line); last = line)
            EXPECT_LE(columnsOf(last), kTextColumns) << last; // All but the closing line.
    }
}

TEST(StepCommand, JsonHasTheCautionsFastenersAndMeasurementsOfTheStep) {
    const Json document = stepJson("birch-150", "S35");
    EXPECT_EQ(document["step"]["id"], "S35");
    EXPECT_EQ(document["fasteners"][0]["id"], "T5");
    EXPECT_EQ(document["fasteners"][0]["torque_Nm"], 65.0);
    bool lifting = false;
    for (const Json& caution : document["cautions"])
        lifting = lifting || caution["id"] == "C-lifting";
    EXPECT_TRUE(lifting);
    EXPECT_EQ(stepJson("alder-72", "S31")["measurements"][0]["instrument"],
              "dial indicator with stand, 0.001 mm");
}

TEST(StepCommand, RefusesAnUnknownStep) {
    const Ended ended = step("alder-72-pinned", "S07");
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.out, IsEmpty());
    EXPECT_THAT(ended.err, HasSubstr("--step"));
    EXPECT_THAT(ended.err, HasSubstr("a step of alder-72-pinned: D1, D2"));
}

TEST(KitCommand, PrintsWhatTheJobNeeds) {
    const Ended ended = gapwise({"frame", "show", "alder-72", "--kit"});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_THAT(ended.out, HasSubstr("  4 ×  snap ring "));
    EXPECT_THAT(ended.out, HasSubstr("depth micrometer, 0.001 mm: M05, nose-depth"));
    EXPECT_THAT(ended.out, HasSubstr("turbine end up: at least 69.0 mm, with an open middle"));
    EXPECT_THAT(ended.out, HasSubstr("compressor end up: at least 65.0 mm, with an open middle"));
    EXPECT_THAT(ended.out, HasSubstr(kNotice));
}

TEST(KitCommand, GivesTheSameAsJson) {
    const Json document = parsed(gapwise({"frame", "show", "birch-150", "--kit", "--json"}).out);
    EXPECT_EQ(document["blocks"][0]["up"], "turbine");
    EXPECT_NEAR(document["blocks"][0]["least_mm"].get<double>(), 117.3, 1e-9);
    EXPECT_GT(document["pick_list"].size(), 10U);
    EXPECT_GT(document["gauges"].size(), 5U);
    EXPECT_GT(document["tools"].size(), 20U);
}

TEST(KitCommand, GoesWithNoOtherCard) {
    EXPECT_EQ(gapwise({"frame", "show", "alder-72", "--kit", "--step", "S01"}).status, 2);
    EXPECT_EQ(gapwise({"frame", "show", "alder-72", "--part", "NUT", "--step", "S01"}).status, 2);
}

} // namespace gapwise::test
