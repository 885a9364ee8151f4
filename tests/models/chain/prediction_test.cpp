#include "models/chain/prediction.h"

#include "models/chain/effects.h"
#include "tests/support/chain_frame.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <ostream>

namespace gapwise::test {

namespace {

const QuantityId kGap{"gap"};

Prediction predicted(const Frame& frame, const std::string& chain,
                     const std::vector<MeasuredValue>& measured = {}) {
    return predict(chainOf(frame, chain), dimensionValues(frame, measured));
}

/// Three parts in a housing: 2.000 ±0.005, 1.500 ±0.003, 0.500 ±0.002 in 4.020 ±0.005.
std::vector<Link> threePartsInAHousing() {
    return {{"housing", 1, 4.020, 0.005},
            {"one", -1, 2.000, 0.005},
            {"two", -1, 1.500, 0.003},
            {"three", -1, 0.500, 0.002}};
}

} // namespace

TEST(Dimensions, ScatterTellsTheStandardDeviation) {
    const Frame frame = stackFrame({{"n", 1, 1.0, 0.3},
                                    {"r", 1, 1.0, 0.3, Scatter::Rectangular},
                                    {"t", 1, 1.0, 0.3, Scatter::Triangular}});
    const auto values = dimensionValues(frame, {});
    EXPECT_NEAR(values.at(QuantityId{"n"}).standardMm, 0.1, 1e-12);
    // JCGM 100:2008 4.3.7 and 4.3.9.
    EXPECT_NEAR(values.at(QuantityId{"r"}).standardMm, 0.3 / std::sqrt(3.0), 1e-12);
    EXPECT_NEAR(values.at(QuantityId{"t"}).standardMm, 0.3 / std::sqrt(6.0), 1e-12);
}

TEST(Dimensions, WhatWasMeasuredCounts) {
    const Frame frame = alderChainFrame();
    const auto values = dimensionValues(frame, readings({{"t_T", 5.002}, {"no such", 1.0}}, 0.004));
    const DimensionValue& pads = values.at(QuantityId{"t_T"});
    EXPECT_EQ(pads.valueMm, 5.002);
    EXPECT_EQ(pads.halfWidthMm, 0.004);
    EXPECT_EQ(pads.standardMm, 0.002);
    EXPECT_TRUE(pads.measured);
    EXPECT_FALSE(values.at(QuantityId{"L_S"}).measured);
    EXPECT_EQ(values.size(), frame.dimensions.size());
}

// STK-01.
TEST(Stack, WorstCaseIsTheSumOfTheTolerances) {
    const Prediction gap = predicted(stackFrame(threePartsInAHousing()), "gap");
    EXPECT_NEAR(gap.valueMm, 0.020, 1e-12);
    EXPECT_NEAR(gap.worstMm, 0.015, 1e-12);
}

// STK-02.
TEST(Stack, RootSumOfSquares) {
    const Prediction parts = predicted(
        stackFrame({{"one", 1, 2.000, 0.005}, {"two", 1, 1.500, 0.003}, {"three", 1, 0.500, 0.002}}), "gap");
    EXPECT_NEAR(parts.rssMm, 0.00616, 1e-5);
    const Prediction gap = predicted(stackFrame(threePartsInAHousing()), "gap");
    EXPECT_NEAR(gap.rssMm, 0.00794, 1e-5);
    EXPECT_NEAR(gap.valueMm - gap.rssMm, 0.012, 1e-4);
    EXPECT_NEAR(gap.valueMm + gap.rssMm, 0.028, 1e-4);
}

// STK-03.
TEST(Stack, TenLinksOfATenth) {
    const std::vector<std::string> names{"0", "1", "2", "3", "4", "5", "6", "7", "8", "9"};
    std::vector<Link> links;
    for (const std::string& name : names)
        links.push_back({name.c_str(), 1, 1.0, 0.1});
    const Prediction gap = predicted(stackFrame(links), "gap");
    EXPECT_NEAR(gap.worstMm, 1.0, 1e-12);
    EXPECT_NEAR(gap.rssMm, 0.316, 1e-3);
}

// STK-04.
TEST(Stack, UnequalLinks) {
    const Prediction gap =
        predicted(stackFrame({{"a", 1, 1.0, 0.20}, {"b", -1, 1.0, 0.10}, {"c", 1, 1.0, 0.15}}), "gap");
    EXPECT_NEAR(gap.worstMm, 0.45, 1e-12);
    EXPECT_NEAR(gap.rssMm, 0.269, 1e-3);
}

// STK-07.
TEST(Stack, RectangularPartsAddByTheirVariances) {
    const auto scatter = Scatter::Rectangular;
    const Prediction gap = predicted(stackFrame({{"a", 1, 0, 1, scatter},
                                                 {"b", -1, 0, 1, scatter},
                                                 {"c", 1, 0, 1, scatter},
                                                 {"d", 1, 0, 1, scatter}}),
                                     "gap");
    EXPECT_NEAR(gap.standardMm, 1.1547, 1e-4);
}

TEST(Stack, SharesComeFromTheVariancesAndAddUpToOne) {
    const Prediction gap = predicted(stackFrame({{"a", 1, 5.0, 0.3}, {"b", -1, 4.0, 0.4}}), "gap");
    ASSERT_EQ(gap.links.size(), 2U);
    EXPECT_NEAR(gap.links[0].share, 0.36, 1e-12);
    EXPECT_NEAR(gap.links[1].share, 0.64, 1e-12);
    EXPECT_EQ(gap.links[1].sign, -1);
    EXPECT_EQ(gap.links[1].valueMm, 4.0);
}

TEST(Stack, NothingThatScattersHasNoShares) {
    const Prediction gap = predicted(stackFrame({{"a", 1, 5.0, 0.0}, {"b", -1, 4.0, 0.0}}), "gap");
    EXPECT_EQ(gap.links[0].share, 0.0);
    EXPECT_EQ(gap.standardMm, 0.0);
    EXPECT_EQ(gap.valueMm, 1.0);
}

TEST(Stack, ADimensionPassedTwiceCountsTwice) {
    Frame frame = stackFrame({{"a", 1, 5.0, 0.3}, {"b", -1, 4.0, 0.4}});
    frame.chains.front().links.push_back({.of = QuantityId{"a"}, .sign = 1});
    const Prediction gap = predicted(frame, "gap");
    EXPECT_NEAR(gap.valueMm, 6.0, 1e-12);
    EXPECT_NEAR(gap.worstMm, 1.0, 1e-12);
    EXPECT_NEAR(gap.rssMm, std::hypot(0.6, 0.4), 1e-12);
    EXPECT_NEAR(gap.links[0].share + gap.links[2].share, 0.36 / 0.52, 1e-12);
    EXPECT_EQ(sensitivityOf(frame.chains.front(), QuantityId{"a"}), 2);
}

TEST(Stack, ADimensionPassedForthAndBackDoesNotCount) {
    Frame frame = stackFrame({{"a", 1, 5.0, 0.3}, {"b", -1, 4.0, 0.4}});
    frame.chains.front().links.push_back({.of = QuantityId{"a"}, .sign = -1});
    const Prediction gap = predicted(frame, "gap");
    EXPECT_NEAR(gap.valueMm, -4.0, 1e-12);
    EXPECT_NEAR(gap.worstMm, 0.4, 1e-12);
    EXPECT_EQ(gap.links[0].share, 0.0);
}

// ENG-11: adding a shim changes the play by exactly its thickness.
TEST(Stack, AShimChangesTheGapByItsThickness) {
    const Frame frame = stackFrame(threePartsInAHousing());
    EXPECT_NEAR(predicted(frame, "gap", readings({{"one", 2.050}})).valueMm, -0.030, 1e-12);
    EXPECT_NEAR(predicted(frame, "gap", readings({{"housing", 4.070}})).valueMm, 0.070, 1e-12);
}

RC_GTEST_PROP(StackProperty, RootSumOfSquaresIsNoMoreThanTheWorstCase, ()) {
    const auto tolerances = *rc::gen::container<std::vector<double>>(
        12, rc::gen::map(rc::gen::inRange(0, 1000), [](int micrometres) { return micrometres / 1000.0; }));
    std::vector<std::string> names;
    for (std::size_t i = 0; i < tolerances.size(); ++i)
        names.push_back("d" + std::to_string(i));
    std::vector<Link> links;
    for (std::size_t i = 0; i < tolerances.size(); ++i)
        links.push_back({names[i].c_str(), i % 2 == 0 ? 1 : -1, 1.0, tolerances[i]});
    const Prediction gap = predicted(stackFrame(links), "gap");
    RC_ASSERT(gap.rssMm <= gap.worstMm + 1e-12);
    RC_ASSERT(gap.standardMm <= gap.rssMm + 1e-12);
}

TEST(Window, LimitsOfTheQuantityGoBeforeTheChainsOwn) {
    Frame frame = alderChainFrame();
    EXPECT_EQ(windowOf(frame, QuantityId{"c"}).most, 0.09);
    Measurement axial{.id = MeasurementId{"axial-clearance"}};
    axial.quantities.push_back({.id = QuantityId{"c"}, .limits = {.fresh = {0.06, 0.08}}});
    frame.measurements.push_back(axial);
    EXPECT_EQ(windowOf(frame, QuantityId{"c"}).most, 0.08);
}

TEST(Window, AnUnknownChainHasNone) {
    EXPECT_TRUE(windowOf(alderChainFrame(), QuantityId{"no such"}).empty());
}

// The thrust train of the practice sizes, worked by hand; all numbers invented.
TEST(ThrustTrain, ToleranceOfTheAxialClearance) {
    const Prediction alder = predicted(alderChainFrame(), "c");
    EXPECT_NEAR(alder.valueMm, 0.070, 1e-9);
    EXPECT_NEAR(alder.worstMm, 0.015, 1e-9);
    EXPECT_NEAR(alder.rssMm, 0.011, 5e-4);
    const Prediction birch = predicted(birchChainFrame(), "c");
    EXPECT_NEAR(birch.valueMm, 0.150, 1e-9);
    EXPECT_NEAR(birch.worstMm, 0.038, 1e-9);
    EXPECT_NEAR(birch.rssMm, 0.019, 5e-4);
}

TEST(ThrustTrain, MeasuredPartsGiveTheClearanceToExpect) {
    const Prediction first = predicted(alderChainFrame(), "c", readings({{"t_T", 5.002}, {"L_S", 5.070}}));
    EXPECT_NEAR(first.valueMm, 0.068, 1e-9);
    EXPECT_NEAR(first.drawingMm, 0.070, 1e-9);
    EXPECT_TRUE(first.measured);
    const Prediction second = predicted(
        birchChainFrame(), "c", readings({{"t_T", 8.996}, {"h_A", 0.249}, {"h_B", 0.251}, {"L_S", 8.650}}));
    EXPECT_NEAR(second.valueMm, 0.154, 1e-9);
}

/// The seven gaps that tell where a thrust train stands.
struct Case {
    const char* name;
    bool birch;
    const char* change; ///< Empty: as drawn.
    double lengthMm;
    double c, gcsC, gcbT, gtbC, gtsT, noseC, noseT;

