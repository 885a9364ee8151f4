#include "viewer/window/open_arguments.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::HasSubstr;
using ::testing::SizeIs;

OpenRequest requestOf(const std::vector<std::string>& arguments) {
    const auto parsed = parseOpenArguments(arguments);
    const auto* request = std::get_if<OpenRequest>(&parsed);
    EXPECT_TRUE(request);
    return request ? *request : OpenRequest{};
}

Outcome outcomeOf(const std::vector<std::string>& arguments) {
    const auto parsed = parseOpenArguments(arguments);
    const auto* outcome = std::get_if<Outcome>(&parsed);
    EXPECT_TRUE(outcome);
    return outcome ? *outcome : Outcome{};
}

} // namespace

TEST(OpenArguments, NothingIsTheOpeningScreen) {
    const OpenRequest request = requestOf({});
    EXPECT_EQ(request.what, "");
    EXPECT_EQ(request.use, Use::Practise);
    EXPECT_EQ(request.size.width, 1366);
    EXPECT_EQ(request.size.height, 768);
}

TEST(OpenArguments, TakesADocumentAUseAndASize) {
    const OpenRequest request =
        requestOf({"mine.build.json", "--use", "bench", "--width", "1920", "--height", "1080"});
    EXPECT_EQ(request.what, "mine.build.json");
    EXPECT_EQ(request.use, Use::Bench);
    EXPECT_EQ(request.size.width, 1920);
    EXPECT_EQ(request.size.height, 1080);
}

TEST(OpenArguments, RefusesAnotherUseAWindowTooSmallAndASecondDocument) {
    for (const std::vector<std::string>& arguments : {std::vector<std::string>{"alder-72", "--use", "play"},
                                                      {"--width", "300"},
                                                      {"a", "b"},
                                                      {"--huge"}}) {
        const Outcome outcome = outcomeOf(arguments);
        EXPECT_EQ(outcome.status, ExitStatus::BadInput) << arguments.front();
        ASSERT_THAT(outcome.errors, SizeIs(1));
        EXPECT_THAT(outcome.errors[0].allowed, HasSubstr("gapwise open --help"));
    }
}

TEST(OpenArguments, HelpNamesTheUsesAndTheExitStatus) {
    const Outcome outcome = outcomeOf({"--help"});
    EXPECT_EQ(outcome.status, ExitStatus::Holds);
    EXPECT_THAT(outcome.text, HasSubstr("practise, bench or show"));
    EXPECT_THAT(outcome.text, HasSubstr("Exit status"));
}

} // namespace gapwise
