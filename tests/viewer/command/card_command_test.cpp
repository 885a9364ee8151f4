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

Ended card(const char* frame, const char* part, bool json = false) {
    return json ? gapwise({"frame", "show", frame, "--part", part, "--json"})
                : gapwise({"frame", "show", frame, "--part", part});
}

Json demandIn(const Json& document, const std::string& rule) {
    for (const Json& demand : document["demands"])
        if (demand["rule"] == rule)
            return demand;
    return nullptr;
}

class CardOf : public ::testing::TestWithParam<const char*> {};

} // namespace

TEST(CardCommand, SaysHowAPartMustSitFromBothSides) {
    const Ended ended = card("alder-72", "SR-CO");
    EXPECT_EQ(ended.status, 0) << ended.err;
    EXPECT_THAT(ended.out, HasSubstr("SR-CO  outer snap ring of the compressor bearing"));
    EXPECT_THAT(ended.out, HasSubstr("From the compressor:  the sharp face, the gap at 3:00 ± 30°\n"));
    EXPECT_THAT(ended.out, HasSubstr("From the turbine:     the rounded face, the gap at 9:00 ± 30°\n"));
    EXPECT_THAT(ended.out, HasSubstr("SR-CO.gap  severity 3 (early wear)"));
    EXPECT_THAT(ended.out, HasSubstr("Otherwise: "));
    EXPECT_THAT(ended.out, HasSubstr("Last look: S18 "));
}

TEST(CardCommand, EndsWithTheNoticeAndWhatPrevails) {
    EXPECT_THAT(
        card("birch-150", "THRUST").out,
        ::testing::EndsWith("Practice frame – invented numbers – not for work on a machine\n"
                            "as the loaded rules of frame birch-150, revision 1 say; the maker's manual, "
                            "local codes and authorised persons prevail\n"));
}

TEST(CardCommand, GivesTheSameFactsAsJson) {
    const Json document = parsed(card("alder-72", "SR-CO", true).out);
    EXPECT_EQ(document["frame"], "alder-72");
    EXPECT_EQ(document["part"]["material"], "spring steel, stamped");
    EXPECT_EQ(document["must_see"][0]["seen_from"], "compressor");
    EXPECT_EQ(document["must_see"][0]["face"], "sharp");
    EXPECT_EQ(document["must_see"][0]["clock_deg"], 90.0);
    EXPECT_EQ(document["must_see"][1]["face"], "rounded");
    EXPECT_EQ(document["must_see"][1]["clock_deg"], 270.0);
    const Json face = demandIn(document, "SR-CO.face");
    EXPECT_EQ(face["expected"]["looks"], "turbine");
    EXPECT_EQ(face["severity"], 3);
    EXPECT_EQ(face["severity_word"], "early wear");
    for (const char* key : {"lubricant", "cautions", "measurements", "fasteners", "orientations",
                            "without_rule", "hidden_by", "placed_in", "notice", "rests_on"})
        EXPECT_TRUE(document.contains(key)) << key;
}

TEST(CardCommand, RefusesAnUnknownPartAndSaysWhichThereAre) {
    const Ended ended = card("alder-72", "SR-XX");
    EXPECT_EQ(ended.status, 2);
    EXPECT_THAT(ended.out, IsEmpty());
    EXPECT_THAT(ended.err,
                HasSubstr("--part: found \"SR-XX\"; allowed: a part of alder-72: HOUSING, ROTOR, "));
    const Json errors = parsed(card("alder-72", "SR-XX", true).out)["errors"];
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0]["pointer"], "--part");
}

TEST(CardCommand, APartIsOnlyShownNotChecked) {
    EXPECT_EQ(gapwise({"frame", "check", "alder-72", "--part", "SR-CO"}).status, 2);
}

INSTANTIATE_TEST_SUITE_P(All, CardOf, ::testing::Values("alder-72", "alder-72-pinned", "birch-150"));

TEST_P(CardOf, EveryPartIsReadableAtAHundredColumns) {
    const Json frame = bundledJson(std::string{"frames/"} + GetParam() + ".json");
    for (const Json& part : frame["parts"]) {
        const Ended ended = card(GetParam(), part["id"].get<std::string>().c_str());
        EXPECT_EQ(ended.status, 0) << ended.err;
        std::istringstream lines(ended.out);
        for (std::string line; std::getline(lines, line);) {
            const bool last = line.starts_with("as the loaded rules");
            EXPECT_TRUE(last || columnsOf(line) <= kTextColumns) << line;
        }
    }
}

} // namespace gapwise::test
