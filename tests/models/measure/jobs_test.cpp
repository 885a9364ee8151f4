#include "models/measure/measure.h"

#include "models/build/read_build.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <memory>
#include <string>

namespace gapwise {

namespace {

using testing::HasSubstr;
using testing::IsEmpty;

constexpr double kPrinted = 0.0005; ///< Sheets print thousandths.

/// A bundled job with everything that its measurements say. All numbers are invented.
struct Job {
    BuildSheet sheet{};
    MeasureReport report{};

    const QuantityResult& of(const char* id) const { return *report.of(QuantityId{id}); }
    double value(const char* id) const { return of(id).after->value; }
    double before(const char* id) const { return of(id).before->value; }
    double predicted(const char* id) const { return of(id).predicted->value; }
    double chain(const char* id) const {
        return std::ranges::find(report.chains, QuantityId{id}, &Prediction::chain)->valueMm;
    }
    Standing standing(const char* id) const { return of(id).standing; }
    BeforeAndAfter::Outcome outcome(const char* id) const { return of(id).change->outcome; }
};

/// A report points into its sheet: neither moves.
std::unique_ptr<Job> job(const std::string& name) {
    const DataFolder data{GAPWISE_TEST_SHARE};
    auto sheet = readBuildSheet(data, data.root / "builds" / (name + ".build.json"));
    auto bench = demoBench(data);
    auto job = std::make_unique<Job>();
    if (!sheet || !bench) {
        ADD_FAILURE() << describe((sheet ? bench.errors() : sheet.errors()).front());
        return job;
    }
    job->sheet = std::move(sheet).value();
    job->report = measureReport(job->sheet.frame, job->sheet.build, *bench, {});
    return job;
}

using Outcome = BeforeAndAfter::Outcome;

} // namespace

// Invented, of the demo jobs: SRB-1041, Alder-72, good.
TEST(GoodAlder, PartsGiveWhatTheyPredict) {
    const auto j = job("alder-72-good");
    EXPECT_NEAR(j->value("d_C"), 11.993, kPrinted);
    EXPECT_NEAR(j->value("d_T"), 11.992, kPrinted);
    EXPECT_NEAR(j->chain("D_C"), 0.141, kPrinted);
    EXPECT_NEAR(j->chain("D_T"), 0.147, kPrinted);
    EXPECT_NEAR(j->predicted("c"), 0.068, kPrinted);
    for (const char* part : {"d_C", "d_T", "ID_C", "ID_T", "OD_C", "OD_T", "B_C", "B_T", "t_T", "L_S"})
        EXPECT_EQ(j->standing(part), Standing::Within) << part;
}

TEST(GoodAlder, AxialClearanceAgreesAndIsDown) {
    const auto j = job("alder-72-good");
    EXPECT_NEAR(j->before("c"), 0.095, kPrinted);
    EXPECT_NEAR(j->value("c"), 0.068, 1e-12);
    EXPECT_NEAR(j->of("c").after->spread, 0.002, 1e-12);
    EXPECT_EQ(j->standing("c"), Standing::Within);
    EXPECT_FALSE(j->of("c").disagrees);
    EXPECT_EQ(j->outcome("c"), Outcome::AsExpected);
    EXPECT_NEAR(j->value("c_nose"), 0.068, 1e-9);
    EXPECT_THAT(j->of("c_nose").after->flags, IsEmpty());
}

TEST(GoodAlder, EndReadingsLieInTheBandOfThePartsAndGiveThemBack) {
    const auto j = job("alder-72-good");
    EXPECT_NEAR(j->of("R_n").predicted->least, 0.453, kPrinted);
    EXPECT_NEAR(j->of("R_n").predicted->most, 0.547, kPrinted);
    EXPECT_NEAR(j->of("R_t").predicted->least, 0.427, kPrinted);
    EXPECT_NEAR(j->of("R_t").predicted->most, 0.514, kPrinted);
    for (const char* end : {"R_n", "R_t"}) {
        EXPECT_EQ(j->standing(end), Standing::Within);
        EXPECT_EQ(j->outcome(end), Outcome::AsExpected) << "bearings renewed: down";
        EXPECT_FALSE(j->of(end).disagrees);
    }
    ASSERT_TRUE(j->report.play);
    EXPECT_NEAR(*j->report.play->compressorBand.least, 0.129, kPrinted);
    EXPECT_NEAR(*j->report.play->compressorBand.most, 0.156, kPrinted);
    EXPECT_NEAR(*j->report.play->turbineBand.least, 0.135, kPrinted);
    EXPECT_NEAR(*j->report.play->turbineBand.most, 0.162, kPrinted);
    EXPECT_TRUE(j->report.play->agree);
}

TEST(GoodAlder, TipGapsShowTheSagAndWhatCleaningDid) {
    const auto j = job("alder-72-good");
    const FourPointResult& compressor = *j->of("tip_C").fourPoint;
    EXPECT_NEAR(compressor.mean, 0.430, 1e-9);
    EXPECT_NEAR(compressor.sag, 0.067, kPrinted);
    EXPECT_NEAR(compressor.casing, 0.011, kPrinted);
    EXPECT_NEAR(compressor.leftWhenRocked, 0.17, 0.005);
    const FourPointResult& turbine = *j->of("tip_T").fourPoint;
    EXPECT_NEAR(turbine.mean, 0.500, 1e-9);
    EXPECT_NEAR(turbine.right, -0.010, 1e-9);
    EXPECT_NEAR(turbine.up, -0.070, 1e-9);
    EXPECT_NEAR(turbine.sag, 0.077, kPrinted);
    EXPECT_NEAR(turbine.casing, 0.012, kPrinted);
    const FourPointResult& was = *j->of("tip_T").fourPointBefore;
    EXPECT_NEAR(was.mean, 0.435, 1e-9);
    EXPECT_NEAR(was.right, 0.005, 1e-9);
    EXPECT_NEAR(was.up, -0.075, 1e-9);
    EXPECT_NEAR(was.consistency, 0.0, 1e-9);
    EXPECT_EQ(j->outcome("tip_C"), Outcome::Unchanged);
    EXPECT_EQ(j->outcome("tip_T"), Outcome::AsExpected);
    EXPECT_THAT(j->of("tip_T").change->words, HasSubstr("0.065 mm removed"));
}

TEST(GoodAlder, NothingHoldsItAndNothingIsOdd) {
    const auto j = job("alder-72-good");
    EXPECT_EQ(j->outcome("N_C"), Outcome::AsExpected) << "0.025 of the old plate";
    EXPECT_EQ(j->outcome("N_T"), Outcome::Unchanged);
    EXPECT_EQ(j->standing("gap_T1"), Standing::Within);
    EXPECT_EQ(j->standing("gap_C1"), Standing::Within);
    EXPECT_GT(*j->of("gap_T1").hotGap, 0.0);
    EXPECT_FALSE(isBroken(j->report));
    EXPECT_FALSE(measuresHold(j->sheet.frame, j->report));
    EXPECT_FALSE(j->report.diagnosis.anythingMoved);
    for (const QuantityResult& result : j->report.quantities)
        for (const Flag& flag : result.after ? result.after->flags : std::vector<Flag>{})
            ADD_FAILURE() << result.quantity->id.text << ": " << flag.words;
}

// Invented, of the demo jobs: SRB-1046, Birch-150, its readings.
TEST(GoodBirch, PartsGiveWhatTheyPredict) {
    const auto j = job("birch-150-good");
    EXPECT_NEAR(j->chain("D_C"), 0.203, kPrinted);
    EXPECT_NEAR(j->chain("D_T"), 0.212, kPrinted);
    EXPECT_NEAR(j->predicted("c"), 0.154, kPrinted);
    EXPECT_NEAR(j->of("R_n").predicted->least, 0.640, kPrinted);
    EXPECT_NEAR(j->of("R_n").predicted->most, 0.780, kPrinted);
    EXPECT_NEAR(j->of("R_t").predicted->least, 0.590, kPrinted);
    EXPECT_NEAR(j->of("R_t").predicted->most, 0.717, kPrinted);
    EXPECT_NEAR(j->predicted("turn_C"), 0.91, 0.005);
    EXPECT_NEAR(j->predicted("float_C"), 0.20, kPrinted);
}

TEST(GoodBirch, EveryReadingIsWithin) {
    const auto j = job("birch-150-good");
    EXPECT_NEAR(j->value("c"), 0.154, 1e-12);
    for (const char* each : {"c", "R_n", "R_t", "tip_C", "tip_T", "float_C", "float_T", "turn_C", "turn_T"})
        EXPECT_EQ(j->standing(each), Standing::Within) << each << ": " << j->of(each).words;
    EXPECT_NEAR(j->before("c"), 0.188, kPrinted);
    EXPECT_NEAR(j->before("R_n"), 0.86, kPrinted);
    EXPECT_NEAR(j->value("c_nose"), 0.154, 1e-9);
    EXPECT_FALSE(isBroken(j->report));
    EXPECT_FALSE(j->report.diagnosis.anythingMoved);
}

TEST(GoodBirch, TheCasingsAreConcentricOnceTheSagIsTakenOff) {
    const auto j = job("birch-150-good");
    const FourPointResult& compressor = *j->of("tip_C").fourPoint;
    EXPECT_NEAR(compressor.mean, 0.655, 1e-9);
    EXPECT_NEAR(compressor.right, 0.0, 1e-9);
    EXPECT_NEAR(compressor.up, -0.100, 1e-9);
    EXPECT_NEAR(compressor.sag, 0.096, kPrinted);
    EXPECT_NEAR(compressor.casing, 0.004, kPrinted);
    const FourPointResult& turbine = *j->of("tip_T").fourPoint;
    EXPECT_NEAR(turbine.mean, 0.855, 1e-9);
    EXPECT_NEAR(turbine.right, -0.010, 1e-9);
    EXPECT_NEAR(turbine.sag, 0.111, kPrinted);
    EXPECT_NEAR(turbine.casing, 0.015, kPrinted);
}

// Invented, of the demo jobs: SRB-1052, Alder-72, before the collar was found.
TEST(WornCollar, TheReadingIsBeyondItsLimitAndThePartsDoNotExplainIt) {
    const auto j = job("alder-72-worn-collar");
    EXPECT_NEAR(j->value("c"), 0.155, 1e-12);
    EXPECT_NEAR(j->predicted("c"), 0.070, kPrinted);
    EXPECT_EQ(j->standing("c"), Standing::Beyond);
    EXPECT_TRUE(j->of("c").disagrees);
    EXPECT_THAT(j->of("c").words, HasSubstr("0.085 mm more than the parts give (0.070 mm)"));
    EXPECT_TRUE(isBroken(j->report));
}

TEST(WornCollar, OnlyAPartOfWhatWasGoneCameBack) {
    const auto j = job("alder-72-worn-collar");
    EXPECT_NEAR(j->before("c"), 0.175, kPrinted);
    EXPECT_EQ(j->outcome("c"), Outcome::AsExpected);
    EXPECT_THAT(j->of("c").change->words, HasSubstr("Only 0.020 of 0.105 mm came back"));
}

TEST(WornCollar, TheFlatAnvilCouldNotSeeIt) {
    const auto j = job("alder-72-worn-collar");
    EXPECT_EQ(j->standing("a_A"), Standing::NotJudged);
    std::vector<FlagKind> kinds;
    for (const Flag& flag : j->of("a_A").after->flags)
        kinds.push_back(flag.kind);
    EXPECT_THAT(kinds, testing::ElementsAre(FlagKind::OtherMethod, FlagKind::Blind));
    EXPECT_THAT(j->of("a_A").words, HasSubstr("flat anvils bridge a worn track"));
}

TEST(WornCollar, GapsAtTheTurbineSideStopMovedAndTheOthersDidNot) {
    const auto j = job("alder-72-worn-collar");
    EXPECT_NEAR(j->value("N_C") - j->predicted("N_C"), -0.085, 1e-9);
    EXPECT_NEAR(j->value("N_T") - j->predicted("N_T"), 0.0, 1e-9);
    EXPECT_NEAR(j->value("g_cs_C") - j->predicted("g_cs_C"), -0.085, 1e-9);
    EXPECT_NEAR(j->value("g_cb_T") - j->predicted("g_cb_T"), 0.0, 1e-9);
    EXPECT_NEAR(j->value("g_tb_C") - j->predicted("g_tb_C"), -0.085, 1e-9);
    EXPECT_EQ(j->standing("g_cs_C"), Standing::Beyond);
    EXPECT_EQ(j->standing("g_cb_T"), Standing::Within);
    EXPECT_EQ(j->standing("g_tb_C"), Standing::Within);
}

TEST(WornCollar, TheRestIsThatOfAHealthyUnit) {
    const auto j = job("alder-72-worn-collar");
    EXPECT_NEAR(j->chain("D_C"), 0.139, kPrinted);
    EXPECT_NEAR(j->chain("D_T"), 0.144, kPrinted);
    for (const char* each : {"R_n", "R_t", "tip_C"})
        EXPECT_EQ(j->standing(each), Standing::Within) << j->of(each).words;
}

// The reading that settles it, and the collar that was renewed.
TEST(CollarRenewed, TheLastReadingsCountAndTheFirstStayVisible) {
    const auto j = job("alder-72-collar-renewed");
    EXPECT_NEAR(j->value("c"), 0.070, 1e-12);
    EXPECT_NEAR(j->predicted("c"), 0.070, kPrinted);
    EXPECT_EQ(j->standing("c"), Standing::Within);
    ASSERT_EQ(j->of("c").earlier.size(), 1U);
    EXPECT_NEAR(j->of("c").earlier[0].value, 0.155, 1e-12);
    ASSERT_EQ(j->of("a_A").earlier.size(), 2U);
    EXPECT_NEAR(j->of("a_A").earlier[0].value, 3.500, 1e-12) << "by a flat anvil";
    EXPECT_NEAR(j->of("a_A").earlier[1].value, 3.415, 1e-12) << "by a ball anvil";
    EXPECT_NEAR(j->value("N_C"), 35.000, 1e-12);
    EXPECT_FALSE(isBroken(j->report));
    EXPECT_FALSE(j->report.diagnosis.anythingMoved);
}

} // namespace gapwise
