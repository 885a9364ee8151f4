#pragma once

#include "viewer/picture/remarks.h"
#include "viewer/scene/scene.h"

namespace gapwise {

/// Writes the scene's labels where they belong in the picture, with thin leaders, none over another.
void writeLabels(Paper& paper, const Scene& scene, const SceneCamera& camera, const PictureSize& size,
                 const PictureLayout& layout);

} // namespace gapwise
