#include "viewer/command/check_text.h"

#include "tests/models/check/bench.h"
#include "viewer/command/text_layout.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <sstream>

namespace gapwise {

namespace {

using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;

Frame frameFor(Purpose purpose) {
    Frame frame = bench::smallFrame();
    frame.purpose = purpose;
    frame.revision = "7";
    for (Rule& rule : frame.rules) {
        rule.printed = "gap right, seen from the compressor side";
        rule.reason = "A free end can hook on the edge of the slot.";
        rule.source = "sheet S-1";
    }
    return frame;
}

std::string textOf(const Frame& frame, const Build& build) {
    return checkAsText(frame, build, checkBuild(frame, build, {}), "K1.build.json");
}

Build brokenBuild() {
    Build build;
    build.attitude = uprightAttitude(Side::Compressor, Degrees{0.0});
    build.seatings = {bench::seatedAt("SR-C", 270.0)};
    return build;
}

} // namespace

TEST(CheckText, ABrokenRuleIsSaidBySignWordAndSeverity) {
    const std::string text = textOf(frameFor(Purpose::Work), brokenBuild());
    EXPECT_THAT(text, HasSubstr("✗ BROKEN  SR-C.gap  severity 3 (early wear), last look S2\n"));
    EXPECT_THAT(text, HasSubstr("Rules: 3 hold, 1 broken, 0 open, 7 not due yet."));
}

TEST(CheckText, ExpectedAndActualNameTheirSide) {
    std::string text = textOf(frameFor(Purpose::Work), brokenBuild());
    std::ranges::replace(text, '\n', ' ');
    EXPECT_THAT(text,
                HasSubstr("the gap is at 9:00, the rule says 3:00 ± 30° (both seen from the compressor "));
}

TEST(CheckText, SaysWhyItMattersAndWhichWayToTurn) {
    const std::string text = textOf(frameFor(Purpose::Work), brokenBuild());
    EXPECT_THAT(text, HasSubstr("Matters: A free end can hook on the edge of the slot.\n"));
    EXPECT_THAT(text, HasSubstr("Turn it 180°"));
    EXPECT_THAT(text, HasSubstr("Likely mistakes: "));
}

TEST(CheckText, AsksTheQuestionThatDecides) {
    EXPECT_THAT(textOf(frameFor(Purpose::Work), brokenBuild()), HasSubstr("Decide:  When you set it: "));
}

TEST(CheckText, SaysHowThePieceLies) {
    EXPECT_THAT(
        textOf(frameFor(Purpose::Work), brokenBuild()),
        HasSubstr("On the bench, seen from its front: compressor end up, drain at 12:00, away from you.\n"));
    EXPECT_THAT(textOf(frameFor(Purpose::Work), Build{}), HasSubstr("is not known"));
}

TEST(CheckText, WhatIsNotDueIsFoldedIntoItsCount) {
    const std::string text = textOf(frameFor(Purpose::Work), brokenBuild());
    EXPECT_THAT(text, Not(HasSubstr("PR-1")));
    EXPECT_THAT(text, Not(HasSubstr("NOT DUE")));
}

TEST(CheckText, EndsWithWhatTheVerdictRestsOn) {
    EXPECT_THAT(textOf(frameFor(Purpose::Work), brokenBuild()),
                EndsWith("\n\nnot consistent with the loaded rules of frame small, revision 7; the maker's "
                         "manual, local codes and authorised persons prevail\n"));
    EXPECT_THAT(
        textOf(frameFor(Purpose::Work), Build{}),
        EndsWith("\n\nconsistent with the loaded rules of frame small, revision 7; the maker's manual, "
                 "local codes and authorised persons prevail\n"));
}

TEST(CheckText, APracticeFrameCarriesItsNotice) {
    constexpr const char* kNotice = "\nPractice frame – invented numbers – not for work on a machine\n";
    EXPECT_THAT(textOf(frameFor(Purpose::Practice), brokenBuild()), HasSubstr(kNotice));
    EXPECT_THAT(textOf(frameFor(Purpose::Work), brokenBuild()), Not(HasSubstr(kNotice)));
}

TEST(CheckText, NeverSaysSafeOrApproved) {
    for (const Build& build : {Build{}, brokenBuild()}) {
        const std::string text = textOf(frameFor(Purpose::Practice), build);
        EXPECT_THAT(text, Not(HasSubstr("safe")));
        EXPECT_THAT(text, Not(HasSubstr("approved")));
    }
}

TEST(CheckText, FindingsFitTheColumns) {
    std::istringstream lines(textOf(frameFor(Purpose::Practice), brokenBuild()));
    for (std::string line; std::getline(lines, line);)
        if (!line.starts_with("not consistent")) {
            EXPECT_LE(columnsOf(line), kTextColumns) << line;
        }
}

} // namespace gapwise
