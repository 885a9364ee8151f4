#include "models/chain/diagnosis.h"

#include "models/chain/effects.h"
#include "models/chain/prediction.h"
#include "tests/support/chain_frame.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace gapwise::test {

namespace {

using ::testing::Contains;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

constexpr double kGapU = 0.006;

const GapEvidence& evidenceOf(const Diagnosis& diagnosis, const char* chain) {
    return *std::ranges::find(diagnosis.evidence, QuantityId{chain}, &GapEvidence::chain);
}

const Cause* causeOf(const Diagnosis& diagnosis, const char* change) {
    const auto found = std::ranges::find_if(diagnosis.causes,
                                            [&](const Cause& cause) { return cause.change->id == change; });
    return found != diagnosis.causes.end() ? &*found : nullptr;
}

PartEvidence part(const char* id, double value, double expanded = 0.003) {
    return {.value = read(id, value, expanded)};
}

PartEvidence blindPart(const char* id, double value) {
    return {.value = read(id, value), .blind = true, .method = "flat anvils bridge a worn track"};
}

/// The third practice job before the collar is found worn: its face looks as new under flat anvils, the
/// thrust bearing is new.
CaseFile wornCollar() {
    return {.gaps = readings({{"c", 0.155},
                              {"N_C", 34.915},
                              {"N_T", 35.070},
                              {"g_cs_C", 0.245},
                              {"g_cb_T", 0.450},
                              {"g_tb_C", 0.715}},
                             kGapU),
            .parts = {blindPart("a_A", 3.500), blindPart("h_A", 0.0), part("t_T", 5.000), part("L_S", 5.070)},
            .renewed = {PartId{"THRUST"}}};
}

/// Every gap of the frame as it would be read with a change of this length, without noise.
CaseFile noiseless(const Frame& frame, const Change& change, double lengthMm) {
    const auto values = movedBy(change, lengthMm, dimensionValues(frame, {}));
    CaseFile known;
    for (const char* id : {"c", "N_C", "N_T", "g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T", "beyond_nut"})
        known.gaps.push_back(read(id, predict(chainOf(frame, id), values).valueMm, 0.002));
    return known;
}

} // namespace

TEST(Diagnosis, WithoutAReadingThereIsNone) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis = diagnose(frame, {});
    EXPECT_THAT(diagnosis.evidence, IsEmpty());
    EXPECT_FALSE(diagnosis.anythingMoved);
    EXPECT_THAT(diagnosis.causes, IsEmpty());
    EXPECT_FALSE(diagnosis.explained);
    EXPECT_EQ(diagnosis.summary, "");
}

TEST(Diagnosis, AHealthyTrainHasNotMoved) {
    const Frame frame = alderChainFrame();
    const CaseFile known{.gaps = readings({{"c", 0.068}, {"N_C", 35.000}, {"N_T", 35.068}}, kGapU),
                         .parts = {part("t_T", 5.002), part("L_S", 5.070)}};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_FALSE(diagnosis.anythingMoved);
    EXPECT_THAT(diagnosis.causes, IsEmpty());
    EXPECT_EQ(diagnosis.summary, "Nothing has moved: what was read is what the parts say.");
    EXPECT_NEAR(evidenceOf(diagnosis, "c").predictedMm, 0.068, 1e-9);
}

TEST(Diagnosis, UnknownQuantitiesAreNoEvidence) {
    const Frame frame = alderChainFrame();
    EXPECT_THAT(diagnose(frame, {.gaps = readings({{"R_n", 0.5}})}).evidence, IsEmpty());
}

TEST(Diagnosis, OfOneGapTheLastReadingCounts) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis = diagnose(frame, {.gaps = readings({{"c", 0.155}, {"c", 0.070}})});
    ASSERT_EQ(diagnosis.evidence.size(), 1U);
    EXPECT_EQ(diagnosis.evidence.front().measuredMm, 0.070);
}

