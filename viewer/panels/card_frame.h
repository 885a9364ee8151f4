#pragma once

#include "viewer/panels/surface.h"

namespace gapwise {

/// Draws an empty card over `area`; returns the place inside.
Area drawCardFrame(const Area& area, const Surface& surface);

} // namespace gapwise
