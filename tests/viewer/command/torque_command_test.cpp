#include "tests/viewer/command/run_program.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <utility>

namespace gapwise::test {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;
using Json = nlohmann::json;

namespace {

Ended torque(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "torque");
    return gapwise(std::move(arguments));
}

Json torqueJson(std::vector<std::string> arguments, int status = 0) {
    arguments.emplace_back("--json");
    const Ended ended = torque(std::move(arguments));
    EXPECT_EQ(ended.status, status) << ended.err;
    return Json::parse(ended.out, nullptr, false);
}

std::vector<std::string> nutLine(const std::string& read, const std::string& stack) {
    return {"nut-line", "--read", read, "--stack", stack, "--pitch", "1", "--agrees", "8", "--small", "25"};
}

} // namespace

// Common practice, no source: a torque of shaft-end nuts in the units of their sheets.
TEST(TorqueConvert, SaysATorqueInEveryOtherUnit) {
    const Ended ended = torque({"convert", "32.4", "N·m"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out, "32.4 N·m = 23.897 lbf·ft\n"
                         "32.4 N·m = 286.76 lbf·in\n"
                         "32.4 N·m = 3.3039 kgf·m\n"
                         "32.4 N·m = 330.39 kgf·cm\n");
    EXPECT_THAT(ended.err, IsEmpty());
}

TEST(TorqueConvert, TakesNumberAndUnitInOneWordOrMore) {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"3.3kgf.m"}, {"3.3 kgf·m"}, {"3.3", "kgf.m"}, {"3.3", "kgf", "m"}}) {
        std::vector<std::string> arguments{"convert"};
        arguments.insert(arguments.end(), words.begin(), words.end());
        arguments.insert(arguments.end(), {"--to", "N.m"});
        EXPECT_EQ(torque(arguments).out, "3.3 kgf·m = 32.362 N·m\n");
    }
}

// The factor is exact (NIST SP 811 B.8).
TEST(TorqueConvert, JsonHasWholeNumbersAndUnits) {
    EXPECT_EQ(torqueJson({"convert", "2", "kgf.m", "--to", "N.m"}), Json::parse(R"({
        "torque": {"value": 2.0, "unit": "kgf·m"},
        "torque_Nm": 19.6133,
        "converted": [{"value": 19.6133, "unit": "N·m"}]})"));
}

