#include "tests/viewer/command/run_program.h"
#include "tests/viewer/command/sheets.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace gapwise::test {

using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using ::testing::SizeIs;
using Json = nlohmann::json;

namespace {

std::string sheet(const std::string& name) {
    return bundled("builds/" + name + ".build.json");
}

Ended measure(const std::vector<std::string>& arguments) {
    std::vector<std::string> words{"measure"};
    words.insert(words.end(), arguments.begin(), arguments.end());
    return gapwise(std::move(words));
}

Json measured(std::vector<std::string> arguments, int status) {
    arguments.emplace_back("--json");
    const Ended ended = measure(arguments);
    EXPECT_EQ(ended.status, status) << ended.err;
    return parsed(ended.out);
}

/// The object of a list whose key has the value.
Json found(const Json& list, const char* key, const std::string& value) {
    const auto at = std::ranges::find_if(list, [&](const Json& each) { return each[key] == value; });
    return at == list.end() ? Json{} : *at;
}

Json quantity(const Json& document, const std::string& id) {
    return found(document["quantities"], "quantity", id);
}

} // namespace

// Invented builds of invented frames.
TEST(MeasureCommand, AGoodJobHoldsAndSaysEveryValue) {
    const Ended good = measure({sheet("alder-72-good")});
    EXPECT_EQ(good.status, 0) << good.err;
    EXPECT_THAT(good.err, IsEmpty());
    EXPECT_THAT(good.out, AllOf(HasSubstr("✓ WITHIN  c  axial clearance"), HasSubstr("0.068 ± 0.006 mm"),
                                HasSubstr("0.050 to 0.090 mm"), HasSubstr("about 0.065 mm removed"),
                                HasSubstr("0 beyond"), HasSubstr("Play at the bearings")));
    EXPECT_THAT(good.out, HasSubstr("\nPractice frame – invented numbers – not for work on a machine\n"
                                    "consistent with the loaded rules of frame alder-72, revision 1; "));
}

TEST(MeasureCommand, TheWornCollarIsFoundFirst) {
    const Ended worn = measure({sheet("alder-72-worn-collar")});
    EXPECT_EQ(worn.status, 1);
    EXPECT_THAT(worn.out, AllOf(HasSubstr("✗ BEYOND  c"), HasSubstr("? NOT JUDGED  a_A"),
                                HasSubstr("Diagnosis"), HasSubstr("collar A, running face worn by 0.08"),
                                HasSubstr("\nnot consistent with the loaded rules")));
    const Json document = measured({sheet("alder-72-worn-collar")}, 1);
    EXPECT_EQ(document["holds"], false);
    EXPECT_EQ(document["diagnosis"]["causes"][0]["change"], "collar-A-worn");
    EXPECT_NEAR(document["diagnosis"]["causes"][0]["length_mm"].get<double>(), 0.085, 0.005);
    EXPECT_EQ(document["diagnosis"]["settles"][0]["quantity"], "a_A");
}

TEST(MeasureCommand, JsonHoldsAllOfAQuantity) {
    const Json document = measured({sheet("alder-72-good")}, 0);
    const Json c = quantity(document, "c");
    EXPECT_EQ(c["standing"], "within");
    EXPECT_EQ(c["after"]["values"], Json({0.067, 0.069, 0.068}));
    EXPECT_EQ(c["after"]["instrument"], "DIA-02");
    EXPECT_NEAR(c["before"]["value"].get<double>(), 0.095, 1e-12);
    EXPECT_NEAR(c["predicted"]["value"].get<double>(), 0.068, 1e-9);
    EXPECT_EQ(c["limits"]["rule"], "as_printed");
    EXPECT_EQ(c["limits"]["method"], "push-pull");
    EXPECT_EQ(c["change"]["outcome"], "as_expected");
    EXPECT_EQ(quantity(document, "tip_T")["four_point"]["seen_from"], "turbine");
    EXPECT_EQ(document["play"]["agree"], true);
    EXPECT_EQ(document["diagnosis"]["anything_moved"], false);
    EXPECT_EQ(found(document["parts"], "part", "THRUST")["decision"]["decision"], "renew");
}

