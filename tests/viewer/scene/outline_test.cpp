#include "viewer/scene/outline.h"

#include "small_cartridge.h"
#include "viewer/scene/visible.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(Outline, HoldsTheItemAndItsHighestPoint) {
    const Scene scene = sceneOf(small::frame(), small::build(), small::meshes(), {});
    const PictureSize size{1600, 900};
    const SceneCamera camera =
        fittedCamera(scene.points(), {}, Projection::Parallel, {size, {0.0, 0.0, 1600.0, 900.0}});
    const Outlined plate = outlineOf(*scene.item(PartId{"PLATE"}), camera, size);
    const double pixelsPerMm = size.height / camera.heightMm;
    EXPECT_NEAR(plate.area.width, 8.0 * pixelsPerMm, 1e-6);
    EXPECT_NEAR(plate.area.height, 100.0 * pixelsPerMm, 1e-6);
    EXPECT_NEAR(plate.upper.y, plate.area.top, 1e-9);
    EXPECT_NEAR(plate.lower.y, plate.area.bottom(), 1e-9);
}

TEST(Outline, OfACutItemPointsIntoItsCutFace) {
    const Scene scene = sceneOf(small::frame(), small::build(), small::meshes(), {.section = Section{}});
    const PictureSize size{1600, 900};
    const SceneCamera camera = fittedCamera(scene.points(), {Degrees{180.0}, Degrees{0.0}},
                                            Projection::Parallel, {size, {0.0, 0.0, 1600.0, 900.0}});
    const Outlined housing = outlineOf(*scene.item(PartId{"HOUSING"}), camera, size);
    EXPECT_NEAR(housing.upperPoint.x, 0.0, 1e-9);
    EXPECT_GT(housing.upperPoint.y, 10.0);
    EXPECT_LT(housing.upperPoint.y, 40.0);
    EXPECT_LT(housing.lowerPoint.y, -10.0);
    EXPECT_FALSE(isHidden(scene, camera, housing.upperPoint));
}

} // namespace gapwise
