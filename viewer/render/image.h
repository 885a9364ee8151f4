#pragma once

#include "viewer/scene/camera.h"

#include <cstdint>
#include <vector>

namespace gapwise {

/// Pixels in rows from the top, each 0xffRRGGBB: opaque sRGB.
struct Image {
    PictureSize size{0, 0};
    std::vector<std::uint32_t> pixels{};

    std::uint32_t at(int x, int y) const {
        return pixels[static_cast<std::size_t>(y) * static_cast<std::size_t>(size.width) +
                      static_cast<std::size_t>(x)];
    }
};

} // namespace gapwise
