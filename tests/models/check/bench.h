#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

namespace gapwise::bench {

/// A small invented frame: a housing with a slot at 180 that crosses the groove of SR-C, snap rings SR-C and
/// SR-T (rules printed 3:00 from each side, twins), a bush with a notch on a pin at 180, seal rings PR-1 and
/// PR-2 on the rotor, and PR-P on a sleeve that enters a plate.
Frame smallFrame();

/// A seating at `clock`, as from the compressor side, home, with its reference face to `looks`.
Seating seatedAt(const char* part, double clock, Side looks = Side::Turbine);

} // namespace gapwise::bench