// Invented figures, worked by hand.
TEST(TorqueWrench, SaysTheSettingAndWhatItWouldDoUncorrected) {
    const Ended ended = torque({"wrench", "--target", "24 N·m", "--length", "300", "--adapter", "45"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out,
              "Set the wrench to 20.9 N·m: the fastener gets 24 N·m.\n"
              "Wrench 300 mm from grip to drive, adapter 45 mm from drive to fastener, straight out.\n"
              "Set to 24 N·m it would give 27.6 N·m (+15.0 %).\n");
}

// A worked example of a published page (TT-11): 50 lbf·ft, 16 in, 2 in.
TEST(TorqueWrench, AnswersInTheUnitOfTheTarget) {
    const std::vector<std::string> asked{"wrench", "--target",  "50 lbf.ft", "--length",
                                         "406.4",  "--adapter", "50.8"};
    EXPECT_THAT(torque(asked).out, HasSubstr("Set the wrench to 44.4 lbf·ft"));
    EXPECT_NEAR(torqueJson(asked)["setting"]["value"].get<double>(), 44.44, 0.01);
}

TEST(TorqueWrench, SaysWhenThereIsNothingToCorrect) {
    EXPECT_THAT(torque({"wrench", "--target", "24", "--length", "300"}).out,
                HasSubstr("No adapter, or one in line with the drive: nothing to correct.\n"));
    const std::string square =
        torque({"wrench", "--target", "24", "--length", "300", "--adapter", "45", "--angle", "-90"}).out;
    EXPECT_THAT(square, HasSubstr("square to it: nothing to correct"));
    EXPECT_THAT(square, Not(HasSubstr("it would give")));
}

// ISO 6789 (TT-01, TT-04, TT-06).
TEST(TorqueWrench, SaysHowWellTheWrenchKeeps) {
    const std::vector<std::string> asked{"wrench",       "--target", "20",           "--length", "300",
                                         "--wrench-max", "200",      "--wrench-min", "5"};
    const std::string text = torque(asked).out;
    EXPECT_THAT(text, HasSubstr("A wrench up to 200 N·m may be off by ±4 %, that is ±0.800 N·m here"));
    EXPECT_THAT(text, HasSubstr("Below 40.0 N·m, 20 % of its maximum, no calibration checks it"));
    const Json wrench = torqueJson(asked)["wrench"];
    EXPECT_DOUBLE_EQ(wrench["permissible_deviation"].get<double>(), 0.04);
    EXPECT_DOUBLE_EQ(wrench["coarsest_step_Nm"].get<double>(), 0.2);
    EXPECT_TRUE(wrench["below_check_points"].get<bool>());
}

// ISO 6789-1:2017 (TT-06): 0.2 N·m is the coarsest at 20 N·m.
TEST(TorqueWrench, AnElectronicWrenchWithCoarserStepsBreaksItsClass) {
    const auto withStep = [](const std::string& step) {
        return torque(
            {"wrench", "--target", "20", "--length", "300", "--wrench-max", "100", "--wrench-step", step});
    };
    EXPECT_EQ(withStep("0.2").status, 0);
    EXPECT_EQ(withStep("0.25").status, 1);
    EXPECT_THAT(withStep("0.25").out,
                HasSubstr("It shows steps of 0.250 N·m; at this setting 0.200 N·m is the coarsest"));
}

// Motosh 1976, reckoned (TQ-13).
TEST(TorquePreload, SplitsTheTorqueInItsShares) {
    const Json document = torqueJson({"preload", "M8", "--force", "18.6", "--bearing-diameter", "10.3"});
    EXPECT_NEAR(document["torque_Nm"].get<double>(), 24.46, 0.02);
    EXPECT_NEAR(document["shares"][0]["torque_Nm"].get<double>(), 3.70, 0.02);
    EXPECT_NEAR(document["shares"][1]["torque_Nm"].get<double>(), 9.26, 0.02);
    EXPECT_NEAR(document["shares"][2]["share"].get<double>(), 0.470, 0.0005);
    EXPECT_NEAR(document["vdi_torque_Nm"].get<double>(), 24.52, 0.005);
}

TEST(TorquePreload, GoesFromTorqueToForceAndBack) {
    const Json forth = torqueJson({"preload", "M8x1-LH", "--torque", "14"});
    const Json back = torqueJson({"preload", "M8x1-LH", "--force", forth["force_kN"].dump()});
    EXPECT_NEAR(back["torque_Nm"].get<double>(), 14.0, 1e-9);
    EXPECT_EQ(forth["thread"]["hand"], "left");
    EXPECT_EQ(forth["thread"]["tightens_as_faced"], "counter_clockwise");
}

// VDI 2230 (TQ-02): M10×1.25 in 10.9, friction 0.12. ISO 898-1: 830 MPa, 61.2 mm².
TEST(TorquePreload, OfAClassAloneIsNinetyPercentOfItsYield) {
    const Json document = torqueJson({"preload", "M10x1.25", "--class", "10.9"});
    EXPECT_NEAR(document["force_kN"].get<double>(), 46.4, 0.464);
    EXPECT_NEAR(document["vdi_torque_Nm"].get<double>(), 75.0, 0.75);
    EXPECT_NEAR(document["class"]["proof_load_kN"].get<double>(), 50.8, 1e-9);
}

// VDI 2230 worked example (TQ-08).
TEST(TorquePreload, TheTighteningFactorSaysWhatIsLeft) {
    const Json document = torqueJson(
        {"preload", "M12", "--class", "8.8", "--friction-thread", "0.14", "--tightening-factor", "1.8"});
    EXPECT_NEAR(document["class"]["least_preload_kN"].get<double>(), 23.3, 0.1165);
}

TEST(TorquePreload, TextGivesEveryNumberItsUnit) {
    const Ended ended = torque({"preload", "M8x1-LH", "--torque", "14", "--class", "10.9"});
    EXPECT_EQ(ended.status, 0);
    for (const char* words :
         {"M8×1-LH: 14.0 N·m clamps with 10.9 kN.", "pitch            1.73 N·m  12.4 %",
          "mean diameter there 10.3 mm (hexagon head)", "Tension 278 MPa in the stress area of 39.2 mm²",
          "Class 10.9: 33 % of the proof load, 32.5 kN (ISO 898-1).",
          "The thread is left-hand: it tightens counter-clockwise as you face the nut or head."})
        EXPECT_THAT(ended.out, HasSubstr(words));
}

// ISO 898-1 table 5 (TQ-22): M8 in 8.8 must bear 21.2 kN.
TEST(TorquePreload, MoreThanTheProofLoadIsBroken) {
    EXPECT_EQ(torque({"preload", "M8", "--force", "21.2", "--class", "8.8"}).status, 0);
    const Ended over = torque({"preload", "M8", "--force", "21.3", "--class", "8.8"});
    EXPECT_EQ(over.status, 1);
    EXPECT_THAT(over.out, HasSubstr("21.2 kN (ISO 898-1): more than it must bear"));
}

// Invented limits, worked by hand.
TEST(TorqueNutLine, IsJudgedLessTheExpectedShift) {
    const Ended ended = torque(nutLine("-6", "0.02"));
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out, "Expected -7.2°: the clamped stack is 0.02 mm longer, pitch 1 mm.\n"
                         "Read -6.0°; less the expected shift 1.2°: agrees (agrees to 8°, small to 25°).\n"
                         "Then: go on.\n");
    EXPECT_THAT(torque(nutLine("5", "0")).out,
                HasSubstr("Expected 0.0°: the clamped stack is as long as before"));
}

