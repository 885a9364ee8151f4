// The chains of the bundled frames against sizes worked by hand. All their numbers are invented.
#include "models/chain/chain.h"
#include "models/frame/read_frame.h"

#include "tests/support/chain_frame.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <ostream>

namespace gapwise::test {

namespace {

using ::testing::HasSubstr;

Frame bundled(const std::string& id) {
    Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, id, Validation::Full);
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return std::move(frame).value();
}

constexpr std::array kFrames{"alder-72", "alder-72-pinned", "birch-150"};
constexpr std::array kGaps{"c", "g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T", "N_C", "N_T"};

double gapOf(const Frame& frame, const char* chain, const std::map<QuantityId, DimensionValue>& values) {
    return predict(chainOf(frame, chain), values).valueMm;
}

/// A row of gaps with one change of a frame.
struct Row {
    const char* frame;
    const char* change; ///< Empty: as drawn.
    double lengthMm;
    std::array<double, 7> gaps;

    friend void PrintTo(const Row& row, std::ostream* out) { *out << row.frame << ' ' << row.change; }
};

const std::array kRows{
    Row{"alder-72", "", 0.0, {0.070, 0.330, 0.450, 0.800, 0.480, 35.000, 35.070}},
    Row{"alder-72", "collar-A-worn", 0.085, {0.155, 0.245, 0.450, 0.715, 0.480, 34.915, 35.070}},
    Row{"alder-72", "collar-B-worn", 0.085, {0.155, 0.330, 0.365, 0.800, 0.395, 35.000, 35.155}},
    Row{"alder-72", "spacer-longer", -0.050, {0.020, 0.380, 0.450, 0.800, 0.530, 35.000, 35.020}},
    Row{"alder-72", "thrust-shim", 0.100, {0.070, 0.230, 0.550, 0.700, 0.580, 34.900, 34.970}},
    Row{"alder-72-pinned", "", 0.0, {0.070, 0.330, 0.450, 0.800, 0.480, 35.000, 35.070}},
    Row{"birch-150", "", 0.0, {0.150, 0.600, 0.700, 1.300, 0.800, 64.700, 64.850}},
    Row{"birch-150", "collar-A-worn", 0.130, {0.280, 0.470, 0.700, 1.170, 0.800, 64.570, 64.850}},
};

struct Line {
    const char* change;
    std::array<double, 7> effects;
};

const std::array kLines{
    Line{"collar-A-worn", {1, -1, 0, -1, 0, -1, 0}}, Line{"pad-T-worn", {1, -1, 0, -1, 0, -1, 0}},
    Line{"collar-B-worn", {1, 0, -1, 0, -1, 0, 1}},  Line{"pad-C-worn", {1, 0, -1, 0, -1, 0, 1}},
    Line{"spacer-longer", {1, -1, 0, 0, -1, 0, 1}},  Line{"thrust-shim", {0, -1, 1, -1, 1, -1, -1}},
    Line{"wheel-spacer", {0, -1, 1, 0, 0, 0, 0}},    Line{"cover-shim", {0, 1, 0, 0, 0, 1, 1}},
    Line{"shield-proud", {0, 0, 0, -1, 0, 0, 0}},    Line{"wheel-not-home", {0, -1, 1, 0, 0, 0, 0}}};

PartEvidence blindPart(const char* id, double value) {
    return {.value = read(id, value), .blind = true, .method = "flat anvils bridge a worn track"};
}

/// The third practice job before the collar is found.
CaseFile wornCollar() {
    return {.gaps = readings({{"c", 0.155},
                              {"N_C", 34.915},
                              {"N_T", 35.070},
                              {"g_cs_C", 0.245},
                              {"g_cb_T", 0.450},
                              {"g_tb_C", 0.715}},
                             0.008),
            .parts = {blindPart("a_A", 3.500),
                      blindPart("h_A", 0.0),
                      {.value = read("t_T", 5.000)},
                      {.value = read("L_S", 5.070)}},
            .renewed = {PartId{"THRUST"}}};
}

} // namespace

class BundledChains : public ::testing::TestWithParam<Row> {};

TEST_P(BundledChains, HaveTheGapsWorkedByHand) {
    const Row& row = GetParam();
    const Frame frame = bundled(row.frame);
    auto values = dimensionValues(frame, {});
    if (*row.change != '\0')
        values = movedBy(changeOf(frame, row.change), row.lengthMm, values);
    for (std::size_t i = 0; i < kGaps.size(); ++i)
        EXPECT_NEAR(gapOf(frame, kGaps[i], values), row.gaps[i], 1e-9) << kGaps[i];
}

INSTANTIATE_TEST_SUITE_P(HandWorked, BundledChains, ::testing::ValuesIn(kRows));

TEST(BundledFrames, ChangesHaveTheEffectsWorkedByHand) {
    for (const char* id : kFrames) {
        const Frame frame = bundled(id);
        const auto values = dimensionValues(frame, {});
        EXPECT_EQ(frame.changes.size(), kLines.size());
        for (const Line& line : kLines)
            for (std::size_t i = 0; i < kGaps.size(); ++i)
                EXPECT_EQ(effectOn(chainOf(frame, kGaps[i]), changeOf(frame, line.change), values),
                          line.effects[i])
                    << id << ' ' << line.change << ' ' << kGaps[i];
    }
}

TEST(BundledFrames, EveryAxialChainIsTheDistanceOfItsEnds) {
    for (const char* id : kFrames) {
        const Frame frame = bundled(id);
        const auto values = dimensionValues(frame, {});
        for (const Chain& chain : frame.chains) {
            const auto along = stationsAlongShaft(frame, values, chain.pushedTo.value_or(Side::Compressor));
            if (!along.contains(chain.from) || !along.contains(chain.to))
                continue;
            EXPECT_NEAR(along.at(chain.to) - along.at(chain.from), predict(chain, values).valueMm, 1e-9)
                << id << ' ' << chain.id.text;
        }
    }
}

