#include "models/check/carrier.h"

#include "tests/models/check/bench.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

double fromCompressor(const HousingClock& clock) {
    return clock.index->from(Side::Compressor).value;
}

} // namespace

// Whose gap: a seal ring goes with the rotor until the rotor is in, then the housing has it (common practice,
// no source).
TEST(Carrier, TurbineSealRingRidesOnTheRotorUntilTheRotorIsIn) {
    const Frame frame = bench::smallFrame();
    Build build;
    build.rotor = Degrees{40.0};
    build.seatings = {bench::seatedAt("PR-1", 10.0)};
    const HousingClock before = housingClockOf(frame, build, seatOf(PartId{"PR-1"}));
    EXPECT_TRUE(before.onCarrier);
    EXPECT_EQ(before.carrier, PartId{"ROTOR"});
    EXPECT_DOUBLE_EQ(fromCompressor(before), 10.0);

    build.seatings.push_back(bench::seatedAt("ROTOR", 0.0));
    const HousingClock after = housingClockOf(frame, build, seatOf(PartId{"PR-1"}));
    EXPECT_FALSE(after.onCarrier);
    EXPECT_DOUBLE_EQ(fromCompressor(after), 10.0);
}

TEST(Carrier, TurningTheRotorLaterMovesNoSealRing) {
    const Frame frame = bench::smallFrame();
    Build build;
    build.seatings = {bench::seatedAt("PR-1", 10.0), bench::seatedAt("ROTOR", 0.0)};
    for (const double turn : {0.0, 90.0, 273.0}) {
        build.rotor = Degrees{turn};
        EXPECT_DOUBLE_EQ(fromCompressor(housingClockOf(frame, build, seatOf(PartId{"PR-1"}))), 10.0);
    }
}

TEST(Carrier, APlateOneHoleOffCarriesTheGapAlong) {
    const Frame frame = bench::smallFrame();
    Build build;
    build.stepsDone = {StepId{"S4"}};
    build.seatings = {bench::seatedAt("PR-P", 350.0), bench::seatedAt("PLATE", 60.0)};
    EXPECT_DOUBLE_EQ(fromCompressor(housingClockOf(frame, build, seatOf(PartId{"PR-P"}))), 50.0);
}

TEST(Carrier, APlateThatIsNotPlacedLeavesTheRuleOpen) {
    const Frame frame = bench::smallFrame();
    Build build;
    build.stepsDone = {StepId{"S4"}};
    build.seatings = {bench::seatedAt("PR-P", 350.0)};
    EXPECT_FALSE(housingClockOf(frame, build, seatOf(PartId{"PR-P"})).index);
    EXPECT_EQ(judge(frame, build, *frame.rule(RuleId{"PR-P.gap"})).state, RuleState::Open);
}

TEST(Carrier, AnEndlessChainIsNotFollowed) {
    Frame frame = bench::smallFrame();
    for (Seat& seat : frame.seats)
        if (seat.id == seatOf(PartId{"PLATE"}))
            seat.carriers = {Carrier{.part = PartId{"PLATE"}}};
    Build build;
    build.seatings = {bench::seatedAt("PLATE", 0.0)};
    EXPECT_FALSE(housingClockOf(frame, build, seatOf(PartId{"PLATE"})).index);
}

TEST(Carrier, AHousingInTheSheetNeedNotSayWhichWayItLooks) {
    Frame frame = bench::smallFrame();
    for (PartType& type : frame.types)
        for (Feature& feature : type.shape.features)
            if (feature.id == "F08")
                feature.offset = Degrees{225.0};
    Build build;
    build.seatings = {Seating{.part = frame.housing, .seat = seatOf(frame.housing), .home = true},
                      bench::seatedAt("SR-C", 225.0 - 35.8)};
    EXPECT_EQ(judge(frame, build, *frame.rule(RuleId{"SR-C.clear"})).state, RuleState::Broken);
    build.seatings.back() = bench::seatedAt("SR-C", 225.0 - 35.9);
    EXPECT_EQ(judge(frame, build, *frame.rule(RuleId{"SR-C.clear"})).state, RuleState::Holds);
}

} // namespace gapwise