TEST(Diagnosis, ADifferenceMovesAGapOnlyBeyondItsUncertainty) {
    const Frame frame = alderChainFrame();
    const auto moved = [&](double c, double expanded) {
        return diagnose(frame, {.gaps = {read("c", c, expanded)}}).evidence.front().moved;
    };
    EXPECT_FALSE(moved(0.089, 0.002)); // 0.019: less than what is ever called moved
    EXPECT_TRUE(moved(0.092, 0.002));
    EXPECT_FALSE(moved(0.115, 0.060));
    EXPECT_TRUE(moved(0.155, 0.060));
}

TEST(WornCollar, IsFoundBeforeItIsTold) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis = diagnose(frame, wornCollar());
    ASSERT_FALSE(diagnosis.causes.empty());
    const Cause& first = diagnosis.causes.front();
    EXPECT_EQ(first.change->id, "collar-A-worn");
    EXPECT_NEAR(first.lengthMm, 0.085, 0.001);
    EXPECT_LT(first.standardMm, 0.005);
    EXPECT_GT(first.likelihood, 0.9);
    EXPECT_TRUE(diagnosis.explained);
}

TEST(WornCollar, ExplainsEveryGapThatMoved) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis = diagnose(frame, wornCollar());
    EXPECT_NEAR(evidenceOf(diagnosis, "c").measuredMm - evidenceOf(diagnosis, "c").predictedMm, 0.085, 1e-9);
    EXPECT_TRUE(evidenceOf(diagnosis, "N_C").moved);
    EXPECT_FALSE(evidenceOf(diagnosis, "N_T").moved);
    EXPECT_FALSE(evidenceOf(diagnosis, "g_cb_T").moved);
    EXPECT_EQ(diagnosis.causes.front().explains.size(), 4U); // c, g_cs_C, g_tb_C, N_C
    EXPECT_THAT(diagnosis.causes.front().leaves, IsEmpty());
}

TEST(WornCollar, IsSettledByABallAnvil) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis = diagnose(frame, wornCollar());
    ASSERT_FALSE(diagnosis.settles.empty());
    EXPECT_EQ(diagnosis.settles.front().quantity.text, "a_A");
    EXPECT_EQ(diagnosis.settles.front().method, "ball or point anvil in the track");
    EXPECT_EQ(diagnosis.settles.front().words,
              "collar A in its track, ball or point anvil in the track: 3.415 if it is worn "
              "by 0.085, 3.500 if not");
}

TEST(WornCollar, IsToldInWords) {
    const Frame frame = alderChainFrame();
    const std::string summary = diagnose(frame, wornCollar()).summary;
    EXPECT_THAT(summary, HasSubstr("c is 0.085 larger"));
    EXPECT_THAT(summary, HasSubstr("N_C moved and N_T did not: the stop on the turbine side"));
    EXPECT_THAT(summary, HasSubstr("Collar A, running face worn by 0.085: fits every gap that was read"));
    EXPECT_THAT(summary, HasSubstr("was read as 3.500 by a method that cannot see it"));
    EXPECT_THAT(summary, HasSubstr("3.415 if it is worn by 0.085, 3.500 if not"));
}

TEST(WornCollar, OnceReadInItsTrackIsInThePredictionAndNothingHasMoved) {
    const Frame frame = alderChainFrame();
    CaseFile known = wornCollar();
    known.parts = {part("a_A", 3.415), part("h_A", 0.085), part("t_T", 5.000), part("L_S", 5.070)};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_NEAR(evidenceOf(diagnosis, "c").predictedMm, 0.155, 1e-9);
    EXPECT_FALSE(diagnosis.anythingMoved);
    EXPECT_THAT(diagnosis.causes, IsEmpty());
    EXPECT_THAT(diagnosis.summary, HasSubstr("c is 0.155, out of 0.050 to 0.090, and the parts explain it"));
    EXPECT_THAT(diagnosis.summary,
                HasSubstr("collar A, hub over the running face is 0.085 over its drawing size"));
}

TEST(WornCollar, CannotBeToldFromTheTurbineSidePadByGapsAlone) {
    const Frame frame = alderChainFrame();
    CaseFile known = wornCollar();
    known.parts.clear();
    known.renewed.clear();
    const Diagnosis diagnosis = diagnose(frame, known);
    ASSERT_GE(diagnosis.causes.size(), 2U);
    EXPECT_NEAR(causeOf(diagnosis, "collar-A-worn")->likelihood, causeOf(diagnosis, "pad-T-worn")->likelihood,
                1e-3);
    EXPECT_THAT(diagnosis.summary, HasSubstr("or thrust bearing, turbine-side pads worn by 0.085 would fit"));
    ASSERT_GE(diagnosis.settles.size(), 2U);
    for (const Settling& settling : diagnosis.settles)
        EXPECT_THAT(settling.words, HasSubstr("if not"));
}

