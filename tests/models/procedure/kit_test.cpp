#include "models/procedure/kit.h"

#include "geometry/shape/inside.h"
#include "models/frame/read_frame.h"
#include "tests/support/print_error.h"
#include "tests/support/tightened_frame.h"

#include <gmock/gmock.h>

#include <cmath>
#include <map>
#include <numbers>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::IsSupersetOf;

Frame bundledFrame(const char* id) {
    Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, id);
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return std::move(frame).value();
}

std::map<std::string, int> quantitiesOf(const char* id) {
    std::map<std::string, int> quantities;
    for (const PickItem& item : pickListOf(bundledFrame(id)))
        quantities[item.name] += item.quantity;
    return quantities;
}

/// Whether all of a ring at this station is material, seen at a few clocks of a circle of radius r.
bool isMaterialAt(const Frame& frame, double r, double z) {
    for (const double degrees : {10.0, 100.0, 200.0, 290.0}) {
        const double angle = degrees * std::numbers::pi / 180.0;
        if (!isInside(frame.typeOf(frame.housing)->shape, Vec3{r * std::cos(angle), r * std::sin(angle), z}))
            return false;
    }
    return true;
}

} // namespace

// Invented numbers, added up by hand from the sheets of the three frames.
TEST(PickList, HasEveryConsumableInItsQuantity) {
    const std::map<std::string, int> small = quantitiesOf("alder-72");
    EXPECT_EQ(small.at("snap ring"), 4);
    EXPECT_EQ(small.at("floating ring bearing"), 2);
    EXPECT_EQ(small.at("turbine seal ring"), 1);
    EXPECT_EQ(small.at("compressor seal ring"), 1);
    EXPECT_EQ(small.at("thrust bearing"), 1);
    EXPECT_EQ(small.at("thrust screw M5×12"), 3);
    EXPECT_EQ(small.at("O-ring of the seal plate"), 1);
    const std::map<std::string, int> pinned = quantitiesOf("alder-72-pinned");
    EXPECT_EQ(pinned.at("snap ring"), 2);
    EXPECT_EQ(pinned.at("pinned bush"), 2);
    const std::map<std::string, int> large = quantitiesOf("birch-150");
    EXPECT_EQ(large.at("turbine seal ring"), 2);
    EXPECT_EQ(large.at("pinned bush, letter T"), 1);
    EXPECT_EQ(large.at("heat-shield gasket"), 1);
}

// Six M6, eight M8 of the cover and two flanges of two M8; eight M8, twelve M10 and two flanges of four M10.
TEST(PickList, HasTheLockingElementsOfTheFasteners) {
    const std::map<std::string, int> small = quantitiesOf("alder-72");
    EXPECT_EQ(small.at("spring washer M6"), 6);
    EXPECT_EQ(small.at("spring washer M8"), 12);
    EXPECT_EQ(small.at("tab plate of the turbine housing screws"), 4);
    EXPECT_EQ(small.at("thread-lock, bottle"), 1);
    const std::map<std::string, int> large = quantitiesOf("birch-150");
    EXPECT_EQ(large.at("spring washer M8"), 8);
    EXPECT_EQ(large.at("spring washer M10"), 20);
    EXPECT_EQ(large.at("tab plate of the turbine housing screws"), 6);
    EXPECT_EQ(large.at("tab plate of the thrust screws"), 4);
}

TEST(PickList, NamesEachItemOnceWithItsSteps) {
    const std::vector<PickItem> items = pickListOf(bundledFrame("alder-72"));
    std::map<std::string, int> seen;
    for (const PickItem& item : items) {
        EXPECT_EQ(++seen[item.name], 1) << item.name;
        EXPECT_GT(item.quantity, 0) << item.name;
        EXPECT_FALSE(item.steps.empty()) << item.name;
    }
    const auto rings = std::ranges::find(items, "snap ring", &PickItem::name);
    ASSERT_NE(rings, items.end());
    EXPECT_THAT(rings->steps, ElementsAre(StepId{"S07"}, StepId{"S09"}, StepId{"S11"}, StepId{"S13"}));
}

TEST(PickList, CountsScrewsWhereNoLockingElementIsDrawn) {
    const Frame frame = tightenedFrame().read().value();
    const std::vector<PickItem> items = pickListOf(frame);
    ASSERT_EQ(items.size(), 1U);
    EXPECT_EQ(items[0].name, "spring washer M5");
    EXPECT_EQ(items[0].quantity, 8);
    EXPECT_THAT(items[0].steps, ElementsAre(StepId{"S2"}));
}

