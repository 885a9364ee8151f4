#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

namespace gapwise {

/// The build that the frame's rules ask for: every seat filled with the part meant for it, each index in the
/// middle of what its rules allow, each reference face as demanded, everything home, all steps done. A part
/// of which no rule speaks points to the top and looks to the compressor.
Build assembledBuild(const Frame& frame);

} // namespace gapwise