TEST(TorqueNutLine, OnlyALineThatAgreesHolds) {
    const Json small = torqueJson(nutLine("-6", "-0.02"), 1);
    EXPECT_EQ(small["outcome"], "small");
    EXPECT_NEAR(small["corrected_deg"].get<double>(), -13.2, 1e-9);
    const Json large = torqueJson(nutLine("30", "0.01"), 1);
    EXPECT_EQ(large["outcome"], "large");
    EXPECT_NEAR(large["expected_deg"].get<double>(), -3.6, 1e-9);
}

// Common practice: the star of eight.
TEST(TorquePattern, PrintsTheOrder) {
    EXPECT_EQ(torque({"pattern", "8"}).out,
              "8 screws, numbered clockwise as you face them, by opposite pairs:\n1-5-3-7-2-6-4-8\n");
    const Json document = torqueJson({"pattern", "3"});
    EXPECT_THAT(document["order"].get<std::vector<int>>(), ElementsAre(1, 2, 3));
    EXPECT_FALSE(document["opposite_pairs"].get<bool>());
}

class TorqueRefusal : public ::testing::TestWithParam<std::pair<std::vector<std::string>, std::string>> {};

TEST_P(TorqueRefusal, SaysWhichOptionAndWhatIsAllowed) {
    const Ended text = torque(GetParam().first);
    EXPECT_EQ(text.status, 2);
    EXPECT_THAT(text.err, HasSubstr("gapwise torque" + GetParam().second));
    EXPECT_THAT(text.out, IsEmpty());
    const Json json = torqueJson(GetParam().first, 2);
    ASSERT_FALSE(json.is_discarded());
    for (const char* key : {"file", "pointer", "found", "allowed"})
        EXPECT_TRUE(json["errors"][0].contains(key)) << key;
}

namespace {

std::pair<std::vector<std::string>, std::string> refused(std::vector<std::string> arguments,
                                                         const std::string& message) {
    return {std::move(arguments), message};
}

} // namespace

INSTANTIATE_TEST_SUITE_P(
    Usage, TorqueRefusal,
    ::testing::Values(refused({}, ": arguments: found no command"),
                      refused({"tighten"}, ": arguments: found \"tighten\""),
                      refused({"convert"}, " convert: TORQUE: found nothing"),
                      refused({"wrench", "--length", "300"}, " wrench: --target: found nothing"),
                      refused({"wrench", "--target", "24"}, " wrench: --length: found nothing"),
                      refused({"preload", "--torque", "14"}, " preload: THREAD: found nothing"),
                      refused({"nut-line", "--read", "1"}, " nut-line: --stack: found nothing"),
                      refused({"pattern"}, " pattern: SCREWS: found nothing"),
                      refused({"pattern", "8", "4"}, " pattern: arguments: found \"4\"")));

