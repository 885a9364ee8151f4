#include "models/frame/read_frame.h"

#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

Frame bundledFrame(const char* id) {
    Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, id, Validation::Full);
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return std::move(frame).value();
}

/// What the invented sheet prints of one fastener.
struct Printed {
    const char* id;
    const char* thread;
    double lengthMm;
    double torqueNm;
    Locking locking;
    std::vector<double> stages;
    std::vector<int> pattern;
    int groups;
};

constexpr const char* kSmallFrames[] = {"alder-72", "alder-72-pinned"};
const std::vector<int> kStar6{1, 4, 2, 5, 3, 6};
const std::vector<int> kStar8{1, 5, 3, 7, 2, 6, 4, 8};
const std::vector<int> kStar12{1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12};

// All invented, typed from the table of fasteners; star patterns by common practice.
const std::vector<Printed> kSmall{
    {"T1", "M5", 12, 5, Locking::ThreadLock, {60, 100}, {1, 2, 3}, 1},
    {"T2", "M6", 20, 9, Locking::SpringWasher, {45, 100}, kStar6, 1},
    {"T3", "M8x1-LH", 0, 14, Locking::None, {}, {1}, 1},
    {"T4", "M8", 25, 22, Locking::SpringWasher, {45, 100}, kStar8, 1},
    {"T5", "M8", 30, 20, Locking::Tab, {40, 70, 100}, kStar8, 1},
    {"T6", "M8", 0, 22, Locking::SpringWasher, {50, 100}, {1, 2}, 2},
};
const std::vector<Printed> kLarge{
    {"T1", "M8", 20, 20, Locking::ThreadLockAndTab, {60, 100}, {1, 3, 2, 4}, 1},
    {"T2", "M8", 25, 22, Locking::SpringWasher, {45, 100}, kStar8, 1},
    {"T3", "M16x1.5-LH", 0, 110, Locking::None, {}, {1}, 1},
    {"T4", "M10", 35, 45, Locking::SpringWasher, {45, 100}, kStar12, 1},
    {"T5", "M12", 45, 65, Locking::Tab, {40, 70, 100}, kStar12, 1},
    {"T6", "M10", 0, 42, Locking::SpringWasher, {50, 100}, {1, 3, 2, 4}, 2},
};

void expectPrinted(const Frame& frame, const std::vector<Printed>& sheet) {
    ASSERT_EQ(frame.fasteners.size(), sheet.size());
    for (const Printed& printed : sheet) {
        SCOPED_TRACE(frame.id.text + " " + printed.id);
        const Fastener* fastener = frame.fastener(FastenerId{printed.id});
        ASSERT_TRUE(fastener && fastener->plan);
        const TorquePlan& plan = *fastener->plan;
        EXPECT_EQ(plan.thread, printed.thread);
        EXPECT_EQ(plan.lengthMm, printed.lengthMm);
        EXPECT_EQ(plan.torqueNm, printed.torqueNm);
        EXPECT_EQ(plan.locking, printed.locking);
        EXPECT_EQ(plan.stagesPercent, printed.stages);
        EXPECT_EQ(plan.pattern, printed.pattern);
        EXPECT_EQ(plan.groups.size(), static_cast<std::size_t>(printed.groups));
        EXPECT_EQ(plan.lubricatedValue, fastener->id.text == "T5");
        EXPECT_EQ(plan.checkPass, fastener->id.text == "T4");
        EXPECT_THAT(plan.source, HasSubstr("invented"));
        EXPECT_FALSE(plan.lubrication.empty());
        EXPECT_FALSE(plan.check.empty());
    }
}

} // namespace

TEST(BundledTorque, TheSmallFramesHaveTheirSheet) {
    for (const char* id : kSmallFrames)
        expectPrinted(bundledFrame(id), kSmall);
}

TEST(BundledTorque, TheLargeFrameHasItsSheet) {
    expectPrinted(bundledFrame("birch-150"), kLarge);
}

TEST(BundledTorque, FlangesOfOilInletAndDrainAreTwoGroups) {
    for (const auto& [id, count] :
         std::vector<std::pair<const char*, int>>{{"alder-72", 2}, {"birch-150", 4}}) {
        const std::vector<ScrewGroup> groups = bundledFrame(id).fastener(FastenerId{"T6"})->plan->groups;
        ASSERT_EQ(groups.size(), 2U);
        EXPECT_EQ(groups[0].name, "oil inlet");
        EXPECT_EQ(groups[1].name, "oil drain");
        EXPECT_EQ(groups[0].count, count);
        EXPECT_EQ(groups[1].count, count);
    }
}

// Only the shaft nut is left-hand, and only it is run down.
TEST(BundledTorque, OnlyTheShaftNutIsRunDown) {
    for (const char* id : {"alder-72", "alder-72-pinned", "birch-150"})
        for (const Fastener& fastener : bundledFrame(id).fasteners) {
            const bool nut = fastener.id.text == "T3";
            EXPECT_EQ(fastener.plan->runDown.has_value(), nut) << id << fastener.id.text;
            EXPECT_EQ(fastener.plan->nutLine.has_value(), nut) << id << fastener.id.text;
            EXPECT_EQ(fastener.tightensClockwise, !nut) << id << fastener.id.text;
        }
}

