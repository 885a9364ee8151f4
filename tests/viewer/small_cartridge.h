#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"
#include "viewer/scene/scene_of.h"

namespace gapwise::small {

/// A small invented cartridge with everything that orders an explosion: a HOUSING with BUSH and then SNAP
/// from the compressor end; a ROTOR with two seal rings put on at the bench (RING-1 nearer to its wheel than
/// RING-2), from the turbine end; a SLEEVE with its ring RING-S put on at the bench, and a PLATE over it,
/// from the compressor end. PIN sits in the housing and enters from no end. Rules: SNAP's gap at 3:00 from
/// the compressor side, its face to the turbine.
Frame frame();

/// Meshes of its part types by the lathe, in the parts' own axes.
Meshes meshes();

/// Everything in its seat as the rules want it.
Build build();

/// The seating of a part in a build, to change it.
Seating& seatingOf(Build& build, const char* part);

} // namespace gapwise::small