TEST(WornCollar, ANewPartIsLessLikelyToBeWorn) {
    const Frame frame = alderChainFrame();
    CaseFile known = wornCollar();
    known.parts.clear();
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_EQ(diagnosis.causes.front().change->id, "collar-A-worn");
    const Cause* pad = causeOf(diagnosis, "pad-T-worn");
    ASSERT_NE(pad, nullptr);
    EXPECT_LT(pad->likelihood, 0.1);
    EXPECT_THAT(pad->why, HasSubstr("the part is new"));
}

TEST(WornCollar, APartReadingThatSeesSpeaksAgainstACause) {
    const Frame frame = alderChainFrame();
    CaseFile known = wornCollar();
    known.renewed.clear();
    known.parts = {part("a_A", 3.500), part("h_A", 0.0)}; // by ball anvil, and the pads not measured
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_EQ(diagnosis.causes.front().change->id, "pad-T-worn");
    const Cause* collar = causeOf(diagnosis, "collar-A-worn");
    ASSERT_NE(collar, nullptr);
    EXPECT_THAT(collar->why, HasSubstr("was measured at 3.500 and would read 3.415"));
    EXPECT_EQ(diagnosis.settles.front().quantity.text, "t_T");
}

TEST(Diagnosis, WhereEveryPartReadingSpeaksAgainstItNothingIsExplained) {
    const Frame frame = alderChainFrame();
    CaseFile known = wornCollar();
    known.parts = {part("a_A", 3.500), part("h_A", 0.0), part("t_T", 5.000), part("p_T", 0.0),
                   part("L_S", 5.070)};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_TRUE(diagnosis.anythingMoved);
    EXPECT_FALSE(diagnosis.explained);
    EXPECT_THAT(diagnosis.summary, HasSubstr("No single change explains it"));
}

TEST(Diagnosis, ContradictingReadingsAreNotExplained) {
    const Frame frame = alderChainFrame();
    const CaseFile known{
        .gaps = readings({{"c", 0.155}, {"N_C", 35.060}, {"N_T", 34.990}, {"g_cs_C", 0.500}}, kGapU)};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_TRUE(diagnosis.anythingMoved);
    EXPECT_FALSE(diagnosis.explained);
    EXPECT_GT(diagnosis.unexplained, 0.9);
    EXPECT_THAT(diagnosis.summary, HasSubstr("No single change explains it"));
}

// Two places at once: collar A by 0.085 and collar B by 0.060.
TEST(Diagnosis, TwoChangesAtOnceAreNoSingleCause) {
    const Frame frame = alderChainFrame();
    const CaseFile known{.gaps = readings({{"c", 0.215},
                                           {"N_C", 34.915},
                                           {"N_T", 35.130},
                                           {"g_cs_C", 0.245},
                                           {"g_cb_T", 0.390},
                                           {"g_tb_C", 0.715},
                                           {"g_ts_T", 0.420}},
                                          kGapU)};
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_FALSE(diagnosis.explained);
    EXPECT_THAT(diagnosis.summary, HasSubstr("N_C and N_T both moved, and not alike"));
}

// Common practice, no source: N_T moved and N_C did not; g_cs tells the spacer from wear on that side.
TEST(Diagnosis, ShroudGapTellsALongerSpacerFromWearOnTheCompressorSide) {
    const Frame frame = alderChainFrame();
    const auto first = [&](double gcs, double gcb, double gts) {
        const CaseFile known{.gaps = readings({{"c", 0.130},
                                               {"N_C", 35.000},
                                               {"N_T", 35.060 + 0.070},
                                               {"g_cs_C", gcs},
                                               {"g_cb_T", gcb},
                                               {"g_ts_T", gts}},
                                              kGapU)};
        return diagnose(frame, known).causes.front().change->id;
    };
    EXPECT_EQ(first(0.270, 0.450, 0.420), "spacer-longer");
    EXPECT_EQ(first(0.330, 0.390, 0.420), "collar-B-worn");
}

