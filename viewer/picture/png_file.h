#pragma once

#include "geometry/base/result.h"
#include "viewer/render/image.h"

#include <string>

namespace gapwise {

/// The image as a PNG file's bytes. An error when the library lacks memory.
Result<std::string> pngOf(const Image& image);

} // namespace gapwise
