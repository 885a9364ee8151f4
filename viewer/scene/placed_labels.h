#pragma once

#include "viewer/scene/label_layout.h"
#include "viewer/scene/scene.h"

#include <functional>
#include <vector>

namespace gapwise {

/// A scene as one sees it.
struct SceneView {
    const Scene& scene;
    const SceneCamera& camera;
    PictureSize size{};
};

/// How large a label is when it is written, with its sign and its box, in pixels.
struct LabelSize {
    double width = 0.0;
    double height = 0.0;
};
using MeasureLabel = std::function<LabelSize(const SceneLabel&)>;

/// Where labels may stand.
struct LabelSheet {
    PictureArea inside{}; ///< No text leaves this.
    double unit = 1.0;    ///< Pixels of one unit: gaps grow with it.
    /// While the picture moves: no ids of parts, and every leader as if what it speaks of were in sight.
    bool moving = false;
};

/// A label in its place.
struct LabelInPlace {
    const SceneLabel* label = nullptr; ///< Of the scene.
    PictureArea box{};
    bool leader = false; ///< A line goes to what it speaks of.
    Spot leaderStart{};  ///< At the box.
    Spot leaderEnd{};    ///< At what it speaks of,
    bool hidden = false; ///< which something else hides.
};

/// The labels of a scene, each in its place: what is broken first, then what is not known, the ends, the
/// ports, the parts from left to right. None covers another; one for which no place is left is left out. Seen
/// along the shaft the ends have no names: both would lie in one place.
std::vector<LabelInPlace> labelsInPlace(const SceneView& view, const MeasureLabel& measure,
                                        const LabelSheet& sheet);

} // namespace gapwise
