#pragma once

#include "geometry/mesh/mesh.h"
#include "geometry/shape/shape.h"

namespace gapwise {

/// The crest of a thread as a helix round the cylinder that stands for it, a quarter of a pitch short of both
/// ends; nothing for a thread shorter than that. Its pieces touch the cylinder from outside, so that no
/// triangle hides them.
EdgeLines threadLines(const Thread& thread);

} // namespace gapwise
