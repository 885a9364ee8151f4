#include "compare.h"

#include <gtest/gtest.h>

#include <map>
#include <set>
#include <sstream>

namespace gapwise::oracle {

namespace {

struct Row {
    const char* frame;
    const char* ring;
    double target; ///< Stored: from the compressor side.
    double tolerance;
    double theta;
    const char* mistakes;
};

// Which single mistakes explain a clock: arithmetic of the demo frames' invented rules.
constexpr std::array<Row, 18> kRows{
    {{"birch-150", "SR-CO", 120, 20, 302, "upside_down"},
     {"birch-150", "SR-CO", 120, 20, 240, "mirrored_view other_end_rule"},
     {"birch-150", "SR-CO", 120, 20, 60, "end_over_end"},
     {"birch-150", "SR-CO", 120, 20, 210, "quarter_turn"},
     {"birch-150", "SR-CO", 120, 20, 180, ""},
     {"birch-150", "SR-TO", 240, 20, 120, "mirrored_view other_end_rule"},
     {"alder-72-pinned", "SR-CO", 150, 20, 90, "other_variant_rule"},
     {"alder-72-pinned", "SR-CO", 150, 20, 210, "mirrored_view"},
     {"alder-72-pinned", "SR-CO", 150, 20, 330, "upside_down"},
     {"alder-72-pinned", "SR-CO", 150, 20, 30, "end_over_end"},
     {"alder-72-pinned", "SR-CO", 150, 20, 300, "other_end_rule"},
     {"alder-72-pinned", "SR-TO", 300, 20, 270, "other_variant_rule"},
     {"alder-72-pinned", "SR-TO", 300, 20, 60, "mirrored_view"},
     {"alder-72-pinned", "SR-TO", 300, 20, 250, "end_over_end other_variant_rule"},
     {"alder-72", "SR-CO", 90, 30, 140, "other_variant_rule"},
     {"alder-72", "SR-CO", 90, 30, 155, "quarter_turn other_variant_rule"},
     {"alder-72", "SR-CO", 90, 30, 270, "mirrored_view upside_down other_end_rule"},
     {"alder-72", "SR-TO", 270, 30, 310, "other_variant_rule"}}};

std::set<std::string> wordsOf(const std::string& text) {
    std::istringstream words{text};
    return {std::istream_iterator<std::string>{words}, std::istream_iterator<std::string>{}};
}

class ExplainedClocks : public ::testing::TestWithParam<Row> {};

std::string nameOfRow(const ::testing::TestParamInfo<Row>& info) {
    std::string name =
        std::string{info.param.frame} + info.param.ring + std::to_string(static_cast<int>(info.param.theta));
    std::erase(name, '-');
    return name;
}

} // namespace

TEST_P(ExplainedClocks, SetOfSingleMistakes) {
    const Row& row = GetParam();
    const Frame frame = bundledFrame(row.frame);
    const std::optional<Frame> sister =
        frame.sister ? std::optional{bundledFrame(frame.sister->text)} : std::nullopt;
    const RuleId id{std::string{row.ring} + ".gap"};
    ASSERT_TRUE(frame.rule(id));
    const PrintedClock& printed = *printedClockOf(*frame.rule(id));
    EXPECT_NEAR(targetOf(printed).from(Side::Compressor).value, row.target, 1e-9);
    EXPECT_EQ(printed.tolerance.value, row.tolerance);

    Bench bench = goodBench(frame);
    bench.of(row.ring)->index = Said{row.theta, Side::Compressor};
    const Build build = buildOf(bench);
    const Checked checked = checkBuild(frame, build, CheckOptions{.sister = sister ? &*sister : nullptr});
    const auto finding = std::find_if(checked.findings.begin(), checked.findings.end(),
                                      [&](const Finding& f) { return f.verdict.rule->id == id; });
    ASSERT_NE(finding, checked.findings.end());
    EXPECT_EQ(finding->verdict.state, RuleState::Broken);
    std::set<std::string> named;
    for (const Mistake mistake : finding->mistakes)
        named.emplace(gapwise::nameOf(mistake));
    EXPECT_EQ(named, wordsOf(row.mistakes));
}

INSTANTIATE_TEST_SUITE_P(TradeRows, ExplainedClocks, ::testing::ValuesIn(kRows), nameOfRow);

} // namespace gapwise::oracle