INSTANTIATE_TEST_SUITE_P(
    Torques, TorqueRefusal,
    ::testing::Values(refused({"convert", "32.4"}, " convert: TORQUE: found \"32.4\"; allowed: a torque"),
                      refused({"convert", "-5", "N.m"}, " convert: TORQUE: found \"-5 N.m\""),
                      refused({"convert", "0", "N.m"}, " convert: TORQUE: found \"0 N.m\""),
                      refused({"convert", "nan", "N.m"}, " convert: TORQUE: found \"nan N.m\""),
                      refused({"convert", "5", "oz.in"}, " convert: TORQUE: found \"5 oz.in\""),
                      refused({"convert", "5", "N.m", "--to", "oz.in"},
                              " convert: --to: found \"oz.in\"; allowed: N·m"),
                      refused({"preload", "M8", "--torque", "-1"}, " preload: --torque: found \"-1\"")));

INSTANTIATE_TEST_SUITE_P(
    Wrenches, TorqueRefusal,
    ::testing::Values(
        refused({"wrench", "--target", "24", "--length", "0"},
                " wrench: --length: found \"0\"; allowed: a length above"),
        refused({"wrench", "--target", "24", "--length", "300", "--adapter", "-1"},
                " wrench: --adapter: found \"-1\""),
        refused({"wrench", "--target", "24", "--length", "300", "--angle", "inf"},
                " wrench: --angle: found \"inf\""),
        refused({"wrench", "--target", "24", "--length", "45", "--adapter", "45", "--angle", "180"},
                " wrench: --adapter: found 45 mm folded back at 180° over a wrench of 45 mm"),
        refused({"wrench", "--target", "24", "--length", "300", "--adapter", "45", "--wrench-max", "20"},
                " wrench: --target: found a setting of 20.870 N·m; allowed: what this wrench can be set to, "
                "up to 20.0 N·m"),
        refused({"wrench", "--target", "2", "--length", "300", "--wrench-min", "4", "--wrench-max", "20"},
                " wrench: --target: found a setting of 2.0000 N·m; allowed: what this wrench can be set to, "
                "4.00 N·m to "
                "20.0 N·m"),
        refused({"wrench", "--target", "24", "--length", "300", "--wrench-min", "40", "--wrench-max", "20"},
                " wrench: --wrench-min: found 40.0 N·m; allowed: less than the maximum"),
        refused({"wrench", "--target", "24", "--length", "300", "--wrench-min", "4"},
                " wrench: --wrench-min: found no maximum"),
        refused({"wrench", "--target", "24", "--length", "300", "--wrench-step", "1"},
                " wrench: --wrench-step: found no --wrench-max")));

INSTANTIATE_TEST_SUITE_P(
    Screws, TorqueRefusal,
    ::testing::Values(
        refused({"preload", "M5x12", "--torque", "5"}, " preload: THREAD: found \"M5x12\""),
        refused({"preload", "M8"},
                " preload: --torque: found nothing; allowed: --torque, --force, or --class"),
        refused({"preload", "M8", "--torque", "5", "--force", "3"},
                " preload: --force: found --torque as well"),
        refused({"preload", "M8", "--force", "0"}, " preload: --force: found \"0\""),
        refused({"preload", "M8", "--torque", "5", "--class", "4.6"}, " preload: --class: found \"4.6\""),
        refused({"preload", "M18", "--torque", "5", "--class", "9.8"},
                " preload: --class: found \"9.8\"; allowed: 8.8, "
                "10.9 or 12.9"),
        refused({"preload", "M7", "--torque", "5"}, " preload: --bearing-diameter: found nothing"),
        refused({"preload", "M8", "--torque", "5", "--friction-head", "0"},
                " preload: --friction-head: found \"0\""),
        refused({"preload", "M8", "--torque", "5", "--tightening-factor", "1.6"},
                " preload: --tightening-factor: found no --class"),
        refused({"nut-line", "--read", "nan", "--stack", "0", "--pitch", "1", "--agrees", "8", "--small",
                 "25"},
                " nut-line: --read: found \"nan\""),
        refused({"nut-line", "--read", "1", "--stack", "0", "--pitch", "0", "--agrees", "8", "--small", "25"},
                " nut-line: --pitch: found \"0\""),
        refused({"nut-line", "--read", "1", "--stack", "0", "--pitch", "1", "--agrees", "8", "--small", "5"},
                " nut-line: --small: found 5°; allowed: no less than the limit that agrees, 8°"),
        refused({"pattern", "0"}, " pattern: SCREWS: found 0; allowed: a number of screws from 1 to 96"),
        refused({"pattern", "8.5"}, " pattern: SCREWS: found \"8.5\"")));

