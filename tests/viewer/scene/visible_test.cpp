#include "viewer/scene/visible.h"

#include "small_cartridge.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(Hidden, IsWhatABodyStandsBefore) {
    const Scene scene = sceneOf(small::frame(), small::build(), small::meshes(), {});
    const PictureSize size{1600, 900};
    for (const Projection projection : {Projection::Parallel, Projection::Perspective}) {
        const SceneCamera camera =
            fittedCamera(scene.points(), {}, projection, {size, {0.0, 0.0, 1600.0, 900.0}});
        // The eye is at -X: the near face of the housing is seen, its far face and the ring inside are not.
        EXPECT_FALSE(isHidden(scene, camera, {-40.0, 0.0, -30.0}));
        EXPECT_TRUE(isHidden(scene, camera, {40.0, 0.0, -30.0}));
        EXPECT_TRUE(isHidden(scene, camera, {0.0, 10.0, -8.0}));
        EXPECT_FALSE(isHidden(scene, camera, {0.0, 60.0, 0.0}));
    }
}

} // namespace gapwise