TEST(Gauges, AreNamedOnceEach) {
    for (const char* id : {"alder-72", "alder-72-pinned", "birch-150"}) {
        const Frame frame = bundledFrame(id);
        std::map<std::string, int> seen;
        std::size_t measurements = 0;
        for (const GaugeItem& gauge : gaugesOf(frame)) {
            EXPECT_EQ(++seen[gauge.instrument], 1) << gauge.instrument;
            measurements += gauge.measurements.size();
        }
        EXPECT_EQ(measurements + 1, frame.measurements.size()) << id; // All but the thread, judged by feel.
    }
}

TEST(Tools, StandInTheOrderOfFirstUse) {
    const std::vector<std::string> tools = toolsOf(bundledFrame("birch-150"));
    EXPECT_THAT(tools, IsSupersetOf({"torque wrench, 2 to 25 N·m", "torque wrench, 20 to 120 N·m",
                                     "retaining strap or plate", "guide pins"}));
    std::map<std::string, int> seen;
    for (const std::string& tool : tools)
        EXPECT_EQ(++seen[tool], 1) << tool;
    EXPECT_EQ(tools.front(), bundledFrame("birch-150").steps.front().tools.front());
}

// Invented stations, added up by hand: shaft end 57.00 less the flange 8.00 and 20 free; 111.30 less 14.00
// and 20; turbine nose 118.00 less 73.00 and 20; 236.00 less 141.20 and 20.
TEST(LeastBlock, ClearsWhatReachesThrough) {
    for (const char* id : {"alder-72", "alder-72-pinned"}) {
        EXPECT_NEAR(leastBlockMm(bundledFrame(id), Side::Turbine).value(), 69.0, 1e-9) << id;
        EXPECT_NEAR(leastBlockMm(bundledFrame(id), Side::Compressor).value(), 65.0, 1e-9) << id;
    }
    EXPECT_NEAR(leastBlockMm(bundledFrame("birch-150"), Side::Turbine).value(), 117.3, 1e-9);
    EXPECT_NEAR(leastBlockMm(bundledFrame("birch-150"), Side::Compressor).value(), 114.8, 1e-9);
}

TEST(LeastBlock, FollowsTheShapeOfTheRotor) {
    Frame frame = bundledFrame("alder-72");
    for (PartType& type : frame.types)
        if (type.id == frame.part(frame.rotor)->type)
            type.shape.rings.front().z.to += 3.5;
    EXPECT_NEAR(leastBlockMm(frame, Side::Turbine).value(), 72.5, 1e-9);
}

TEST(LeastBlock, NeedsARestForThatEnd) {
    Frame frame = bundledFrame("alder-72");
    frame.rests.pop_back();
    EXPECT_TRUE(leastBlockMm(frame, Side::Turbine));
    EXPECT_FALSE(leastBlockMm(frame, Side::Compressor));
}

// The piece rests on metal: just inside the face there is a ring of it, just outside nothing.
TEST(LeastBlock, TheRestIsAFaceOfTheHousing) {
    struct Face {
        const char* frame;
        double turbineUpRadius;    ///< On the compressor flange.
        double compressorUpRadius; ///< On the turbine flange, outside the heat shield's seat.
    };
    for (const Face& face : {Face{"alder-72", 41.0, 45.0}, Face{"alder-72-pinned", 41.0, 45.0},
                             Face{"birch-150", 84.0, 115.0}}) {
        const Frame frame = bundledFrame(face.frame);
        for (const Rest& rest : frame.rests) {
            const bool turbineUp = rest.up == Side::Turbine;
            const double r = turbineUp ? face.turbineUpRadius : face.compressorUpRadius;
            const double outward = turbineUp ? 1.0 : -1.0;
            EXPECT_TRUE(isMaterialAt(frame, r, rest.faceMm - 0.01 * outward)) << face.frame;
            EXPECT_FALSE(isMaterialAt(frame, r, rest.faceMm + 0.01 * outward)) << face.frame;
        }
    }
}

TEST(Kit, OfAFrameThatSaysNothingIsEmpty) {
    const Frame frame = ChangedFrame{}.read().value();
    EXPECT_THAT(pickListOf(frame), IsEmpty());
    EXPECT_THAT(gaugesOf(frame), IsEmpty());
    EXPECT_THAT(toolsOf(frame), IsEmpty());
    EXPECT_FALSE(leastBlockMm(frame, Side::Turbine));
}

} // namespace gapwise
