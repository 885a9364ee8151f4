#include "models/measure/judge.h"

#include "models/measure/numbers.h"
#include "tests/models/measure/small_measures.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using testing::HasSubstr;
using testing::StartsWith;

Limits limits(LimitRule rule) {
    return {.fresh = {0.050, 0.090}, .service = {0.050, 0.120}, .rule = rule};
}

/// A quantity that was read, judged by itself.
QuantityResult resultOf(const Measurement& measurement) {
    QuantityResult result;
    result.measurement = &measurement;
    result.quantity = &measurement.quantities.front();
    return result;
}

Evaluated value(double value, double expanded = 0.0) {
    Evaluated read;
    read.values = {value};
    read.value = read.judged = value;
    read.expanded = expanded;
    return read;
}

} // namespace

// A maker's limit is compared as printed; the boundary holds. Common practice, no source.
TEST(Standing, AsPrintedComparesTheBareValue) {
    const Limits both = limits(LimitRule::AsPrinted);
    EXPECT_EQ(standingOf(both, 0.070, 0.1), Standing::Within);
    EXPECT_EQ(standingOf(both, 0.090, 0.1), Standing::Within);
    EXPECT_EQ(standingOf(both, 0.1 - 0.01, 0.1), Standing::Within) << "binary noise";
    EXPECT_EQ(standingOf(both, 0.0901, 0.0), Standing::Between);
    EXPECT_EQ(standingOf(both, 0.120, 0.0), Standing::Between);
    EXPECT_EQ(standingOf(both, 0.1201, 0.0), Standing::Beyond);
    EXPECT_EQ(standingOf(both, 0.0499, 0.0), Standing::Beyond);
}

// ISO 14253-1: what straddles a limit is not proven (UNC-25, UNC-26).
TEST(Standing, GuardedAsksForProof) {
    const Limits both = limits(LimitRule::Guarded);
    EXPECT_EQ(standingOf(both, 0.070, 0.006), Standing::Within);
    EXPECT_EQ(standingOf(both, 0.088, 0.006), Standing::NotProven);
    EXPECT_EQ(standingOf(both, 0.092, 0.006), Standing::NotProven);
    EXPECT_EQ(standingOf(both, 0.100, 0.006), Standing::Between);
    EXPECT_EQ(standingOf(both, 0.118, 0.006), Standing::NotProven);
    EXPECT_EQ(standingOf(both, 0.127, 0.006), Standing::Beyond);
}

TEST(Standing, OneWindowHasNothingBetween) {
    const Limits one{.fresh = {std::nullopt, 0.010}};
    EXPECT_EQ(standingOf(one, 0.010, 0.0), Standing::Within);
    EXPECT_EQ(standingOf(one, 0.011, 0.0), Standing::Beyond);
    const Limits service{.service = {std::nullopt, 0.010}};
    EXPECT_EQ(standingOf(service, 0.011, 0.0), Standing::Beyond);
    EXPECT_EQ(standingOf(Limits{}, 1.0, 0.0), Standing::NoLimit);
}

TEST(Standing, AWiderGuardNeverProvesMore) {
    const Limits both = limits(LimitRule::Guarded);
    for (double value = 0.040; value < 0.130; value += 0.0005)
        for (double expanded = 0.0; expanded < 0.03; expanded += 0.001)
            EXPECT_TRUE(standingOf(both, value, expanded + 0.001) != Standing::Within ||
                        standingOf(both, value, expanded) == Standing::Within)
                << value << " " << expanded;
}

TEST(Verdict, SaysCloseWhereTheBandOfUncertaintyStraddlesALimit) {
    small::Held held{small::frame(), small::build({small::reading("c", {0.087})})};
    small::measure(held);
    EXPECT_TRUE(held.of("c").close);
    EXPECT_THAT(held.of("c").words, HasSubstr("close to 0.090 mm (± 0.006 mm)"));
    held.build.readings = {small::reading("c", {0.070})};
    small::measure(held);
    EXPECT_FALSE(held.of("c").close);
    EXPECT_EQ(held.of("c").words, "0.070 mm lies within 0.050 to 0.090 mm.");
}

TEST(Verdict, BetweenAsksForAPersonAndBeyondSaysTheLimit) {
    small::Held held{small::frame(), small::build({small::reading("c", {0.105})})};
    small::measure(held);
    EXPECT_EQ(held.of("c").standing, Standing::Between);
    EXPECT_THAT(held.of("c").words, HasSubstr("A named person decides"));
    held.build.readings = {small::reading("c", {0.155})};
    small::measure(held);
    EXPECT_THAT(held.of("c").words, StartsWith("0.155 mm is beyond the limit, 0.050 to 0.120 mm."));
    EXPECT_THAT(held.of("c").words, HasSubstr("0.085 mm more than the parts give (0.070 mm)"));
}

TEST(Verdict, WhatThePartsExplainIsTheParts) {
    small::Held held{small::frame(),
                     small::build({small::reading("a", {3.415}), small::reading("c", {0.155})})};
    small::measure(held);
    EXPECT_FALSE(held.of("c").disagrees);
    EXPECT_THAT(held.of("c").words, HasSubstr("The parts give 0.155 mm: it is the parts"));
}

