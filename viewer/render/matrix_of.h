#pragma once

#include "geometry/datum/pose.h"
#include "viewer/scene/camera.h"

namespace gapwise {

/// A pose as a matrix for shaders.
inline Matrix matrixOf(const Pose& pose) {
    const auto f = [](double value) { return static_cast<float>(value); };
    return {f(pose.xAxis.x), f(pose.xAxis.y), f(pose.xAxis.z), 0.0F,
            f(pose.yAxis.x), f(pose.yAxis.y), f(pose.yAxis.z), 0.0F,
            f(pose.zAxis.x), f(pose.zAxis.y), f(pose.zAxis.z), 0.0F,
            f(pose.shift.x), f(pose.shift.y), f(pose.shift.z), 1.0F};
}

} // namespace gapwise
