#include "models/chain/effects.h"

#include "models/chain/prediction.h"
#include "tests/support/chain_frame.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <ostream>

namespace gapwise::test {

namespace {

constexpr std::array kColumns{"c", "g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T", "N_C", "N_T"};

double effectIn(const EffectTable& table, const std::string& change, const std::string& chain) {
    const auto row =
        std::ranges::find_if(table.rows, [&](const EffectRow& r) { return r.change->id == change; });
    const auto column =
        std::ranges::find_if(table.chains, [&](const Chain* c) { return c->id.text == chain; });
    if (row == table.rows.end() || column == table.chains.end())
        return 99.0;
    return row->effects[static_cast<std::size_t>(column - table.chains.begin())];
}

} // namespace

/// A line of the effect table as a person reckons it from the geometry.
struct Line {
    const char* change;
    std::array<double, 7> effects;

    friend void PrintTo(const Line& line, std::ostream* out) { *out << line.change; }
};

class EffectLines : public ::testing::TestWithParam<Line> {};

TEST_P(EffectLines, FollowFromTheChainsOfBothFrames) {
    for (const Frame& frame : {alderChainFrame(), birchChainFrame()}) {
        const EffectTable table = effectTable(frame);
        for (std::size_t column = 0; column < kColumns.size(); ++column)
            EXPECT_EQ(effectIn(table, GetParam().change, kColumns[column]), GetParam().effects[column])
                << frame.id.text << ' ' << kColumns[column];
    }
}

INSTANTIATE_TEST_SUITE_P(HandWorked, EffectLines,
                         ::testing::Values(Line{"collar-A-worn", {1, -1, 0, -1, 0, -1, 0}},
                                           Line{"pad-T-worn", {1, -1, 0, -1, 0, -1, 0}},
                                           Line{"collar-B-worn", {1, 0, -1, 0, -1, 0, 1}},
                                           Line{"pad-C-worn", {1, 0, -1, 0, -1, 0, 1}},
                                           Line{"spacer-longer", {1, -1, 0, 0, -1, 0, 1}},
                                           Line{"thrust-shim", {0, -1, 1, -1, 1, -1, -1}},
                                           Line{"wheel-spacer", {0, -1, 1, 0, 0, 0, 0}},
                                           Line{"cover-shim", {0, 1, 0, 0, 0, 1, 1}},
                                           Line{"shield-proud", {0, 0, 0, -1, 0, 0, 0}},
                                           Line{"wheel-not-home", {0, -1, 1, 0, 0, 0, 0}}));

TEST(Effects, ThreadBeyondTheNutShortensWithTheStack) {
    const Frame frame = alderChainFrame();
    const EffectTable table = effectTable(frame);
    EXPECT_EQ(effectIn(table, "wheel-not-home", "beyond_nut"), -1.0);
    EXPECT_EQ(effectIn(table, "spacer-longer", "beyond_nut"), -1.0);
    EXPECT_EQ(effectIn(table, "collar-A-worn", "beyond_nut"), 0.0);
}

TEST(Effects, ChainsThatNothingMovesAreLeftOut) {
    const Frame frame = alderChainFrame();
    const EffectTable table = effectTable(frame);
    EXPECT_EQ(effectIn(table, "collar-A-worn", "D_C"), 99.0);
    for (const EffectRow& row : table.rows)
        EXPECT_EQ(row.effects.size(), table.chains.size());
    EXPECT_EQ(table.rows.size(), frame.changes.size());
}

TEST(Effects, AFrameWithoutChangesHasNoTable) {
    const Frame frame = stackFrame({{"a", 1, 5.0, 0.3}});
    const EffectTable table = effectTable(frame);
    EXPECT_TRUE(table.rows.empty());
    EXPECT_TRUE(table.chains.empty());
}

RC_GTEST_PROP(EffectsProperty, GrowWithTheLengthInProportion, ()) {
    const Frame frame = alderChainFrame();
    const auto values = dimensionValues(frame, {});
    const Change& change = *rc::gen::elementOf(frame.changes);
    const Chain& chain = *rc::gen::elementOf(frame.chains);
    const double length = *rc::gen::inRange(-500, 500) / 1000.0;
    const double moved = predict(chain, movedBy(change, length, values)).valueMm;
    RC_ASSERT(std::abs(moved - predict(chain, values).valueMm - length * effectOn(chain, change, values)) <
              1e-9);
}

} // namespace gapwise::test
