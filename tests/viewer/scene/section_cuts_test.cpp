#include "viewer/scene/section_cuts.h"

#include "lathe.h"
#include "small_cartridge.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

std::shared_ptr<const DrawnMesh> ring() {
    return std::make_shared<const DrawnMesh>(
        DrawnMesh{.body = lathe::turned({{.boreRadius = 5.0, .outerRadius = 9.0}})});
}

TakenAway halfAt(double degrees) {
    return inPartAxes({.removed = Clock::seenFrom(Side::Compressor, Degrees{degrees})}, Pose{});
}

Scene sceneWith(SectionCuts& cuts, double explode, const Section& section, const Meshes& meshes) {
    return sceneOf(small::frame(), small::build(), meshes,
                   {.explode = explode, .section = section, .cuts = &cuts});
}

} // namespace

TEST(SectionCuts, TheSameIsNotCutTwice) {
    SectionCuts cuts;
    const auto whole = ring();
    const auto first = cuts.cut(whole, halfAt(90.0));
    EXPECT_EQ(cuts.cut(whole, halfAt(90.0)), first);
    EXPECT_NE(cuts.cut(whole, halfAt(91.0)), first);
    EXPECT_NE(cuts.cut(ring(), halfAt(90.0)), first) << "another mesh";
    EXPECT_EQ(cuts.made(), 3U);
}

TEST(SectionCuts, WhatOneSceneDidNotAskForIsForgottenAfterIt) {
    SectionCuts cuts;
    const auto whole = ring();
    const std::weak_ptr<const DrawnMesh> left = cuts.cut(whole, halfAt(90.0));
    cuts.sweep();
    EXPECT_FALSE(left.expired()) << "the scene that asked for it shows it still";
    cuts.cut(whole, halfAt(91.0));
    cuts.sweep();
    EXPECT_TRUE(left.expired());
}

TEST(SectionCuts, DoesNotKeepMeshesThatNobodyShows) {
    SectionCuts cuts;
    auto whole = ring();
    const std::weak_ptr<const DrawnMesh> watched = whole;
    cuts.cut(whole, halfAt(90.0));
    whole.reset();
    cuts.sweep();
    cuts.sweep();
    EXPECT_TRUE(watched.expired());
}

TEST(SectionCuts, PullingApartCutsNothingAgain) {
    SectionCuts cuts;
    const Meshes meshes = small::meshes();
    sceneWith(cuts, 0.0, {}, meshes);
    const std::size_t made = cuts.made();
    EXPECT_GT(made, 0U);
    sceneWith(cuts, 0.5, {}, meshes);
    EXPECT_EQ(cuts.made(), made);
}

TEST(SectionCuts, TurningOnePartCutsThatOneAgain) {
    SectionCuts cuts;
    const Meshes meshes = small::meshes();
    sceneWith(cuts, 0.0, {}, meshes);
    const std::size_t made = cuts.made();
    Build build = small::build();
    small::seatingOf(build, "SNAP").index = Clock::seenFrom(Side::Compressor, Degrees{77.0});
    sceneOf(small::frame(), build, meshes, {.section = Section{}, .cuts = &cuts});
    EXPECT_EQ(cuts.made(), made + 1U);
}

TEST(SectionCuts, GivesTheSceneThatItHasWithoutThem) {
    SectionCuts cuts;
    const Meshes meshes = small::meshes();
    const Section quarter{.kind = Section::Kind::Quarter};
    sceneWith(cuts, 0.0, {}, meshes);
    const Scene kept = sceneWith(cuts, 0.0, quarter, meshes);
    const Scene fresh = sceneOf(small::frame(), small::build(), meshes, {.section = quarter});
    ASSERT_EQ(kept.items.size(), fresh.items.size());
    for (std::size_t i = 0; i < kept.items.size(); ++i) {
        EXPECT_EQ(kept.items[i].mesh->caps.positions, fresh.items[i].mesh->caps.positions);
        EXPECT_EQ(kept.items[i].mesh->body.faces.positions, fresh.items[i].mesh->body.faces.positions);
    }
}

} // namespace gapwise
