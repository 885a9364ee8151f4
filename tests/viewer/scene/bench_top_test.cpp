#include "viewer/scene/scene.h"

#include "small_cartridge.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

Scene standingOn(const Pose& axes) {
    Scene scene = sceneOf(small::frame(), {}, small::meshes(), {});
    scene.ground = {.axes = axes, .benchTop = true};
    return scene;
}

constexpr Pose kTurbineDown{.xAxis = {1.0, 0.0, 0.0}, .yAxis = {0.0, 0.0, 1.0}, .zAxis = {0.0, -1.0, 0.0}};

} // namespace

TEST(BenchTop, LiesUnderWhateverIsLowestThere) {
    for (const Pose& axes : {Pose{}, kTurbineDown}) {
        const Scene scene = standingOn(axes);
        const auto top = benchTopOf(scene);
        ASSERT_TRUE(top);
        double lowest = 1e9;
        for (const Vec3& point : scene.points())
            lowest = std::min(lowest, dot(point, axes.yAxis));
        EXPECT_NEAR(dot(top->middle, axes.yAxis), lowest, 1e-9);
    }
}

TEST(BenchTop, IsWiderThanWhatStandsOnIt) {
    const Scene scene = standingOn(kTurbineDown);
    const auto top = benchTopOf(scene);
    ASSERT_TRUE(top);
    for (const Vec3& point : scene.points()) {
        EXPECT_LT(std::abs(dot(point - top->middle, kTurbineDown.xAxis)), top->halfWidth);
        EXPECT_LT(std::abs(dot(point - top->middle, kTurbineDown.zAxis)), top->halfDepth);
    }
}

TEST(BenchTop, NothingStandsOnNothing) {
    EXPECT_FALSE(benchTopOf(Scene{}));
}

TEST(BenchTop, TheGroundTellsAPoseInItsOwnAxes) {
    const Pose told = inGroundAxes({.axes = kTurbineDown}, Pose{.shift = {1.0, 2.0, 3.0}});
    EXPECT_EQ(told.shift, (Vec3{1.0, 3.0, -2.0}));
}

} // namespace gapwise
