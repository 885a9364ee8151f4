#pragma once

#include "viewer/scene/scene.h"

#include <optional>

namespace gapwise {

/// A line of sight in the datum axes, from a point in mm in a direction of unit length.
struct Ray {
    Vec3 from{};
    Vec3 direction{0.0, 0.0, -1.0};
};

/// The line of sight through a point of the picture, in pixels from its upper left corner.
Ray rayThrough(const SceneCamera& camera, const PictureSize& size, double x, double y);

struct Picked {
    std::size_t item = 0;    ///< Index into the scene's items.
    double distanceMm = 0.0; ///< From the ray's start.
    Vec3 point{};            ///< In the datum axes, as drawn (pulled apart).
};

/// The item whose faces the ray meets first; nothing when it meets none.
std::optional<Picked> pick(const Scene& scene, const Ray& ray);

/// Where the ray meets the plane square to the shaft at `zMm`; nothing when it runs along that plane (within
/// 3°).
std::optional<Vec3> meets(const Ray& ray, double zMm);

/// The direction around the shaft under the ray, where it meets the plane square to the shaft at `zMm`.
/// Nothing when the ray runs along that plane (within 3°), or meets it on the axis.
std::optional<Clock> clockUnder(const Ray& ray, double zMm);

} // namespace gapwise
