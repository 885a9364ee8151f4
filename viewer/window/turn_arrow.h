#pragma once

#include "viewer/scene/camera.h"
#include "viewer/scene/scene.h"
#include "viewer/workplace/workplace.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// An arrow round the piece that is tightened next, square to its axis, in the datum axes: the way the wrench
/// turns.
struct TurnArrow {
    std::vector<Vec3> arc{};  ///< From its tail to its tip.
    std::vector<Vec3> head{}; ///< Barb, tip, barb.
};

/// The picture that the arrow goes over.
struct ArrowOn {
    const Scene& scene;
    const SceneCamera& camera;
    double leastRadiusMm = 0.0; ///< So large that it can be seen.
    bool moving = false;        ///< Then whether the piece is hidden is not looked at.
};

/// Nothing while no wrench is at a fastener, when all of it is done, and where the piece is not drawn or
/// hidden.
std::optional<TurnArrow> turnArrowOf(const Job& job, const ArrowOn& on);

/// Changes whenever the arrow may change though the picture does not.
std::string turnArrowKey(const Job& job);

} // namespace gapwise
