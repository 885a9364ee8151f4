#pragma once

#include "viewer/panels/surface.h"

#include <string_view>

namespace gapwise {

/// Draws a box with its title over `area`; returns the place inside, below the title.
Area drawBox(const Area& area, std::string_view title, const Surface& surface);

} // namespace gapwise