TEST(MeasureCommand, OneChainWithItsLinksAndTrials) {
    const Json chain =
        measured({sheet("alder-72-good"), "--chain", "c", "--trials", "20000", "--seed", "7"}, 0);
    EXPECT_FALSE(chain.contains("quantities"));
    ASSERT_THAT(chain["chains"], SizeIs(1));
    EXPECT_EQ(chain["chains"][0]["links"][0]["dimension"], "t_T");
    ASSERT_THAT(chain["trials"], SizeIs(1));
    EXPECT_NEAR(chain["trials"][0]["mean_mm"].get<double>(), 0.068, 0.0005);
    const Json again =
        measured({sheet("alder-72-good"), "--chain", "c", "--trials", "20000", "--seed", "7"}, 0);
    EXPECT_EQ(again, chain) << "the same seed, the same result";
}

TEST(MeasureCommand, EffectsAndGradesStandAlone) {
    const Json document = measured({sheet("alder-72-good"), "--effects", "--select", "L_S"}, 0);
    EXPECT_FALSE(document.contains("quantities"));
    const Json worn = found(document["effects"]["changes"], "change", "collar-A-worn");
    const auto c =
        std::ranges::find(document["effects"]["chains"], "c") - document["effects"]["chains"].begin();
    EXPECT_EQ(worn["effects"][static_cast<std::size_t>(c)], 1.0);
    ASSERT_THAT(document["selections"], SizeIs(1));
    EXPECT_EQ(document["selections"][0]["proposed_mm"], 5.07);
    EXPECT_THAT(document["selections"][0]["grades"], SizeIs(3));
}

TEST(MeasureCommand, ABenchOfOnesOwnAndADayForCalibrations) {
    const ScratchFolder folder;
    const std::string bench = folder.write("bench.json", R"({"format": "gapwise.bench/1", "name": "Own",
      "instruments": [{"id": "DIA-02", "kind": "dial_indicator", "name": "dial", "unit": "mm", "resolution": 0.001,
        "uncertainty": 0.010, "least": 0, "most": 3, "calibrated_until": "2026-01-01"}]})");
    const Json document = measured({sheet("alder-72-good"), "--bench", bench, "--on", "2026-05-04"}, 0);
    EXPECT_EQ(document["bench"], "Own");
    EXPECT_EQ(quantity(document, "c")["after"]["flags"][0]["kind"], "overdue");
    EXPECT_EQ(quantity(document, "d_C")["after"]["flags"][0]["kind"], "unknown_instrument");
}

TEST(MeasureCommand, WhatIsTypedWrongIsRefusedAsAWhole) {
    const Ended wrong =
        measure({sheet("alder-72-good"), "--on", "tomorrow", "--trials", "3.5", "--seed", "-1"});
    EXPECT_EQ(wrong.status, 2);
    EXPECT_THAT(wrong.err, AllOf(HasSubstr("--on"), HasSubstr("--trials"), HasSubstr("--seed")));
    EXPECT_THAT(wrong.out, IsEmpty());
    const Ended unknown = measure({sheet("alder-72-good"), "--chain", "z", "--select", "y"});
    EXPECT_EQ(unknown.status, 2);
    EXPECT_THAT(unknown.err,
                AllOf(HasSubstr("--chain"), HasSubstr("g_cs_C"), HasSubstr("--select"), HasSubstr("L_S")));
    EXPECT_EQ(measure({sheet("alder-72-good"), "--seed", "7"}).status, 2) << "a seed without trials";
    EXPECT_EQ(measure({}).status, 2);
    EXPECT_EQ(measure({"no-such.json"}).status, 2);
    EXPECT_EQ(measure({sheet("alder-72-good"), "--bench", "no-such.json"}).status, 2);
}

TEST(MeasureCommand, AnErrorOfTheSheetIsToldAtItsPlace) {
    const Ended bad = runProgram(
        "gapwise",
        {.arguments = {"measure", "-", "--json"},
         .input = R"({"format": "gapwise.build/1", "frame": "alder-72", "seatings": [], "steps_done": [],
                      "readings": [{"measurement": "axial-clearance", "values": [-0.07], "unit": "mm"}]})"});
    EXPECT_EQ(bad.status, 2);
    const Json error = parsed(bad.out)["errors"][0];
    EXPECT_EQ(error["pointer"], "/readings/0/values/0");
    EXPECT_EQ(error["found"], "-0.07");
}

} // namespace gapwise::test