// The simple spring model of the sheet: F = T/(K d), angle = (F - F snug)/stiffness/pitch. All invented,
// worked out by hand: 10.9 kN, 218 MPa, 18.9 degrees; 43.0 kN, 214 MPa, 26.8 degrees.
TEST(BundledTorque, TheNutsNumbersBelongTogether) {
    struct Nut {
        const char* frame;
        double diameterMm, pitchMm, clampKn, stressMpa, angleDeg;
    };
    for (const Nut& nut :
         {Nut{"alder-72", 8, 1, 10.9, 218, 18.9}, Nut{"birch-150", 16, 1.5, 43.0, 214, 26.8}}) {
        const Frame frame = bundledFrame(nut.frame);
        const TorquePlan& plan = *frame.fastener(FastenerId{"T3"})->plan;
        const RunDown& run = *plan.runDown;
        const double perNm = 1.0 / (run.torqueFactor * nut.diameterMm); // kN
        const double clamp = plan.torqueNm * perNm;
        EXPECT_NEAR(clamp, nut.clampKn, 0.05) << nut.frame;
        const double area = std::numbers::pi / 4.0 * run.stemDiameterMm * run.stemDiameterMm;
        EXPECT_NEAR(clamp * 1000.0 / area, nut.stressMpa, 0.5) << nut.frame;
        const double angle =
            (plan.torqueNm - run.snugNm) * perNm / run.stiffnessKnPerMm / nut.pitchMm * 360.0;
        EXPECT_NEAR(angle, nut.angleDeg, 0.05) << nut.frame;
        EXPECT_LT(run.leastAngle.value, angle);
        EXPECT_GT(run.mostAngle.value, angle);
    }
}

TEST(BundledTorque, TheNutLineIsJudgedAsItsSheetSays) {
    const Frame small = bundledFrame("alder-72");
    const Frame large = bundledFrame("birch-150");
    const NutLineLimits& ofSmall = *small.fastener(FastenerId{"T3"})->plan->nutLine;
    const NutLineLimits& ofLarge = *large.fastener(FastenerId{"T3"})->plan->nutLine;
    EXPECT_EQ(ofSmall.agrees.value, 8.0);
    EXPECT_EQ(ofSmall.small.value, 25.0);
    EXPECT_EQ(ofLarge.agrees.value, 6.0);
    EXPECT_EQ(ofLarge.small.value, 20.0);
    EXPECT_THAT(ofSmall.stack,
                ElementsAre(PartId{"COLLAR-A"}, PartId{"SPACER"}, PartId{"COLLAR-B"}, PartId{"WHEEL"}));
}

// The torque factor of the sheet agrees with the long form within three per cent (Motosh; common practice).
TEST(BundledTorque, FrictionOfTheNutAgreesWithItsTorqueFactor) {
    for (const auto& [id, diameter, pitch] :
         std::vector<std::tuple<const char*, double, double>>{{"alder-72", 8, 1}, {"birch-150", 16, 1.5}}) {
        const Frame frame = bundledFrame(id);
        const TorquePlan& plan = *frame.fastener(FastenerId{"T3"})->plan;
        const double flank = diameter - 0.64952 * pitch;
        const double perForce = pitch / (2.0 * std::numbers::pi) +
                                plan.frictionThread * flank / (2.0 * std::cos(std::numbers::pi / 6.0)) +
                                plan.frictionHead * plan.headDiameterMm / 2.0;
        EXPECT_NEAR(perForce / diameter, plan.runDown->torqueFactor, 0.03 * 0.16) << id;
    }
}

TEST(BundledTorque, EveryWrenchThatAStepNamesReachesItsStages) {
    for (const char* id : {"alder-72", "alder-72-pinned", "birch-150"}) {
        const Frame frame = bundledFrame(id);
        for (const Fastener& fastener : frame.fasteners) {
            const TorquePlan& plan = *fastener.plan;
            const std::vector<std::string>& tools = frame.step(fastener.step)->tools;
            const auto reaches = [&](double torqueNm) {
                const auto has = [&](const char* tool) {
                    return std::ranges::find(tools, tool) != tools.end();
                };
                return (torqueNm >= 2.0 && torqueNm <= 25.0 && has("torque wrench, 2 to 25 N·m")) ||
                       (torqueNm >= 20.0 && torqueNm <= 120.0 && has("torque wrench, 20 to 120 N·m"));
            };
            for (const double percent : plan.stagesPercent)
                EXPECT_TRUE(reaches(plan.torqueNm * percent / 100.0)) << id << " " << fastener.id.text;
            EXPECT_TRUE(reaches(plan.torqueNm)) << id << " " << fastener.id.text;
            if (plan.runDown) {
                EXPECT_TRUE(reaches(plan.runDown->seatNm));
                EXPECT_TRUE(reaches(plan.runDown->snugNm));
            }
        }
    }
}

TEST(BundledTorque, TheRestsAreTheFlangesOfTheHousing) {
    for (const auto& [id, turbineUp, compressorUp] : std::vector<std::tuple<const char*, double, double>>{
             {"alder-72", 8.0, -73.0}, {"alder-72-pinned", 8.0, -73.0}, {"birch-150", 14.0, -141.2}}) {
        const std::vector<Rest> rests = bundledFrame(id).rests;
        ASSERT_EQ(rests.size(), 2U);
        EXPECT_EQ(rests[0].up, Side::Turbine);
        EXPECT_EQ(rests[0].faceMm, turbineUp);
        EXPECT_EQ(rests[1].up, Side::Compressor);
        EXPECT_EQ(rests[1].faceMm, compressorUp);
        EXPECT_EQ(rests[0].clearanceMm, 20.0);
    }
}

} // namespace gapwise