    friend void PrintTo(const Case& row, std::ostream* out) { *out << row.name; }
};

class ThrustTrains : public ::testing::TestWithParam<Case> {};

TEST_P(ThrustTrains, HaveTheGapsWorkedByHand) {
    const Case& row = GetParam();
    const Frame frame = row.birch ? birchChainFrame() : alderChainFrame();
    auto values = dimensionValues(frame, {});
    if (*row.change != '\0')
        values = movedBy(changeOf(frame, row.change), row.lengthMm, values);
    const auto gap = [&](const char* id) { return predict(chainOf(frame, id), values).valueMm; };
    EXPECT_NEAR(gap("c"), row.c, 1e-9);
    EXPECT_NEAR(gap("g_cs_C"), row.gcsC, 1e-9);
    EXPECT_NEAR(gap("g_cb_T"), row.gcbT, 1e-9);
    EXPECT_NEAR(gap("g_tb_C"), row.gtbC, 1e-9);
    EXPECT_NEAR(gap("g_ts_T"), row.gtsT, 1e-9);
    EXPECT_NEAR(gap("N_C"), row.noseC, 1e-9);
    EXPECT_NEAR(gap("N_T"), row.noseT, 1e-9);
    // Common practice, no source: the nose depths of the two pushed positions differ by the axial clearance.
    EXPECT_NEAR(gap("N_T") - gap("N_C"), gap("c"), 1e-9);
}

INSTANTIATE_TEST_SUITE_P(
    HandWorked, ThrustTrains,
    ::testing::Values(Case{"alder", false, "", 0.0, 0.070, 0.330, 0.450, 0.800, 0.480, 35.000, 35.070},
                      Case{"alder, collar A worn", false, "collar-A-worn", 0.085, 0.155, 0.245, 0.450, 0.715,
                           0.480, 34.915, 35.070},
                      Case{"alder, collar B worn", false, "collar-B-worn", 0.085, 0.155, 0.330, 0.365, 0.800,
                           0.395, 35.000, 35.155},
                      Case{"alder, spacer shorter", false, "spacer-longer", -0.050, 0.020, 0.380, 0.450,
                           0.800, 0.530, 35.000, 35.020},
                      Case{"alder, shim at the seat", false, "thrust-shim", 0.100, 0.070, 0.230, 0.550, 0.700,
                           0.580, 34.900, 34.970},
                      Case{"birch", true, "", 0.0, 0.150, 0.600, 0.700, 1.300, 0.800, 64.700, 64.850},
                      Case{"birch, collar A worn", true, "collar-A-worn", 0.130, 0.280, 0.470, 0.700, 1.170,
                           0.800, 64.570, 64.850}));

TEST(ThrustTrain, GapsInTheOtherPosition) {
    const auto gap = [](const Frame& frame, const char* id) { return predicted(frame, id).valueMm; };
    const Frame alder = alderChainFrame();
    EXPECT_NEAR(gap(alder, "g_cs_T"), 0.400, 1e-9);
    EXPECT_NEAR(gap(alder, "g_cb_C"), 0.520, 1e-9);
    EXPECT_NEAR(gap(alder, "g_tb_T"), 0.870, 1e-9);
    EXPECT_NEAR(gap(alder, "g_ts_C"), 0.550, 1e-9);
    EXPECT_NEAR(gap(alder, "beyond_nut"), 2.23, 1e-9);
    const Frame birch = birchChainFrame();
    EXPECT_NEAR(gap(birch, "g_cs_T"), 0.750, 1e-9);
    EXPECT_NEAR(gap(birch, "g_cb_C"), 0.850, 1e-9);
    EXPECT_NEAR(gap(birch, "g_tb_T"), 1.450, 1e-9);
    EXPECT_NEAR(gap(birch, "g_ts_C"), 0.950, 1e-9);
    EXPECT_NEAR(gap(birch, "beyond_nut"), 2.95, 1e-9);
}

// Common practice, no source: distance between running faces less the thickness of the thrust bearing.
TEST(CommonPractice, AxialClearanceIsTheDistanceOfTheRunningFacesLessTheThrustBearing) {
    const Frame frame = birchChainFrame();
    const auto values = dimensionValues(frame, {});
    const auto size = [&](const char* id) { return values.at(QuantityId{id}).valueMm; };
    EXPECT_NEAR(predict(chainOf(frame, "c"), values).valueMm,
                size("h_A") + size("L_S") + size("h_B") - size("t_T"), 1e-12);
}

// Common practice, no source.
TEST(CommonPractice, PushedToTheCompressorItsShroudGapAndTheTurbineBackGapAreSmallest) {
    for (const Frame& frame : {alderChainFrame(), birchChainFrame()}) {
        const auto gap = [&](const char* id) { return predicted(frame, id).valueMm; };
        EXPECT_LT(gap("g_cs_C"), gap("g_cs_T"));
        EXPECT_LT(gap("g_tb_C"), gap("g_tb_T"));
        EXPECT_GT(gap("g_cb_C"), gap("g_cb_T"));
        EXPECT_GT(gap("g_ts_C"), gap("g_ts_T"));
    }
}

// Common practice, no source.
TEST(CommonPractice, WearOfTheTurbineSideFaceLetsTheWheelMoveTowardTheCover) {
    for (const Frame& frame : {alderChainFrame(), birchChainFrame()}) {
        const auto values = dimensionValues(frame, {});
        EXPECT_EQ(effectOn(chainOf(frame, "g_cs_C"), changeOf(frame, "collar-A-worn"), values), -1.0);
        EXPECT_EQ(effectOn(chainOf(frame, "g_cs_C"), changeOf(frame, "pad-T-worn"), values), -1.0);
    }
}

// Common practice, no source: radial play is the inner and the outer clearance together.
TEST(CommonPractice, RadialPlayIsInnerPlusOuterClearance) {
    const Frame frame = alderChainFrame();
    const Prediction play = predicted(frame, "D_C");
    EXPECT_NEAR(play.valueMm, predicted(frame, "Ci_C").valueMm + predicted(frame, "Co_C").valueMm, 1e-12);
    // The parts' bands worked by hand: 0.125 to 0.162, worst pairs.
    EXPECT_NEAR(play.valueMm - play.worstMm, 0.125, 1e-9);
    EXPECT_NEAR(play.valueMm + play.worstMm, 0.162, 1e-9);
    // The four parts of the first practice job.
    const auto measured = readings({{"d_C", 11.993}, {"ID_C", 12.034}, {"OD_C", 18.905}, {"B_C", 19.005}});
    EXPECT_NEAR(predicted(frame, "D_C", measured).valueMm, 0.141, 1e-9);
}

} // namespace gapwise::test
