#include "models/torque/wrench.h"

#include "models/torque/units.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

namespace gapwise::test {

using ::testing::HasSubstr;

namespace {

constexpr double kNan = std::numeric_limits<double>::quiet_NaN();
constexpr double kInfinity = std::numeric_limits<double>::infinity();

double setting(double target, double length, double adapter, double angle) {
    return *wrenchSettingNm(target, {length, adapter, Degrees{angle}});
}

/// Where the errors of a refused adapter stand.
std::vector<std::string> refusedAt(double target, const Adapter& adapter) {
    std::vector<std::string> places;
    const Result<double> set = wrenchSettingNm(target, adapter);
    if (!set)
        for (const Error& error : set.errors())
            places.push_back(error.where);
    return places;
}

Adapter drawnAdapter() {
    return {*rc::gen::inRange(100, 1000) * 1.0, *rc::gen::inRange(0, 99) * 1.0,
            Degrees{*rc::gen::inRange(-1800, 1800) / 10.0}};
}

} // namespace

// Worked examples of field manuals and pages for torque wrenches (TT-09 to TT-12), reckoned (TT-15).
TEST(Adapters, AgreeWithPublishedExamples) {
    EXPECT_NEAR(setting(80, 40, 5, 0), 71.1, 0.05);
    EXPECT_NEAR(setting(80, 40, 5, 90), 80.0, 80.0 * 1e-12);
    EXPECT_NEAR(setting(10, 250, 30, 0), 8.929, 0.001);
    const auto poundFeet = [](double value, double lengthIn, double adapterIn) {
        const double target = toNewtonMetres(value, TorqueUnit::PoundForceFoot);
        return fromNewtonMetres(setting(target, lengthIn * 25.4, adapterIn * 25.4, 0),
                                TorqueUnit::PoundForceFoot);
    };
    EXPECT_NEAR(poundFeet(50, 16, 2), 44.44, 0.01);
    EXPECT_NEAR(poundFeet(100, 12, 9), 57.14, 0.01);
}

// Invented figures, worked by hand from M·L/(L + E·cos α).
TEST(Adapters, AgreeWithHandWorkedSettings) {
    EXPECT_NEAR(setting(24, 300, 45, 0), 20.87, 0.005);
    EXPECT_NEAR(setting(24, 300, 45, 45), 21.70, 0.005);
    EXPECT_NEAR(setting(24, 300, 45, 90), 24.00, 0.005);
    EXPECT_NEAR(*appliedTorqueNm(24, {300, 45, Degrees{0.0}}), 27.6, 0.05);
}

// A socket extension in line needs no correction (TT-17).
TEST(Adapters, AnExtensionInLineChangesNothing) {
    EXPECT_EQ(setting(24, 300, 0, 0), 24.0);
    EXPECT_EQ(setting(24, 300, 0, 137), 24.0);
}

// TT-16: θ and −θ alike.
RC_GTEST_PROP(Adapters, EitherSideOfTheWrenchIsAlike, ()) {
    const Adapter adapter = drawnAdapter();
    const Adapter other{adapter.wrenchMm, adapter.adapterMm, -adapter.angle};
    RC_ASSERT(*wrenchSettingNm(24.0, adapter) == *wrenchSettingNm(24.0, other));
}

RC_GTEST_PROP(Adapters, TheSettingAppliesTheTarget, ()) {
    const Adapter adapter = drawnAdapter();
    const double target = *rc::gen::inRange(1, 50'000) / 100.0;
    RC_ASSERT(std::abs(*appliedTorqueNm(*wrenchSettingNm(target, adapter), adapter) / target - 1.0) < 1e-12);
}

RC_GTEST_PROP(Adapters, StraightOutAsksForTheLowestSetting, ()) {
    const Adapter adapter = drawnAdapter();
    const Adapter straight{adapter.wrenchMm, adapter.adapterMm, Degrees{0.0}};
    RC_ASSERT(*wrenchSettingNm(24.0, straight) <= *wrenchSettingNm(24.0, adapter));
}

// TT-16: no lever is left.
TEST(Adapters, AFoldedBackAdapterAsLongAsTheWrenchHasNoSolution) {
    EXPECT_THAT(refusedAt(24, {45, 45, Degrees{180.0}}), ::testing::ElementsAre("adapter"));
    EXPECT_THAT(refusedAt(24, {45, 300, Degrees{180.0}}), ::testing::ElementsAre("adapter"));
    EXPECT_THAT(refusedAt(24, {50, 100, Degrees{-120.0}}), ::testing::ElementsAre("adapter"));
    EXPECT_NEAR(setting(24, 300, 45, 180), 24.0 * 300 / 255, 1e-9);
    const Result<double> none = wrenchSettingNm(24, {45, 45, Degrees{180.0}});
    EXPECT_THAT(none.errors().front().found, HasSubstr("45 mm folded back at 180° over a wrench of 45 mm"));
    EXPECT_THAT(none.errors().front().allowed, HasSubstr("length + adapter × cos(angle) above 0"));
}

TEST(Adapters, SayEveryBadNumberAtItsPlace) {
    EXPECT_THAT(refusedAt(0, {300, 45, {}}), ::testing::ElementsAre("target"));
    EXPECT_THAT(refusedAt(-24, {0, -1, Degrees{kNan}}),
                ::testing::ElementsAre("target", "length", "adapter", "angle"));
    EXPECT_THAT(refusedAt(kNan, {kInfinity, kNan, Degrees{kInfinity}}),
                ::testing::ElementsAre("target", "length", "adapter", "angle"));
    EXPECT_FALSE(appliedTorqueNm(-1.0, {300, 45, {}}));
    EXPECT_EQ(appliedTorqueNm(-1.0, {300, 45, {}}).errors().front().where, "setting");
}

// ISO 6789 (TT-01): the maximum of the tool decides.
TEST(Wrenches, KeepWithinFourPercentAboveTenNewtonMetresOfMaximum) {
    EXPECT_EQ(permissibleDeviation(10.0), 0.06);
    EXPECT_EQ(permissibleDeviation(10.1), 0.04);
    EXPECT_EQ(permissibleDeviation(200.0), 0.04);
    // A wrench up to 25 N·m stays in its class when it is set to 8.
    EXPECT_NEAR(useOfWrench(8.0, {.mostNm = 25.0})->deviationNm, 0.32, 1e-12);
    EXPECT_NEAR(useOfWrench(8.0, {.mostNm = 10.0})->deviationNm, 0.48, 1e-12);
}

// ISO 6789 (TT-04).
TEST(Wrenches, AreCheckedAtTwentySixtyAndHundredPercent) {
    EXPECT_THAT(checkPointsNm(50.0), ::testing::ElementsAre(10.0, 30.0, 50.0));
    EXPECT_TRUE(useOfWrench(9.9, {.mostNm = 50.0})->belowCheckPoints);
    EXPECT_FALSE(useOfWrench(10.0, {.mostNm = 50.0})->belowCheckPoints);
}

// ISO 6789-1:2017 (TT-06): ±4 % at 20 N·m is 0.8; a quarter of it is 0.2.
TEST(Wrenches, ShowStepsOfAQuarterOfTheirDeviation) {
    EXPECT_NEAR(coarsestResolutionNm(20.0, 100.0), 0.2, 1e-12);
    EXPECT_NEAR(coarsestResolutionNm(4.0, 10.0), 0.06, 1e-12);
}

TEST(Wrenches, RefuseWhatTheyCannotBeSetTo) {
    const WrenchRange range{.leastNm = 5.0, .mostNm = 25.0};
    EXPECT_TRUE(useOfWrench(5.0, range));
    EXPECT_TRUE(useOfWrench(25.0, range));
    for (const double outside : {4.99, 25.01, kNan}) {
        const Result<WrenchUse> use = useOfWrench(outside, range);
        ASSERT_FALSE(use) << outside;
        EXPECT_EQ(use.errors().front().where, "setting");
        EXPECT_THAT(use.errors().front().allowed, HasSubstr("5.00 N·m to 25.0 N·m"));
    }
    EXPECT_TRUE(useOfWrench(0.5, {.mostNm = 25.0}));
    EXPECT_THAT(useOfWrench(26.0, {.mostNm = 25.0}).errors().front().allowed, HasSubstr("up to 25.0 N·m"));
}

TEST(Wrenches, HaveARangeInOrder) {
    EXPECT_TRUE(rangeErrors({}).empty());
    EXPECT_TRUE(rangeErrors({.leastNm = 5.0, .mostNm = 25.0}).empty());
    EXPECT_EQ(rangeErrors({.leastNm = 25.0, .mostNm = 5.0}).front().where, "wrench-min");
    EXPECT_EQ(rangeErrors({.leastNm = 5.0, .mostNm = 5.0}).front().where, "wrench-min");
    EXPECT_EQ(rangeErrors({.leastNm = 5.0}).front().where, "wrench-min");
    EXPECT_EQ(rangeErrors({.mostNm = -5.0}).front().where, "wrench-max");
    EXPECT_EQ(rangeErrors({.mostNm = kNan}).front().where, "wrench-max");
}

} // namespace gapwise::test
