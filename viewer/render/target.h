#pragma once

#include "geometry/base/result.h"
#include "viewer/render/gl_objects.h"

#include <optional>

namespace gapwise {

/// Where samples are drawn: colour, kind (normal and part, for outlines) and depth, all readable as textures.
struct SampleTarget {
    gl::Framebuffer frame{};
    gl::Texture colour{};
    gl::Texture kind{};
    gl::Texture depth{};
    int width = 0;
    int height = 0;
};

/// Where one colour goes.
struct ColourTarget {
    gl::Framebuffer frame{};
    gl::Texture colour{};
    gl::Texture depth{}; ///< Empty unless asked for by `giveDepth`.
    int width = 0;
    int height = 0;
};

enum class ColourFormat { Picture, Shade }; ///< Four channels, or one.

/// Errors when the driver lacks the memory.
Result<SampleTarget> makeSampleTarget(int width, int height);
Result<ColourTarget> makeColourTarget(int width, int height, ColourFormat format);

/// Lets what is drawn into the target hide other things. An error when the driver lacks the memory.
std::optional<Error> giveDepth(ColourTarget& target);

} // namespace gapwise
