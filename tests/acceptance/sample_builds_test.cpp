#include "tests/viewer/command/run_program.h"
#include "tests/viewer/command/sheets.h"

#include <gmock/gmock.h>

#include <filesystem>
#include <map>
#include <set>

namespace gapwise::test {

using ::testing::HasSubstr;
using Json = nlohmann::json;

namespace {

/// What a sample build is named after, as the command must find it.
struct Sample {
    const char* build;
    std::set<std::string> broken; ///< Rules.
    const char* mistake;          ///< The likeliest of the first broken rule, or empty.
};

// Invented builds of invented frames: each breaks exactly what its name says.
const std::vector<Sample> kSamples{
    {"alder-72-good", {}, ""},
    {"alder-72-collar-renewed", {}, ""},
    {"alder-72-worn-collar", {}, ""}, // what is worn there is measured, not seen
    {"alder-72-pinned-good", {}, ""},
    {"birch-150-good", {}, ""},
    {"alder-72-ring-face-reversed", {"SR-CI.face"}, "reversed"},
    {"alder-72-gap-over-slot", {"SR-CO.clear-F06", "SR-CO.gap"}, ""},
    {"alder-72-three-faults", {"DEFLECTOR.opening", "SR-CO.gap", "marks-nose"}, "mirrored_view"},
    {"birch-150-half-a-turn", {"SR-CO.gap"}, "upside_down"},
    {"birch-150-read-from-the-other-side", {"SR-CO.gap"}, "mirrored_view"}};

Json checked(const std::string& build) {
    return parsed(gapwise({"check", bundled("builds/" + build + ".build.json"), "--json"}).out);
}

std::set<std::string> brokenIn(const Json& document) {
    std::set<std::string> broken;
    for (const Json& finding : document["findings"])
        if (finding["verdict"] == "broken")
            broken.insert(finding["rule"].get<std::string>());
    return broken;
}

class SampleBuild : public ::testing::TestWithParam<Sample> {};

} // namespace

INSTANTIATE_TEST_SUITE_P(All, SampleBuild, ::testing::ValuesIn(kSamples), [](const auto& sample) {
    std::string name = sample.param.build;
    std::erase(name, '-');
    return name;
});

TEST_P(SampleBuild, BreaksWhatItsNameSays) {
    const Json document = checked(GetParam().build);
    EXPECT_EQ(brokenIn(document), GetParam().broken);
    if (*GetParam().mistake != '\0') {
        EXPECT_EQ(document["findings"][0]["mistakes"][0], GetParam().mistake);
    }
}

TEST_P(SampleBuild, HasTheStatusThatItsRulesDemand) {
    const std::string file = bundled("builds/" + std::string{GetParam().build} + ".build.json");
    EXPECT_EQ(gapwise({"check", file}).status, GetParam().broken.empty() ? 0 : 1);
    EXPECT_EQ(gapwise({"check", file, "--complete"}).status, GetParam().broken.empty() ? 0 : 1);
}

TEST(SampleBuilds, AreAllListedHere) {
    std::set<std::string> listed;
    for (const Sample& sample : kSamples)
        listed.insert(std::string{sample.build} + ".build.json");
    std::set<std::string> there;
    for (const auto& entry : std::filesystem::directory_iterator(bundled("builds")))
        there.insert(entry.path().filename().string());
    EXPECT_EQ(listed, there);
}

// The ring was set where the sheet says, while the drain lay away from the technician.
TEST(SampleBuilds, HalfATurnWasReadAsPrinted) {
    const Json finding = checked("birch-150-half-a-turn")["findings"][0];
    EXPECT_EQ(finding["expected"],
              Json::parse(R"({"clock_deg":120.0,"seen_from":"compressor","tolerance_deg":20.0})"));
    EXPECT_EQ(finding["actual"], Json::parse(R"({"clock_deg":302.0,"seen_from":"compressor"})"));
    EXPECT_EQ(finding["deviation_deg"], -178.0);
    EXPECT_EQ(finding["as_seen"], Json::parse(R"({"clock_deg":122.0,"side":"compressor","top_deg":180.0})"));
    EXPECT_EQ(finding["as_printed"], true);
    EXPECT_EQ(finding["mistakes"], Json::parse(R"(["upside_down"])"));
    EXPECT_EQ(finding["turn"], Json::parse(R"({"deg":178.0,"sense":"clockwise","side":"compressor"})"));
    EXPECT_THAT(finding["words"].get<std::string>(), HasSubstr("the drain was away from you"));
}

TEST(SampleBuilds, AReversedFaceNamesTheFaceThatMustBeVisible) {
    const Json finding = checked("alder-72-ring-face-reversed")["findings"][0];
    EXPECT_EQ(finding["expected"]["face"], "rounded");
    EXPECT_EQ(finding["expected"]["looks"], "compressor");
    EXPECT_EQ(finding["actual"]["looks"], "turbine");
    EXPECT_THAT(finding["words"].get<std::string>(), HasSubstr("you must see the rounded face"));
}

// Read from the other side, set with the drain away, and a wheel one blade off: each has its own reason.
TEST(SampleBuilds, ThreeFaultsAtOnceAreExplainedOneByOne) {
    const Json document = checked("alder-72-three-faults");
    std::map<std::string, std::string> words;
    for (const Json& finding : document["findings"])
        words[finding["rule"].get<std::string>()] = finding["words"].get<std::string>();
    ASSERT_EQ(words.size(), 3U);
    EXPECT_THAT(words.at("SR-CO.gap"), HasSubstr("you were looking from the turbine side"));
    EXPECT_THAT(words.at("DEFLECTOR.opening"), HasSubstr("the drain was away from you"));
    EXPECT_THAT(words.at("marks-nose"), HasSubstr("60"));
}

TEST(SampleBuilds, AGapOverASlotNamesTheSlot) {
    const Json all = checked("alder-72-gap-over-slot");
    int named = 0;
    for (const Json& finding : all["findings"])
        if (finding["rule"] == "SR-CO.clear-F06") {
            ++named;
            EXPECT_EQ(finding["expected"]["feature"], "F06");
            EXPECT_LT(finding["deviation_deg"].get<double>(), 0.0);
        }
    EXPECT_EQ(named, 1);
}

} // namespace gapwise::test
