#pragma once

#include "viewer/panels/panels.h"
#include "viewer/window/picture_view.h"

namespace gapwise {

/// What is written and drawn over a picture that lies at `area`: labels in their places, the dial at the ring
/// in hand, the front of the bench; while it moves, without the ids of the parts.
PictureOverlay overlayOf(const Job& job, const PictureView& picture, const Area& area,
                         const PanelFrame& panels, bool moving);

} // namespace gapwise
