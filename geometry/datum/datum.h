#pragma once

/// The datum: one set of axes, one clock, and everything that is said about directions around the shaft.
///
/// Right-handed axes in millimetres: +Z along the shaft toward the compressor, +Y to the top (the oil inlet
/// of the housing), +X = Y × Z, to the right of an observer on the compressor side. The stored clock θ is
/// degrees clockwise from 12 as seen from the compressor side; a point at θ is x = r·sin θ, y = r·cos θ. Seen
/// in a view, θ_seen = φ + σ·θ.

#include "geometry/datum/angle.h"  // IWYU pragma: export — degrees, wrapping, comparing on the circle
#include "geometry/datum/arcs.h"   // IWYU pragma: export — sets of allowed directions
#include "geometry/datum/camera.h" // IWYU pragma: export — which clock a direction has in any picture
#include "geometry/datum/clock.h"  // IWYU pragma: export — a direction around the shaft, seen from a side
#include "geometry/datum/pose.h" // IWYU pragma: export — index and reference face, from part axes to datum axes
#include "geometry/datum/side.h"   // IWYU pragma: export — the two ends
#include "geometry/datum/vector.h" // IWYU pragma: export — points and directions in the datum axes
#include "geometry/datum/view.h" // IWYU pragma: export — attitudes, observers, views, turning moves, bench words
#include "geometry/datum/words.h" // IWYU pragma: export — directions in sentences
