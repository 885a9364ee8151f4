#pragma once

#include "models/frame/frame.h"
#include "viewer/panels/surface.h"

namespace gapwise {

/// A part drawn small from its own dimensions: face on with its gap, notch or mark at 12; a long part from
/// beside. Larger parts are drawn larger, though not to one scale.
void drawGlyph(const PartType& type, const Area& area);

} // namespace gapwise
