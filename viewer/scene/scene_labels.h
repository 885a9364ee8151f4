#pragma once

#include "models/check/check.h"
#include "viewer/scene/scene.h"

namespace gapwise {

struct LabelWishes {
    bool partIds = false;
    const Checked* checked = nullptr; ///< May be null.
};

/// The item that stands for the set of alike pieces that an item is one of: of the screws T2-1 … T2-6 the
/// first that is shown. An item that is in no set stands for itself.
const SceneItem* firstOfItsSet(const Frame& frame, const Scene& scene, const SceneItem& item);

/// The names of the ends beyond what is drawn, `inlet` and `drain` at the pads of the housing, the ids of the
/// parts when they are pulled apart (`T2 × 6` for a set), and what is broken or not known at its part.
std::vector<SceneLabel> labelsOf(const Frame& frame, const Scene& scene, const LabelWishes& wishes);

/// Where the oil goes in (`top`) or out: the middle of the outer face of the housing's pad there, or the
/// housing's outermost point in that direction. In the datum axes.
Vec3 portOf(const Frame& frame, const SceneItem& housing, bool top);

} // namespace gapwise
