#include "tests/viewer/command/run_program.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace gapwise::test {

using ::testing::HasSubstr;
using ::testing::IsEmpty;
using Json = nlohmann::json;

namespace {

Json clockJson(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "clock");
    arguments.emplace_back("--json");
    const Ended ended = gapwise(std::move(arguments));
    EXPECT_EQ(ended.status, 0) << ended.err;
    return Json::parse(ended.out, nullptr, false);
}

} // namespace

TEST(ClockCommand, SaysTheDirectionFromBothSides) {
    const Ended ended = gapwise({"clock", "3:00", "--from", "compressor"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out, "3:00 seen from the compressor side, inlet on top\n"
                         "9:00 seen from the turbine side, inlet on top\n");
    EXPECT_THAT(ended.err, IsEmpty());
}

TEST(ClockCommand, SaysHowItLiesOnTheBench) {
    const Ended ended =
        gapwise({"clock", "3:00", "--from", "compressor", "--up", "turbine", "--drain", "9:00"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out, "3:00 seen from the compressor side, inlet on top\n"
                         "9:00 seen from the turbine side, inlet on top\n"
                         "on the bench (turbine end up, drain at 9:00), looking down on the turbine end: "
                         "12:00, away from you\n");
}

// Worked by hand from θ_seen = φ + σθ: drain at 9:00 puts the top at 3:00 = 90; walked round by 90 it is at
// 0.
TEST(ClockCommand, FollowsWhoWalksRoundTheBench) {
    const Ended ended = gapwise(
        {"clock", "3:00", "--from", "compressor", "--up", "turbine", "--drain", "9:00", "--stand", "90"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_THAT(ended.out, HasSubstr("standing 90° round the bench, clockwise from above, looking down on "
                                     "the turbine end: 9:00, to your left\n"));
}

TEST(ClockCommand, GoesBackFromWhatIsSeenToWhatIsPrinted) {
    const Ended ended =
        gapwise({"clock", "12:00", "--from", "turbine", "--up", "turbine", "--drain", "9:00", "--as-seen"});
    EXPECT_EQ(ended.status, 0);
    EXPECT_EQ(ended.out, "on the bench (turbine end up, drain at 9:00), looking down on the turbine end: "
                         "12:00, away from you\n"
                         "9:00 seen from the turbine side, inlet on top\n"
                         "3:00 seen from the compressor side, inlet on top\n");
}

TEST(ClockCommand, AnswersTheAskedSideFirstWhenGoingBack) {
    const Json document =
        clockJson({"12:00", "--from", "compressor", "--up", "turbine", "--drain", "9:00", "--as-seen"});
    EXPECT_EQ(document["as_printed"], Json::parse(R"([{"clock_deg":90.0,"seen_from":"compressor"},
                              {"clock_deg":270.0,"seen_from":"turbine"}])"));
}

// Drain at 4:00 seen from the turbine side: its top is at 10:00 = 300 there and at 60 from the other end.
TEST(ClockCommand, LooksAtBothEndsOfALevelPiece) {
    const Json document = clockJson(
        {"1:00", "--from", "compressor", "--up", "level", "--drain", "120deg", "--seen-from", "turbine"});
    EXPECT_EQ(document["as_seen"], Json::parse(R"([
        {"clock_deg":90.0,"side":"compressor","top_deg":60.0,"bench_word":"right"},
        {"clock_deg":270.0,"side":"turbine","top_deg":300.0,"bench_word":"left"}])"));
}

TEST(ClockCommand, TakesTheDrainOfALevelPieceFromTheAskedSide) {
    const std::vector<std::string> asked{"2:00", "--from", "turbine", "--up", "level", "--drain", "7:00"};
    std::vector<std::string> said = asked;
    said.insert(said.end(), {"--seen-from", "turbine"});
    EXPECT_EQ(clockJson(asked), clockJson(said));
}

// The view vectors: printed clock from the compressor side, side, top (φ), clock seen. Hand-worked for the
// three formulas that a hand holds on a bench; here the program is asked with the drain opposite the top.
TEST(ClockCommand, KeepsTheViewVectorsThroughTheCommandLine) {
    struct Vector {
        int clock, top;
        const char* side;
        int seen;
    };
    for (const Vector& v :
         {Vector{0, 0, "compressor", 0}, Vector{90, 0, "compressor", 90}, Vector{90, 0, "turbine", 270},
          Vector{270, 0, "turbine", 90}, Vector{30, 0, "turbine", 330}, Vector{90, 180, "compressor", 270},
          Vector{90, 180, "turbine", 90}, Vector{302, 180, "compressor", 122},
          Vector{45, 90, "compressor", 135}, Vector{45, 90, "turbine", 45}}) {
        const Json document = clockJson({std::to_string(v.clock) + "deg", "--from", "compressor", "--up",
                                         v.side, "--drain", std::to_string((v.top + 180) % 360) + "deg"});
        EXPECT_DOUBLE_EQ(document["as_seen"][0]["clock_deg"].get<double>(), v.seen)
            << v.clock << " " << v.side << " " << v.top;
    }
}

TEST(ClockCommand, GoingBackUndoesGoingForth) {
    for (const char* up : {"compressor", "turbine", "level"})
        for (int clock = 0; clock < 360; clock += 15) {
            const std::vector<std::string> bench{"--from", "turbine", "--up", up, "--drain", "100deg"};
            std::vector<std::string> forth{std::to_string(clock) + "deg"};
            forth.insert(forth.end(), bench.begin(), bench.end());
            const Json there = clockJson(forth);
            std::vector<std::string> back{there["as_seen"][0]["clock_deg"].dump() + "deg", "--as-seen"};
            back.insert(back.end(), bench.begin(), bench.end());
            EXPECT_EQ(clockJson(back), there);
        }
}

TEST(ClockCommand, JsonHasTheClocksTheViewAndTheBenchWord) {
    const Json document = clockJson({"3:00", "--from", "compressor", "--up", "turbine", "--drain", "9:00"});
    EXPECT_EQ(document, Json::parse(R"({
        "as_printed": [{"clock_deg":90.0,"seen_from":"compressor"},{"clock_deg":270.0,"seen_from":"turbine"}],
        "as_seen": [{"clock_deg":0.0,"side":"turbine","top_deg":90.0,"bench_word":"away"}]})"));
}

class ClockRefusal : public ::testing::TestWithParam<std::pair<std::vector<std::string>, std::string>> {};

TEST_P(ClockRefusal, SaysWhichOptionAndWhatIsAllowed) {
    std::vector<std::string> arguments{"clock"};
    arguments.insert(arguments.end(), GetParam().first.begin(), GetParam().first.end());
    const Ended text = gapwise(arguments);
    EXPECT_EQ(text.status, 2);
    EXPECT_THAT(text.err, HasSubstr(GetParam().second));
    EXPECT_THAT(text.out, IsEmpty());

    arguments.emplace_back("--json");
    const Ended json = gapwise(arguments);
    EXPECT_EQ(json.status, 2);
    const Json document = Json::parse(json.out, nullptr, false);
    ASSERT_FALSE(document.is_discarded()) << json.out;
    for (const char* key : {"file", "pointer", "found", "allowed"})
        EXPECT_TRUE(document["errors"][0].contains(key)) << key;
}

namespace {

std::pair<std::vector<std::string>, std::string> refused(std::vector<std::string> arguments,
                                                         const std::string& message) {
    return {std::move(arguments), "gapwise clock: " + message};
}

} // namespace

INSTANTIATE_TEST_SUITE_P(
    Usage, ClockRefusal,
    ::testing::Values(
        refused({}, "CLOCK: found nothing"), refused({"3:00"}, "--from: found nothing"),
        refused({"3:00", "--from"}, "--from: found no value"),
        refused({"3:00", "--from", "compressor", "--from", "turbine"}, "--from: found more than one value"),
        refused({"3:00", "--from", "left"}, "--from: found \"left\"; allowed: compressor or turbine"),
        refused({"3:00", "--from", "turbine", "--sideways"}, "arguments: found \"--sideways\""),
        refused({"3:00", "4:00", "--from", "turbine"}, "arguments: found \"4:00\""),
        refused({"3:00", "--from", "turbine", "--drain", "9:00"},
                "--drain: found no --up; allowed: only with --up and --drain"),
        refused({"3:00", "--from", "turbine", "--up", "turbine"},
                "--up: found no --drain; allowed: only with --up and --drain"),
        refused({"3:00", "--from", "turbine", "--stand", "90"}, "--stand: found no --up"),
        refused({"3:00", "--from", "turbine", "--seen-from", "turbine"}, "--seen-from: found no --up"),
        refused({"3:00", "--from", "turbine", "--as-seen"}, "--as-seen: found no --up"),
        refused({"3:00", "--from", "turbine", "--up", "inlet", "--drain", "9:00"},
                "--up: found \"inlet\"; allowed: compressor, turbine or level"),
        refused({"3:00", "--from", "turbine", "--up", "turbine", "--drain", "270"}, "--drain: found \"270\""),
        refused({"3:00", "--from", "turbine", "--up", "turbine", "--drain", "9:00", "--stand", "360"},
                "--stand: found \"360\""),
        refused({"3:00", "--from", "turbine", "--up", "turbine", "--drain", "9:00", "--stand", "nan"},
                "--stand: found \"nan\""),
        refused({"3:00", "--from", "turbine", "--up", "level", "--drain", "9:00", "--stand", "90"},
                "--stand: found \"90\"; allowed: only for an upright piece"),
        refused({"3:00", "--from", "turbine", "--up", "turbine", "--drain", "9:00", "--seen-from",
                 "compressor"},
                "--seen-from: found \"compressor\"; allowed: turbine, the end that is up")));

INSTANTIATE_TEST_SUITE_P(
    Clocks, ClockRefusal,
    ::testing::Values(refused({"13:00", "--from", "turbine"}, "CLOCK: found \"13:00\"; allowed: h:mm"),
                      refused({"0:30", "--from", "turbine"}, "CLOCK: found \"0:30\""),
                      refused({"3:60", "--from", "turbine"}, "CLOCK: found \"3:60\""),
                      refused({"3", "--from", "turbine"}, "CLOCK: found \"3\""),
                      refused({"360deg", "--from", "turbine"}, "CLOCK: found \"360deg\""),
                      refused({"-10deg", "--from", "turbine"}, "CLOCK: found \"-10deg\""),
                      refused({"3:00 ", "--from", "turbine"}, "CLOCK: found \"3:00 \""),
                      refused({"", "--from", "turbine"}, "CLOCK: found \"\"")));

TEST(ClockCommand, TellsEveryErrorAtOnce) {
    const Ended ended = gapwise({"clock", "13:00", "--from", "left", "--stand", "5"});
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.err, HasSubstr("CLOCK"));
    EXPECT_THAT(ended.err, HasSubstr("--from"));
    EXPECT_THAT(ended.err, HasSubstr("--stand"));
}

} // namespace gapwise::test