TEST(Diagnosis, SaysToReadTheNoseDepthsWhereOnlyTheClearanceIsKnown) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis =
        diagnose(frame, {.gaps = readings({{"c", 0.155}}, kGapU),
                         .parts = {part("a_A", 3.5), part("h_A", 0.0), part("h_B", 0.0), part("b_B", 14.2),
                                   part("t_T", 5.0), part("L_S", 5.07)}});
    std::vector<std::string> asked;
    for (const Settling& settling : diagnosis.settles)
        asked.push_back(settling.quantity.text);
    EXPECT_THAT(asked, Contains("N_C"));
    EXPECT_THAT(asked, Contains("N_T"));
}

TEST(Diagnosis, ASpacerTooShortIsNamedSo) {
    const Frame frame = alderChainFrame();
    CaseFile known = noiseless(frame, changeOf(frame, "spacer-longer"), -0.050);
    const Diagnosis diagnosis = diagnose(frame, known);
    EXPECT_EQ(diagnosis.causes.front().name, "spacer sleeve shorter");
    EXPECT_NEAR(diagnosis.causes.front().lengthMm, -0.050, 1e-6);
    EXPECT_TRUE(diagnosis.explained);
}

TEST(Diagnosis, WearNeverAddsMaterial) {
    const Frame frame = alderChainFrame();
    const Diagnosis diagnosis = diagnose(frame, noiseless(frame, changeOf(frame, "collar-A-worn"), -0.085));
    EXPECT_EQ(causeOf(diagnosis, "collar-A-worn"), nullptr);
    EXPECT_FALSE(diagnosis.explained);
}

TEST(Diagnosis, LikelihoodsAndWhatIsUnexplainedAddUpToOne) {
    const Frame frame = alderChainFrame();
    CaseFile known = wornCollar();
    known.parts.clear();
    const Diagnosis diagnosis = diagnose(frame, known);
    double sum = diagnosis.unexplained;
    for (const Cause& cause : diagnosis.causes)
        sum += cause.likelihood;
    EXPECT_NEAR(sum, 1.0, 0.01);
    EXPECT_TRUE(std::ranges::is_sorted(diagnosis.causes, std::ranges::greater{}, &Cause::likelihood));
}

TEST(Diagnosis, AFrameWithoutChangesExplainsNothing) {
    Frame frame = alderChainFrame();
    frame.changes.clear();
    const Diagnosis diagnosis = diagnose(frame, wornCollar());
    EXPECT_TRUE(diagnosis.anythingMoved);
    EXPECT_FALSE(diagnosis.explained);
    EXPECT_THAT(diagnosis.summary, HasSubstr("No single change explains it"));
}

RC_GTEST_PROP(DiagnosisProperty, RecoversASingleChangeFromNoiselessReadings, ()) {
    const Frame frame = *rc::gen::element(0, 1) == 0 ? alderChainFrame() : birchChainFrame();
    const Change& change = *rc::gen::elementOf(frame.changes);
    const double length = *rc::gen::inRange(100, 400) / 1000.0;
    const Diagnosis diagnosis = diagnose(frame, noiseless(frame, change, length));
    RC_ASSERT(diagnosis.anythingMoved);
    RC_ASSERT(diagnosis.explained);
    const Cause* found = causeOf(diagnosis, change.id.c_str());
    RC_ASSERT(found != nullptr);
    RC_ASSERT(std::abs(found->lengthMm - length) < 1e-6);
    // What fits better or as well moves the same gaps alike: the readings cannot tell them apart.
    for (const Cause& cause : diagnosis.causes) {
        if (cause.misfit > found->misfit + 1e-6)
            continue;
        for (const char* id : {"c", "N_C", "N_T", "g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T"}) {
            const auto values = dimensionValues(frame, {});
            RC_ASSERT(effectOn(chainOf(frame, id), *cause.change, values) ==
                      effectOn(chainOf(frame, id), change, values));
        }
    }
}

} // namespace gapwise::test