TEST(BundledFrames, FacesLieWhereTheDrawingHasThem) {
    const auto lies = [](const Frame& frame, const char* station) {
        return stationsAlongShaft(frame, dimensionValues(frame, {}), Side::Compressor).at(StationId{station});
    };
    const Frame alder = bundled("alder-72");
    EXPECT_NEAR(lies(alder, "COVER/inlet face"), 92.0, 1e-9);
    EXPECT_NEAR(lies(alder, "ROTOR/shaft end"), 57.0, 1e-9);
    EXPECT_NEAR(lies(alder, "NUT/outer face"), 54.77, 1e-9);
    EXPECT_NEAR(lies(alder, "ROTOR/wheel back"), -77.8, 1e-9);
    const Frame birch = bundled("birch-150");
    EXPECT_NEAR(lies(birch, "COVER/inlet face"), 176.0, 1e-9);
    EXPECT_NEAR(lies(birch, "COLLAR-B/running face"), 8.95, 1e-9);
    EXPECT_NEAR(lies(birch, "COLLAR-A/hub face"), 0.05, 1e-9);
    EXPECT_NEAR(lies(birch, "ROTOR/wheel back"), -154.7, 1e-9);
}

TEST(BundledFrames, ToleranceOfTheAxialClearance) {
    const auto predicted = [](const Frame& frame) {
        return predict(chainOf(frame, "c"), dimensionValues(frame, {}));
    };
    const Prediction alder = predicted(bundled("alder-72"));
    EXPECT_NEAR(alder.worstMm, 0.015, 1e-9);
    EXPECT_NEAR(alder.rssMm, 0.011, 5e-4);
    const Prediction birch = predicted(bundled("birch-150"));
    EXPECT_NEAR(birch.worstMm, 0.038, 1e-9);
    EXPECT_NEAR(birch.rssMm, 0.019, 5e-4);
}

TEST(BundledFrames, TheSpacerOfBirchIsSolvedFromMeasuredParts) {
    const Frame frame = bundled("birch-150");
    const auto measured = readings({{"t_T", 8.982}, {"h_A", 0.252}, {"h_B", 0.249}});
    const std::vector<Selection> selections = selectionsOf(frame, measured);
    const Selection& spacer = selections.front();
    ASSERT_EQ(spacer.selector->dimension.text, "L_S");
    EXPECT_NEAR(spacer.requiredMm, 8.631, 1e-9);
    ASSERT_TRUE(spacer.proposed);
    EXPECT_EQ(spacer.grades[*spacer.proposed].gradeMm, 8.625);
    EXPECT_NEAR(spacer.grades[*spacer.proposed].gaps.front().thenMm, 0.144, 1e-9);
    EXPECT_NEAR(spacer.grades[*spacer.proposed].nutShiftDeg, 6.0, 1e-9);
}

TEST(BundledFrames, OneGradeOfAldersSpacerShiftsTheLineOfTheNut) {
    const Frame frame = bundled("alder-72");
    const Selection spacer = selectionsOf(frame, {}).front();
    EXPECT_NEAR(spacer.grades.back().nutShiftDeg, -7.2, 1e-9);
}

TEST(BundledFrames, TheWornCollarIsFoundBeforeItIsTold) {
    const Frame frame = bundled("alder-72");
    const Diagnosis diagnosis = diagnose(frame, wornCollar());
    ASSERT_FALSE(diagnosis.causes.empty());
    EXPECT_EQ(diagnosis.causes.front().change->id, "collar-A-worn");
    EXPECT_NEAR(diagnosis.causes.front().lengthMm, 0.085, 0.001);
    EXPECT_GT(diagnosis.causes.front().likelihood, 0.9);
    EXPECT_TRUE(diagnosis.explained);
    ASSERT_FALSE(diagnosis.settles.empty());
    EXPECT_EQ(diagnosis.settles.front().quantity.text, "a_A");
    EXPECT_THAT(diagnosis.settles.front().words, HasSubstr("ball or point anvil"));
    EXPECT_THAT(diagnosis.settles.front().words, HasSubstr("3.415 if it is worn by 0.085, 3.500 if not"));
    EXPECT_THAT(diagnosis.summary, HasSubstr("the stop on the turbine side"));
}

TEST(BundledFrames, OnceTheTrackIsReadThePartsExplainTheClearance) {
    const Frame frame = bundled("alder-72");
    CaseFile known = wornCollar();
    known.parts = {{.value = read("a_A", 3.415)},
                   {.value = read("h_A", 0.085)},
                   {.value = read("t_T", 5.000)},
                   {.value = read("L_S", 5.070)}};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_FALSE(diagnosis.anythingMoved);
    EXPECT_THAT(diagnosis.summary, HasSubstr("the parts explain it"));
}

/// What the wear of the old plate and of the collar came to before dismantling: two places, one stop.
TEST(BundledFrames, AsReceivedTheTurbineSideStopMovedByPlateAndCollarTogether) {
    const Frame frame = bundled("alder-72");
    const CaseFile known{.gaps = readings({{"c", 0.175}, {"N_C", 34.895}, {"N_T", 35.070}}, 0.008)};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_NEAR(diagnosis.causes.front().lengthMm, 0.105, 0.001);
    EXPECT_THAT(diagnosis.summary, HasSubstr("the stop on the turbine side"));
}

} // namespace gapwise::test
