#include "models/build/reading_faults.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

/// Invented: a length, a step that is a difference, a plane that may lie either way, four gaps, an unbalance.
Frame smallFrame() {
    Frame frame;
    frame.id = FrameId{"small"};
    const auto quantity = [](const char* id, Unit unit = Unit::Millimetres) {
        return Quantity{.id = QuantityId{id}, .name = std::string{"name of "} + id, .unit = unit};
    };
    Quantity step = quantity("step");
    step.from = {Term{QuantityId{"a"}, 1}, Term{QuantityId{"p"}, -1}};
    Quantity tip = quantity("tip");
    tip.points = {"12:00", "3:00", "6:00", "9:00"};
    tip.fourPoint = FourPointPlan{};
    Quantity unbalance = quantity("U", Unit::GramMillimetres);
    unbalance.expectations = {Expectation{.work = "balanced"}, Expectation{.work = "balanced"},
                              Expectation{.work = "washed"}, Expectation{.renewed = {PartId{"P"}}}};
    frame.measurements = {
        Measurement{.id = MeasurementId{"M1"},
                    .name = "collar",
                    .methods = {Method{.id = "ball"}, Method{.id = "flat"}},
                    .quantities = {quantity("a"), quantity("p"), step}},
        Measurement{.id = MeasurementId{"M2"}, .name = "blades"},
        Measurement{.id = MeasurementId{"tip"}, .name = "tip", .quantities = {tip}},
        Measurement{.id = MeasurementId{"M3"}, .name = "unbalance", .quantities = {unbalance}}};
    frame.dimensions = {Dimension{.id = QuantityId{"a"}, .nominalMm = 3.5},
                        Dimension{.id = QuantityId{"p"}, .nominalMm = -0.2}};
    return frame;
}

Reading reading(const char* measurement, const char* quantity, std::vector<double> values) {
    return Reading{
        .measurement = measurement, .quantity = quantity, .values = std::move(values), .unit = "mm"};
}

/// The keys of all faults.
std::string keysOf(const Reading& reading) {
    std::string keys;
    for (const Fault& fault : faultsOf(smallFrame(), reading))
        keys += (keys.empty() ? "" : " ") + (fault.key.empty() ? "whole" : fault.key);
    return keys;
}

} // namespace

TEST(ReadingFaults, AUsualReadingHasNone) {
    EXPECT_EQ(keysOf(reading("M1", "a", {3.5, 3.501})), "");
    EXPECT_EQ(keysOf(reading("tip", "", {0.5, 0.4, 0.3, 0.4})), "");
    EXPECT_EQ(keysOf(reading("tip", "tip", {0.5, 0.4, 0.3, 0.4, 0.5, 0.4, 0.3, 0.4})), "") << "twice round";
}

TEST(ReadingFaults, NamesWhatTheFrameDoesNotHave) {
    EXPECT_EQ(keysOf(reading("M9", "a", {3.5})), "/measurement");
    EXPECT_EQ(keysOf(reading("M1", "", {3.5})), "whole");
    EXPECT_EQ(keysOf(reading("M1", "z", {3.5})), "/quantity");
    const std::vector<Fault> byEye = faultsOf(smallFrame(), reading("M2", "", {1.0}));
    ASSERT_EQ(byEye.size(), 1U);
    EXPECT_THAT(byEye[0].allowed, HasSubstr("judged by eye"));
}

TEST(ReadingFaults, ComplainsOfEachValueAtItsPlace) {
    EXPECT_EQ(keysOf(reading("M1", "a", {})), "/values");
    EXPECT_EQ(keysOf(reading("M1", "a", {3.5, std::nan(""), -0.001})), "/values/1 /values/2");
    EXPECT_EQ(keysOf(reading("M1", "a", {std::numeric_limits<double>::infinity()})), "/values/0");
    EXPECT_EQ(keysOf(reading("tip", "", {0.5, 0.4, 0.3})), "/values");
}

TEST(ReadingFaults, OnlyADifferenceOrAPlaneThatLiesEitherWayMayBeBelowZero) {
    EXPECT_EQ(keysOf(reading("M1", "p", {-0.2})), "");
    EXPECT_EQ(keysOf(reading("M1", "step", {-0.01})), "");
    EXPECT_EQ(keysOf(reading("M3", "U", {-1.0})), "/unit /values/0");
}

TEST(ReadingFaults, ComplainsOfUnitMethodDayAndTemperatureTogether) {
    Reading odd = reading("M1", "a", {3.5});
    odd.unit = "";
    odd.method = "eye";
    odd.on = "yesterday";
    odd.temperatureC = std::nan("");
    odd.gaugeTemperatureC = 401.0;
    EXPECT_EQ(keysOf(odd), "/unit /method /temperature_C /gauge_temperature_C /on");
}

TEST(ReadingFaults, WorkIsWhatExpectationsSpeakOf) {
    EXPECT_THAT(worksOf(smallFrame()), ElementsAre("balanced", "washed"));
    EXPECT_TRUE(knowsWork(smallFrame(), "washed"));
    EXPECT_FALSE(knowsWork(smallFrame(), ""));
    EXPECT_THAT(worksOf(Frame{}), IsEmpty());
}

} // namespace gapwise
