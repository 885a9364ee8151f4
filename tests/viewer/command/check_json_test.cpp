#include "viewer/command/check_json.h"

#include "tests/models/check/bench.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

using ::testing::ElementsAre;
using Json = nlohmann::json;

Json checked(std::vector<Seating> seatings, CheckOptions options = {}) {
    const Frame frame = bench::smallFrame();
    Build build;
    build.seatings = std::move(seatings);
    return Json::parse(checkAsJson(frame, checkBuild(frame, build, options)));
}

Json findingOf(const Json& document, const char* rule) {
    for (const Json& finding : document["findings"])
        if (finding["rule"] == rule)
            return finding;
    return nullptr;
}

} // namespace

TEST(CheckJson, NamesTheFrameAndCountsTheRules) {
    const Json document = checked({bench::seatedAt("SR-C", 90.0)});
    EXPECT_EQ(document["frame"], "small");
    EXPECT_EQ(document["holds"], true);
    EXPECT_EQ(document["counts"], Json::parse(R"({"holds":4,"broken":0,"open":0,"not_due":7})"));
    EXPECT_TRUE(document["findings"].empty());
}

TEST(CheckJson, AFindingHasEveryKeyInItsOrder) {
    const Frame frame = bench::smallFrame();
    Build build;
    build.seatings = {bench::seatedAt("SR-C", 270.0)};
    const auto document = nlohmann::ordered_json::parse(checkAsJson(frame, checkBuild(frame, build, {})));
    std::vector<std::string> keys;
    for (const auto& item : document["findings"][0].items())
        keys.push_back(item.key());
    EXPECT_THAT(keys, ElementsAre("rule", "parts", "kind", "severity", "verdict", "expected", "actual",
                                  "deviation_deg", "as_seen", "as_printed", "mistakes", "turn", "words",
                                  "question"));
}

TEST(CheckJson, AClockSpeaksDegreesFromTheRulesSide) {
    Seating seating = bench::seatedAt("SR-C", 270.0);
    seating.setIn = View{Side::Compressor, Degrees{180.0}};
    const Json finding = findingOf(checked({seating}), "SR-C.gap");
    EXPECT_EQ(finding["parts"], Json::parse(R"(["SR-C"])"));
    EXPECT_EQ(finding["kind"], "gap_clock");
    EXPECT_EQ(finding["severity"], 3);
    EXPECT_EQ(finding["verdict"], "broken");
    EXPECT_EQ(finding["expected"],
              Json::parse(R"({"clock_deg":90.0,"seen_from":"compressor","tolerance_deg":30.0})"));
    EXPECT_EQ(finding["actual"], Json::parse(R"({"clock_deg":270.0,"seen_from":"compressor"})"));
    EXPECT_EQ(finding["deviation_deg"], 180.0);
    EXPECT_EQ(finding["as_seen"], Json::parse(R"({"clock_deg":90.0,"side":"compressor","top_deg":180.0})"));
    EXPECT_EQ(finding["as_printed"], true);
    EXPECT_EQ(finding["mistakes"][0], "upside_down");
    EXPECT_EQ(finding["turn"]["deg"], 180.0);
    EXPECT_EQ(finding["turn"]["side"], "compressor");
}

TEST(CheckJson, WhatIsNotKnownIsNull) {
    Seating seating = bench::seatedAt("SR-C", 0.0);
    seating.index.reset();
    seating.referenceFaceLooks.reset();
    const Json document = checked({seating});
    const Json gap = findingOf(document, "SR-C.gap");
    EXPECT_EQ(gap["verdict"], "open");
    for (const char* key : {"actual", "deviation_deg", "as_seen", "as_printed", "turn"})
        EXPECT_TRUE(gap[key].is_null()) << key;
    EXPECT_TRUE(findingOf(document, "SR-C.face")["actual"].is_null());
    EXPECT_TRUE(findingOf(document, "SR-C.clear")["actual"].is_null());
}

TEST(CheckJson, AFaceNamesWhichWayItLooks) {
    const Json finding = findingOf(checked({bench::seatedAt("SR-C", 90.0, Side::Compressor)}), "SR-C.face");
    EXPECT_EQ(finding["expected"], Json::parse(R"({"face":"rounded","looks":"turbine","visible":false})"));
    EXPECT_EQ(finding["actual"], Json::parse(R"({"face":"rounded","looks":"compressor"})"));
    EXPECT_THAT(finding["mistakes"], ElementsAre("reversed"));
}

TEST(CheckJson, AGapOverAFeatureNamesTheFeatureAndTheAngleItNeeds) {
    const Json finding = findingOf(checked({bench::seatedAt("SR-C", 180.0)}), "SR-C.clear");
    EXPECT_EQ(finding["expected"]["feature"], "F08");
    EXPECT_NEAR(finding["expected"]["at_least_apart_deg"].get<double>(), 35.9, 0.05);
    EXPECT_EQ(finding["actual"]["apart_deg"], 0.0);
    EXPECT_LT(finding["deviation_deg"].get<double>(), 0.0);
}

TEST(CheckJson, TwoGapsAreSoFarApart) {
    const Json finding =
        findingOf(checked({bench::seatedAt("PR-1", 0.0), bench::seatedAt("PR-2", 90.0)}), "PR.apart");
    EXPECT_EQ(finding["expected"], Json::parse(R"({"apart_deg":180.0,"tolerance_deg":20.0})"));
    EXPECT_EQ(finding["actual"], Json::parse(R"({"apart_deg":90.0})"));
    EXPECT_EQ(finding["deviation_deg"], -90.0);
}

TEST(CheckJson, AStatedFactIsSaidInWords) {
    Seating stepped = bench::seatedAt("PR-P", 0.0);
    stepped.seat = seatOf(PartId{"PR-1"});
    const Json finding = findingOf(checked({stepped}), "PR-1.joint");
    EXPECT_EQ(finding["expected"], Json::parse(R"({"fact":"a straight joint"})"));
    EXPECT_EQ(finding["actual"], Json::parse(R"({"fact":"a stepped joint"})"));
    EXPECT_TRUE(finding["deviation_deg"].is_null());
}

TEST(CheckJson, CompleteNamesWhatIsNotDueAsOpen) {
    const Json document = checked({}, CheckOptions{.complete = true});
    EXPECT_EQ(document["holds"], false);
    EXPECT_EQ(document["counts"]["not_due"], 11);
    EXPECT_EQ(document["findings"].size(), 11U);
    for (const Json& finding : document["findings"])
        EXPECT_EQ(finding["verdict"], "open");
}

} // namespace gapwise
