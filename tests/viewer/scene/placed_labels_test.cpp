#include "viewer/scene/placed_labels.h"

#include "small_cartridge.h"
#include "viewer/scene/scene_of.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace gapwise {

namespace {

constexpr PictureSize kSize{800, 500};
constexpr Vec3 kCompressorUp{0.0, 0.0, 1.0};

LabelSize measured(const SceneLabel& label) {
    return {8.0 * static_cast<double>(label.text.size()), 16.0};
}

struct Look {
    Camera direction{{0.0, 0.0, 1.0}, {}, {0.0, 1.0, 0.0}};
    double zoom = 1.0;
};

std::vector<LabelInPlace> placed(const Scene& scene, const Look& look) {
    SceneCamera camera = fittedCamera(scene.points(), look.direction, Projection::Parallel,
                                      {kSize, {80.0, 60.0, kSize.width - 160.0, kSize.height - 120.0}});
    camera.heightMm /= look.zoom;
    return labelsInPlace({scene, camera, kSize}, measured,
                         {.inside = {0.0, 0.0, kSize.width * 1.0, kSize.height * 1.0}});
}

const LabelInPlace* labelled(const std::vector<LabelInPlace>& labels, const char* text) {
    const auto found =
        std::ranges::find_if(labels, [&](const LabelInPlace& each) { return each.label->text == text; });
    return found == labels.end() ? nullptr : &*found;
}

Scene cartridge() {
    return sceneOf(small::frame(), small::build(), small::meshes(), {.explode = 1.0});
}

} // namespace

TEST(PlacedLabels, LieInThePictureAndNoneOverAnother) {
    const Scene scene = cartridge();
    const auto labels = placed(scene, {.direction = Camera{{1.0, 0.2, 0.3}, {}, {0.0, 1.0, 0.0}}});
    ASSERT_GT(labels.size(), 5U);
    for (std::size_t i = 0; i < labels.size(); ++i) {
        EXPECT_TRUE((PictureArea{0.0, 0.0, 800.0, 500.0}).contains(labels[i].box)) << labels[i].label->text;
        for (std::size_t k = i + 1; k < labels.size(); ++k)
            EXPECT_FALSE(labels[i].box.overlaps(labels[k].box))
                << labels[i].label->text << " and " << labels[k].label->text;
    }
}

TEST(PlacedLabels, TheEndsOfAnUprightPieceAreNamedAboveAndBelowIt) {
    const Scene scene = cartridge();
    const auto labels = placed(scene, {.direction = Camera{{1.0, 0.0, 0.0}, {}, kCompressorUp}});
    const LabelInPlace* compressor = labelled(labels, "COMPRESSOR");
    const LabelInPlace* turbine = labelled(labels, "TURBINE");
    ASSERT_TRUE(compressor && turbine);
    EXPECT_LT(compressor->box.bottom(), 100.0);
    EXPECT_GT(turbine->box.top, 400.0);
}

TEST(PlacedLabels, StraightOntoAnEndNeitherEndIsNamed) {
    const Scene scene = cartridge();
    const auto labels = placed(scene, {});
    EXPECT_FALSE(labelled(labels, "COMPRESSOR"));
    EXPECT_FALSE(labelled(labels, "TURBINE"));
    EXPECT_TRUE(labelled(labels, "inlet"));
}

TEST(PlacedLabels, StraightOntoAnEndACutPieceCarriesNoIds) {
    const Scene scene = sceneOf(small::frame(), small::build(), small::meshes(), {.section = Section{}});
    EXPECT_TRUE(
        labelled(placed(scene, {.direction = Camera{{1.0, 0.0, 0.4}, {}, {0.0, 1.0, 0.0}}}), "ROTOR"));
    const auto straight = placed(scene, {});
    EXPECT_FALSE(labelled(straight, "ROTOR"));
    EXPECT_TRUE(labelled(straight, "inlet"));
}

TEST(PlacedLabels, WhatLiesOutsideThePictureIsNotSpokenOf) {
    const Scene scene = cartridge();
    const Camera beside{{1.0, 0.0, 0.0}, {}, {0.0, 1.0, 0.0}};
    EXPECT_TRUE(labelled(placed(scene, {.direction = beside}), "ROTOR"));
    EXPECT_TRUE(labelled(placed(scene, {.direction = beside}), "TURBINE"));
    EXPECT_FALSE(labelled(placed(scene, {.direction = beside, .zoom = 6.0}), "TURBINE"));
}

} // namespace gapwise
