#include "models/check/check.h"
#include "models/frame/allowed.h"
#include "models/frame/read_frame.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace gapwise {

namespace {

using testing::ElementsAre;

DataFolder bundled() {
    return DataFolder{GAPWISE_TEST_SHARE};
}

Frame bundledFrame(const char* id) {
    Result<Frame> frame = readFrame(bundled(), id);
    if (!frame) {
        for (const Error& error : frame.errors())
            ADD_FAILURE() << error.where << ": " << error.found << "; allowed: " << error.allowed;
        return {};
    }
    return std::move(frame.value());
}

/// Stored clock (from the compressor side) and tolerance of a rule that prints a clock.
struct Target {
    double theta = 0.0;
    double tolerance = 0.0;
    bool operator==(const Target&) const = default;
};

Target targetIn(const Frame& frame, const char* rule) {
    const Rule* found = frame.rule(RuleId{rule});
    const PrintedClock* printed = found ? printedClockOf(*found) : nullptr;
    if (!printed) {
        ADD_FAILURE() << rule << " is not there";
        return {};
    }
    return {targetOf(*printed).from(Side::Compressor).value, printed->tolerance.value};
}

double exclusionIn(const Frame& frame, const char* rule) {
    const Rule* found = frame.rule(RuleId{rule});
    const auto* clear = found ? std::get_if<GapClearOfRule>(&found->demand) : nullptr;
    const auto needed =
        clear ? clearanceNeeded(frame, *clear, *frame.typeOf(clear->part)) : std::optional<Degrees>{};
    return needed ? needed->value : -1.0;
}

std::size_t placeOf(const Frame& frame, const char* step) {
    return frame.stepIndex(StepId{step}).value_or(frame.steps.size());
}

} // namespace

// All numbers of the bundled frames are invented; the stored clocks below are written out by hand from the
// words of the rules (left from the turbine side is 90, right is 270, and so on).
TEST(BundledFrames, ThereAreThree) {
    EXPECT_THAT(bundledFrames(bundled()), ElementsAre("alder-72", "alder-72-pinned", "birch-150"));
}

TEST(BundledFrames, ArePracticeFramesWithTheirSisters) {
    for (const char* id : {"alder-72", "alder-72-pinned", "birch-150"})
        EXPECT_EQ(bundledFrame(id).purpose, Purpose::Practice) << id;
    EXPECT_EQ(bundledFrame("alder-72").sister, FrameId{"alder-72-pinned"});
    EXPECT_EQ(bundledFrame("alder-72-pinned").sister, FrameId{"alder-72"});
    EXPECT_EQ(bundledFrame("birch-150").sister, std::nullopt);
}

TEST(BundledFrames, RulesOfAlderPointWhereTheirWordsSay) {
    const Frame frame = bundledFrame("alder-72");
    EXPECT_EQ(targetIn(frame, "SR-TI.gap"), (Target{90.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "SR-TO.gap"), (Target{270.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "SR-CI.gap"), (Target{270.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "SR-CO.gap"), (Target{90.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "PR-T1.gap"), (Target{0.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "PR-C1.gap"), (Target{0.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "DEFLECTOR.opening"), (Target{180.0, 30.0}));
    EXPECT_EQ(targetIn(frame, "PLATE.arrow"), (Target{0.0, 3.0}));
}

TEST(BundledFrames, RulesOfThePinnedSisterPointWhereTheirWordsSay) {
    const Frame frame = bundledFrame("alder-72-pinned");
    EXPECT_EQ(targetIn(frame, "SR-TO.gap"), (Target{300.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "SR-CO.gap"), (Target{150.0, 20.0}));
    EXPECT_EQ(frame.rule(RuleId{"SR-TI.gap"}), nullptr);
    EXPECT_EQ(frame.step(StepId{"S07"}), nullptr);
}

TEST(BundledFrames, RulesOfBirchPointWhereTheirWordsSay) {
    const Frame frame = bundledFrame("birch-150");
    EXPECT_EQ(targetIn(frame, "SR-TO.gap"), (Target{240.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "SR-CO.gap"), (Target{120.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "PR-T1.gap"), (Target{90.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "PR-T2.gap"), (Target{270.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "PR-C1.gap"), (Target{270.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "PR-C2.gap"), (Target{90.0, 20.0}));
    EXPECT_EQ(targetIn(frame, "PR-C2.drain"), (Target{0.0, 135.0}));
}

// asin(width / bore) + asin(gap / bore) + margin, worked out by hand to a tenth of a degree.
TEST(BundledFrames, GapsKeepClearOfTheSlotsThatCrossTheirGrooves) {
    const Frame alder = bundledFrame("alder-72");
    EXPECT_NEAR(exclusionIn(alder, "SR-CO.clear-F06"), 32.8, 0.05);
    for (const char* rule : {"SR-CO.clear-F08", "SR-CI.clear-F09", "SR-TI.clear-F10", "SR-TO.clear-F11"})
        EXPECT_NEAR(exclusionIn(alder, rule), 35.9, 0.05) << rule;
    const Frame birch = bundledFrame("birch-150");
    EXPECT_NEAR(exclusionIn(birch, "SR-CO.clear-F06"), 28.2, 0.05);
    EXPECT_NEAR(exclusionIn(birch, "SR-TO.clear-F11"), 31.2, 0.05);
}

TEST(BundledFrames, TheSistersWindowsOfTheCompressorRingDoNotMeet) {
    const PartId ring{"SR-CO"};
    const Arcs floating = allowedIndexOf(bundledFrame("alder-72"), ring);
    const Arcs pinned = allowedIndexOf(bundledFrame("alder-72-pinned"), ring);
    EXPECT_TRUE(floating.intersectedWith(pinned).empty());
}

TEST(BundledFrames, StepsStandInALegitimateOrder) {
    for (const char* id : {"alder-72", "alder-72-pinned", "birch-150"}) {
        const Frame frame = bundledFrame(id);
        for (const Step& step : frame.steps)
            for (const Precedence& before : step.after)
                EXPECT_LT(placeOf(frame, before.step.text.c_str()), placeOf(frame, step.id.text.c_str()))
                    << id << ": " << before.step.text << " before " << step.id.text;
    }
}

TEST(BundledFrames, BirchTakesItsTurbineCasingEarlyAndAlderLate) {
    const Frame birch = bundledFrame("birch-150");
    EXPECT_LT(placeOf(birch, "S17"), placeOf(birch, "S35"));
    EXPECT_LT(placeOf(birch, "S35"), placeOf(birch, "S18"));
    const Frame alder = bundledFrame("alder-72");
    EXPECT_LT(placeOf(alder, "S33"), placeOf(alder, "S35"));
}

TEST(BundledFrames, EveryPartIsPlacedOnceAndEverySeatHiddenAtMostOnce) {
    for (const char* id : {"alder-72", "alder-72-pinned", "birch-150"}) {
        const Frame frame = bundledFrame(id);
        std::vector<PartId> placed;
        std::vector<SeatId> hidden;
        for (const Step& step : frame.steps) {
            placed.insert(placed.end(), step.places.begin(), step.places.end());
            hidden.insert(hidden.end(), step.hides.begin(), step.hides.end());
        }
        std::vector<PartId> parts;
        for (const Part& part : frame.parts)
            parts.push_back(part.id);
        EXPECT_THAT(placed, testing::UnorderedElementsAreArray(parts)) << id;
        std::ranges::sort(hidden);
        EXPECT_EQ(std::ranges::adjacent_find(hidden), hidden.end()) << id;
    }
}

} // namespace gapwise