TEST(TorqueCommand, TellsEveryErrorAtOnce) {
    const Ended ended = torque({"wrench", "--target", "x", "--length", "-3", "--adapter", "nan"});
    EXPECT_EQ(ended.status, 2);
    for (const char* option : {"--target", "--length", "--adapter"})
        EXPECT_THAT(ended.err, HasSubstr(option));
}

TEST(TorqueShow, TellsStagesHandWrenchAndFlangeOfAFastener) {
    const Ended ended = torque({"show", "alder-72", "T3", "--up", "turbine", "--drain", "6:00"});
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_THAT(ended.out, HasSubstr("slacken"));
    EXPECT_THAT(ended.out, HasSubstr("to tighten: counter-clockwise as you face the nut (left-hand thread)"));
    EXPECT_THAT(ended.out, HasSubstr("you look at its back"));
    EXPECT_THAT(ended.out, HasSubstr("expected 19° from snug to final, window 12° to 28°"));
    EXPECT_THAT(ended.out, HasSubstr("invented numbers"));
}

TEST(TorqueShow, JsonHasScrewsWithTheirClocksAndWhatIsSeenOfThem) {
    const Json shown = torqueJson({"show", "alder-72", "T1", "--up", "compressor", "--drain", "3:00"});
    const Json& screws = shown["flanges"][0]["screws"];
    ASSERT_EQ(screws.size(), 3U);
    EXPECT_EQ(screws[0]["clock_deg"], 30.0);
    EXPECT_EQ(screws[0]["seen_deg"], 300.0) << "drain at 3:00, so the inlet is seen at 9:00";
    EXPECT_EQ(shown["hand"]["tightens_as_standing"], "clockwise");
    EXPECT_EQ(shown["stages"][0]["target"]["torque_Nm"], 3.0);
}

// The worked figures of M·L/(L + E·cos α), for 22 N·m.
TEST(TorqueShow, SettingsAreThoseAfterTheAdapterInTheUnitAskedFor) {
    const Json shown =
        torqueJson({"show", "alder-72", "T4", "--length", "300", "--adapter", "45", "--unit", "lbf.ft"});
    EXPECT_NEAR(shown["stages"][1]["setting"]["torque_Nm"].get<double>(), 22.0 * 300.0 / 345.0, 1e-9);
    EXPECT_EQ(shown["stages"][1]["setting"]["unit"], "lbf·ft");
}

TEST(TorqueShow, RefusesWhatItCannotUseAtItsPlace) {
    const auto refused = [](std::vector<std::string> more) {
        more.insert(more.begin(), {"show", "alder-72", "T4"});
        const Ended ended = torque(more);
        EXPECT_EQ(ended.status, 2);
        EXPECT_THAT(ended.out, IsEmpty());
        return ended.err;
    };
    EXPECT_THAT(refused({"--unit", "furlong"}), HasSubstr("--unit"));
    EXPECT_THAT(refused({"--adapter", "45"}), HasSubstr("--length"));
    EXPECT_THAT(refused({"--length", "nan"}), HasSubstr("--length"));
    EXPECT_THAT(refused({"--wrench-max", "10"}), HasSubstr("--wrench-max"));
    EXPECT_THAT(refused({"--up", "turbine"}), HasSubstr("no --drain"));
    EXPECT_THAT(torque({"show", "alder-72", "T99"}).err, HasSubstr("T1, T2, T3"));
}

} // namespace gapwise::test
