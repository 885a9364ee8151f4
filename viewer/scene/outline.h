#pragma once

#include "viewer/scene/camera.h"
#include "viewer/scene/scene.h"

namespace gapwise {

/// What an item covers in the picture, and where a leader to it ends.
struct Outlined {
    PictureArea area{};
    Spot upper{};      ///< Its highest point in the picture; of a cut item a point of its cut face above the
    Spot lower{};      ///< shaft, and below it.
    Vec3 upperPoint{}; ///< The same points in the datum axes.
    Vec3 lowerPoint{};
};
Outlined outlineOf(const SceneItem& item, const SceneCamera& camera, const PictureSize& size);

} // namespace gapwise