TEST(Verdict, WhatNobodyReadSaysWhoAsksForIt) {
    small::Held held{small::frame(), small::build({})};
    small::measure(held);
    EXPECT_EQ(held.of("c").standing, Standing::NotRead);
    EXPECT_EQ(held.of("c").words, "Not read; S2 asks for it.");
    EXPECT_EQ(held.of("d").words, "Not read.");
    EXPECT_FALSE(isBroken(held.report));
    EXPECT_TRUE(measuresHold(held.frame, held.report)) << "c is required";
}

// Common practice, no source: a bush that turns by more than 2° has lost its pin, one that does not turn is
// nipped.
TEST(Verdict, ABushHoldsItsPin) {
    Measurement play{.quantities = {Quantity{.id = QuantityId{"turn"},
                                             .unit = Unit::Degrees,
                                             .limits = {.fresh = {0.5, 1.5}},
                                             .pinPlay = PinPlayPlan{2.7, 2.5, 9.4525}}}};
    EXPECT_EQ(judge(resultOf(play), value(1.2)).standing, Standing::Within);
    EXPECT_EQ(judge(resultOf(play), value(2.1)).standing, Standing::Beyond);
    EXPECT_EQ(judge(resultOf(play), value(0.0)).standing, Standing::Beyond);
}

// ISO 21940-11: the permissible total and its shares.
TEST(Verdict, UnbalanceIsJudgedInTotalAndInEachPlane) {
    const Measurement machine{.quantities = {Quantity{.id = QuantityId{"U"},
                                                      .unit = Unit::GramMillimetres,
                                                      .limits = {.rule = LimitRule::Guarded},
                                                      .unbalance = UnbalancePlan{}}}};
    QuantityResult result = resultOf(machine);
    result.unbalance = UnbalanceResult{.compressor = 0.020,
                                       .turbine = 0.030,
                                       .permissible = 0.092,
                                       .compressorShare = 0.040,
                                       .turbineShare = 0.052,
                                       .split = true};
    EXPECT_EQ(judge(result, value(0.050, 0.005)).standing, Standing::Within);
    EXPECT_NEAR(*judge(result, value(0.050, 0.005)).limit.most, 0.092, 1e-12);
    result.unbalance->compressor = 0.060;
    EXPECT_EQ(judge(result, value(0.080, 0.005)).standing, Standing::Beyond);
    result.unbalance->compressor = 0.038;
    EXPECT_EQ(judge(result, value(0.068, 0.005)).standing, Standing::NotProven);
    EXPECT_EQ(judge(result, value(0.100, 0.005)).standing, Standing::Beyond);
}

TEST(Verdict, FourGapsHaveASmallestAndACasing) {
    Measurement tip{
        .quantities = {Quantity{.id = QuantityId{"tip"},
                                .limits = {.fresh = {0.35, 0.50}},
                                .fourPoint = FourPointPlan{.eccentricityMost = 0.06, .pointLeast = 0.25}}}};
    QuantityResult result = resultOf(tip);
    result.fourPoint = FourPointResult{.least = 0.36, .casing = 0.011};
    EXPECT_EQ(judge(result, value(0.43)).standing, Standing::Within);
    result.fourPoint->casing = 0.071;
    EXPECT_EQ(judge(result, value(0.43)).standing, Standing::Beyond);
    result.fourPoint->parts = false;
    EXPECT_EQ(judge(result, value(0.43)).standing, Standing::Within) << "without the sag nobody can tell";
    result.fourPoint->least = 0.24;
    EXPECT_EQ(judge(result, value(0.43)).standing, Standing::Beyond);
}

TEST(Verdict, ARingWhoseEndsMeetHotIsBeyond) {
    Measurement ring{
        .quantities = {
            Quantity{.id = QuantityId{"gap"}, .limits = {.fresh = {0.10, 0.25}}, .ringGap = RingGapPlan{}}}};
    QuantityResult result = resultOf(ring);
    result.hotGap = 0.05;
    EXPECT_EQ(judge(result, value(0.16)).standing, Standing::Within);
    result.hotGap = 0.0;
    EXPECT_EQ(judge(result, value(0.16)).standing, Standing::Beyond);
}

TEST(NumberWords, NeverSayMinusZero) {
    EXPECT_EQ(numberWords(-0.0004, 3, Unit::Millimetres), "0.000 mm");
    EXPECT_EQ(numberWords(-0.0006, 3, Unit::Millimetres), "-0.001 mm");
    EXPECT_EQ(numberWords(0.91, 2, Unit::Degrees), "0.91°");
    EXPECT_EQ(windowWords({0.05, 0.09}, 3, Unit::Millimetres), "0.050 to 0.090 mm");
    EXPECT_EQ(windowWords({std::nullopt, 0.01}, 2, Unit::Millimetres), "at most 0.01 mm");
    EXPECT_EQ(windowWords({11.98, std::nullopt}, 2, Unit::Millimetres), "at least 11.98 mm");
    EXPECT_EQ(windowWords({}, 2, Unit::Millimetres), "");
}

} // namespace gapwise
