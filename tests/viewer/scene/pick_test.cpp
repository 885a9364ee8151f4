#include "viewer/scene/pick.h"

#include "lathe.h"
#include "viewer/scene/section_cut.h"

#include <gtest/gtest.h>

#include <cmath>

namespace gapwise {

namespace {

/// A square plate of ±5 mm at z = 0 that looks to +Z.
std::shared_ptr<const DrawnMesh> plate() {
    DrawnMesh mesh;
    mesh.body.faces.positions = {{-5.0, -5.0, 0.0}, {5.0, -5.0, 0.0}, {5.0, 5.0, 0.0}, {-5.0, 5.0, 0.0}};
    mesh.body.faces.normals.assign(4, Vec3{0.0, 0.0, 1.0});
    mesh.body.faces.triangles = {{0, 1, 2}, {0, 2, 3}};
    return std::make_shared<const DrawnMesh>(std::move(mesh));
}

Scene twoPlates() {
    Scene scene;
    scene.items.push_back(SceneItem{.part = PartId{"NEAR"}, .mesh = plate(), .pulledMm = 20.0});
    scene.items.push_back(SceneItem{.part = PartId{"FAR"}, .mesh = plate()});
    return scene;
}

SceneCamera fromCompressor(Projection projection) {
    return SceneCamera{
        .camera = Camera{{0.0, 0.0, 100.0}, {}, {0.0, 1.0, 0.0}}, .projection = projection, .heightMm = 40.0};
}

} // namespace

TEST(Pick, TheNearerItemIsMetFirst) {
    const auto picked = pick(twoPlates(), Ray{{1.0, 1.0, 50.0}, {0.0, 0.0, -1.0}});
    ASSERT_TRUE(picked);
    EXPECT_EQ(picked->item, 0U);
    EXPECT_NEAR(picked->distanceMm, 30.0, 1e-9);
    EXPECT_NEAR(picked->point.z, 20.0, 1e-9);
}

// What was taken away lets the ray through; the cap behind it is what one sees, and what the ray meets.
TEST(Pick, WhatIsCutAwayCatchesNoRay) {
    const auto bar = [](double radius) {
        return std::make_shared<const DrawnMesh>(
            DrawnMesh{.body = lathe::turned({{.outerRadius = radius, .zFrom = -5.0, .zTo = 5.0}}, 90)});
    };
    Scene scene;
    const auto sleeve = std::make_shared<const DrawnMesh>(DrawnMesh{
        .body = lathe::turned({{.boreRadius = 4.0, .outerRadius = 9.0, .zFrom = -5.0, .zTo = 5.0}}, 90)});
    scene.items.push_back(SceneItem{.part = PartId{"SLEEVE"}, .mesh = sleeve});
    scene.items.push_back(SceneItem{.part = PartId{"BAR"}, .mesh = bar(3.0)});
    const Ray atTheBar{{50.0, 1.0, 0.0}, {-1.0, 0.0, 0.0}};
    const Ray atTheSleeve{{50.0, 6.0, 0.0}, {-1.0, 0.0, 0.0}};
    EXPECT_EQ(pick(scene, atTheBar)->item, 0U);
    for (SceneItem& item : scene.items)
        item.mesh =
            std::make_shared<const DrawnMesh>(cutMesh(item.mesh->body, inPartAxes(Section{}, item.pose)));
    const auto picked = pick(scene, atTheBar);
    ASSERT_TRUE(picked);
    EXPECT_EQ(picked->item, 1U);
    EXPECT_NEAR(picked->point.x, 0.0, 1e-9);
    EXPECT_EQ(pick(scene, atTheSleeve)->item, 0U);
    EXPECT_NEAR(pick(scene, atTheSleeve)->point.x, 0.0, 1e-9);
}

TEST(Pick, ARayBesideEverythingMeetsNothing) {
    EXPECT_FALSE(pick(twoPlates(), Ray{{6.0, 0.0, 50.0}, {0.0, 0.0, -1.0}}));
    EXPECT_FALSE(pick(Scene{}, Ray{{0.0, 0.0, 50.0}, {0.0, 0.0, -1.0}}));
    EXPECT_FALSE(pick(twoPlates(), Ray{{0.0, 0.0, 50.0}, {0.0, 0.0, 1.0}}));
}

TEST(Pick, ARayGoesThroughThePixelThatAPointIsDrawnAt) {
    const PictureSize size{800, 600};
    for (const Projection projection : {Projection::Parallel, Projection::Perspective}) {
        const SceneCamera camera = fromCompressor(projection);
        const Vec3 point{3.0, -4.0, 12.0};
        const PicturePoint drawn = camera.toPicture(point, size);
        const Ray ray = rayThrough(camera, size, drawn.x, drawn.y);
        const Vec3 off = cross(point - ray.from, ray.direction);
        EXPECT_NEAR(length(off), 0.0, 1e-6);
    }
}

TEST(Pick, TheClockUnderTheRayIsThatOfThePlaneOfTheRing) {
    const auto right = clockUnder(Ray{{7.0, 0.0, 50.0}, {0.0, 0.0, -1.0}}, -7.85);
    ASSERT_TRUE(right);
    EXPECT_NEAR(right->from(Side::Compressor).value, 90.0, 1e-9);
    EXPECT_NEAR(right->from(Side::Turbine).value, 270.0, 1e-9);
    EXPECT_FALSE(clockUnder(Ray{{7.0, 0.0, 50.0}, {1.0, 0.0, 0.0}}, 0.0));
    EXPECT_FALSE(clockUnder(Ray{{0.0, 0.0, 50.0}, {0.0, 0.0, -1.0}}, 0.0));
}

} // namespace gapwise
