#pragma once

#include "models/check/check.h"
#include "viewer/scene/scene.h"

namespace gapwise {

/// The names of the ends beyond what is drawn, `inlet` and `drain` at the pads of the housing, the ids of the
/// parts when they are pulled apart, and what is broken or not known at its part.
struct LabelWishes {
    bool partIds = false;
    const Checked* checked = nullptr; ///< May be null.
};
std::vector<SceneLabel> labelsOf(const Frame& frame, const Scene& scene, const LabelWishes& wishes);

/// Where the oil goes in (`top`) or out: the middle of the outer face of the housing's pad there, or the
/// housing's outermost point in that direction. In the datum axes.
Vec3 portOf(const Frame& frame, const SceneItem& housing, bool top);

} // namespace gapwise
