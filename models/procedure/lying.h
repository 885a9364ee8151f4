#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

namespace gapwise {

/// Whether a step can be done with this end of the piece up: on the bench, or where it names no attitude, any
/// will do.
bool isDoneLying(const Step& step, EndUp up);

} // namespace gapwise
