#pragma once

#include "viewer/scene/camera.h"
#include "viewer/scene/scene.h"

namespace gapwise {

/// True when something that is drawn lies between the eye and a point of the scene. Points on a face that is
/// seen are not hidden by it.
bool isHidden(const Scene& scene, const SceneCamera& camera, const Vec3& point);

} // namespace gapwise
