#pragma once

#include "viewer/picture/remarks.h"
#include "viewer/render/renderer.h"
#include "viewer/scene/scene.h"
#include "viewer/scene/section.h"

namespace gapwise {

/// Smallest and largest width and height of a picture.
inline constexpr int kSmallestPicture = 320;
inline constexpr int kLargestPicture = 8000;

/// How a finished picture is wanted.
struct PictureWish {
    PictureSize size{};
    Look look{};
    Projection projection = Projection::Parallel;
    std::string subject{};
    std::string notice{};
};

/// The usual three-quarter look from the side, the turbine on the left; flatter where the parts are pulled
/// apart, so that none hides its neighbour. A section is looked into from the side that is taken away, the
/// more from above or below the more it opens there; the compressor is on the left where that is the 3:00
/// side.
Look usualLook(double explode, const std::optional<Section>& section);

/// Draws a scene with its labels, its banner and its footer. An error when the machine lacks the memory.
Result<Image> finishedPicture(Renderer& renderer, const Scene& scene, const PictureWish& wish);

} // namespace gapwise
