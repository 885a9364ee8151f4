#include "viewer/window/glide.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

constexpr double kLongAfter = 1000.0;

Standpoint looking(LookKind kind) {
    return {.kind = kind};
}

double alike(const Stance& a, const Stance& b) {
    return dot(a.camera.forward(), b.camera.forward());
}

} // namespace

TEST(Glide, TheFirstLookIsThereAtOnce) {
    Glide glide;
    const Standpoint beside = looking(LookKind::Beside);
    const Stance at = glide.at({.standpoint = beside, .attitude = {}, .seconds = 5.0});
    EXPECT_FALSE(glide.moving());
    EXPECT_NEAR(alike(at, stanceOf(beside, {})), 1.0, 1e-12);
}

TEST(Glide, AnotherLookIsReachedAfterAWayBetween) {
    Glide glide;
    const Standpoint beside = looking(LookKind::Beside);
    const Standpoint end = looking(LookKind::FromCompressor);
    glide.at({.standpoint = beside, .attitude = {}, .seconds = 1.0});
    const Stance begun = glide.at({.standpoint = end, .attitude = {}, .seconds = 2.0});
    EXPECT_TRUE(glide.moving());
    EXPECT_NEAR(alike(begun, stanceOf(beside, {})), 1.0, 1e-9);
    const Stance there = glide.at({.standpoint = end, .attitude = {}, .seconds = kLongAfter});
    EXPECT_FALSE(glide.moving());
    EXPECT_NEAR(alike(there, stanceOf(end, {})), 1.0, 1e-12);
}

TEST(Glide, AFreeLookAndTheSliderFollowTheHand) {
    Glide glide;
    Standpoint free = looking(LookKind::Free);
    free.pulledApart = 0.3;
    glide.at({.standpoint = free, .attitude = {}, .seconds = 1.0});
    free.freeAzimuth = Degrees{10.0};
    free.pulledApart = 0.5;
    free.zoom = 2.0;
    const Stance at = glide.at({.standpoint = free, .attitude = {}, .seconds = 1.1});
    EXPECT_FALSE(glide.moving());
    EXPECT_NEAR(alike(at, stanceOf(free, {})), 1.0, 1e-12);
}

TEST(Glide, BendsCloserToAPartStepByStep) {
    Glide glide;
    const Standpoint beside = looking(LookKind::Beside);
    const SceneCamera wide{.heightMm = 400.0};
    const SceneCamera close{.camera = Camera{{0.0, 0.0, 1040.0}, {0.0, 0.0, 40.0}, {0.0, 1.0, 0.0}},
                            .heightMm = 100.0};
    glide.at({.standpoint = beside, .attitude = {}, .seconds = 1.0});
    EXPECT_DOUBLE_EQ(glide.framed(wide).heightMm, 400.0);
    glide.at({.standpoint = beside, .attitude = {}, .closeTo = PartId{"SR-CO"}, .seconds = 2.0});
    EXPECT_DOUBLE_EQ(glide.framed(close).heightMm, 400.0);
    double last = 400.0;
    for (const double seconds : {2.1, 2.2, 2.3, 2.4}) {
        glide.at({.standpoint = beside, .attitude = {}, .closeTo = PartId{"SR-CO"}, .seconds = seconds});
        const SceneCamera now = glide.framed(close);
        EXPECT_LT(now.heightMm, last);
        EXPECT_GT(now.heightMm, 100.0);
        EXPECT_GT(now.camera.target().z, 0.0);
        last = now.heightMm;
    }
    glide.at({.standpoint = beside, .attitude = {}, .closeTo = PartId{"SR-CO"}, .seconds = kLongAfter});
    EXPECT_DOUBLE_EQ(glide.framed(close).heightMm, 100.0);
    EXPECT_DOUBLE_EQ(glide.framed(close).camera.target().z, 40.0);
}

} // namespace gapwise
