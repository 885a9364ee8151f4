#include "viewer/window/render_arguments.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::HasSubstr;

RenderRequest requestOf(const std::vector<std::string>& arguments) {
    const auto parsed = parseRenderArguments(arguments);
    const auto* request = std::get_if<RenderRequest>(&parsed);
    EXPECT_TRUE(request) << testing::PrintToString(arguments);
    return request ? *request : RenderRequest{};
}

/// With `section` put after the frame, before it, and at the very end.
std::vector<RenderRequest> requestsWith(const std::vector<std::string>& section) {
    std::vector<RenderRequest> requests;
    for (const std::size_t place : {0U, 1U, 3U}) {
        std::vector<std::string> words{"alder-72", "--out", "x.png"};
        words.insert(words.begin() + static_cast<std::ptrdiff_t>(place), section.begin(), section.end());
        requests.push_back(requestOf(words));
    }
    return requests;
}

} // namespace

TEST(RenderArguments, SectionMayStandAloneAnywhere) {
    for (const RenderRequest& request : requestsWith({"--section"})) {
        EXPECT_EQ(request.source, "alder-72");
        EXPECT_EQ(request.section, "half");
        EXPECT_FALSE(request.sectionAt);
    }
    EXPECT_FALSE(requestOf({"alder-72", "--out", "x.png"}).section);
    EXPECT_EQ(requestOf({"--section", "-", "--out", "x.png"}).source, "-");
}

TEST(RenderArguments, SectionTakesItsWordAnywhere) {
    for (const char* kind : {"half", "quarter"})
        for (const RenderRequest& request : requestsWith({"--section", kind})) {
            EXPECT_EQ(request.source, "alder-72");
            EXPECT_EQ(request.section, kind);
        }
    EXPECT_EQ(requestOf({"alder-72", "--out", "x.png", "--section=quarter"}).section, "quarter");
}

TEST(RenderArguments, AWordThatIsNoSectionIsLeftToBeRefusedAsOne) {
    for (const RenderRequest& request : requestsWith({"--section", "third"})) {
        EXPECT_EQ(request.source, "alder-72");
        EXPECT_EQ(request.section, "third");
    }
}

TEST(RenderArguments, SectionAtIsOneWordWithItsSide) {
    const RenderRequest request =
        requestOf({"alder-72", "--section", "--section-at", "3:00 turbine", "--out", "x.png"});
    EXPECT_EQ(request.section, "half");
    EXPECT_EQ(request.sectionAt, "3:00 turbine");
}

TEST(RenderArguments, HelpSaysWhatASectionMayBe) {
    const auto parsed = parseRenderArguments({"--help"});
    const auto* outcome = std::get_if<Outcome>(&parsed);
    ASSERT_TRUE(outcome);
    EXPECT_THAT(outcome->text, HasSubstr("--section [half|quarter]"));
    EXPECT_THAT(outcome->text, HasSubstr("--section-at"));
}

TEST(RenderArguments, CasingsAreShownWhenAskedFor) {
    EXPECT_FALSE(requestOf({"alder-72", "--out", "x.png"}).casings);
    EXPECT_TRUE(requestOf({"alder-72", "--casings", "--out", "x.png"}).casings);
}

} // namespace gapwise
