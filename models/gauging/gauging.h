#pragma once

/// Gauging: what readings come to. Plain numbers in, plain structs out; nothing here reads a frame or a
/// build.
///
/// Millimetres, degrees Celsius and kelvins, g·mm; the unit stands in the name. A direction is never bare: it
/// keeps the side that it was seen from. Numbers are finite; what the world may state wrongly comes back as
/// Errors or a Result, all else is the caller's duty. Limits are never in here but where a comment says so:
/// they belong to a frame file.

#include "models/gauging/band.h"        // IWYU pragma: export — from least to most
#include "models/gauging/bush.h"        // IWYU pragma: export — a pinned bush: play along and round the shaft
#include "models/gauging/dial.h"        // IWYU pragma: export — push and pull, run-out, nose depth
#include "models/gauging/fits.h"        // IWYU pragma: export — ISO 286: 25 H7/g6
#include "models/gauging/form.h"        // IWYU pragma: export — ovality, taper, track; bearing clearances
#include "models/gauging/four_point.h"  // IWYU pragma: export — tip clearance: offset, sag, rocking by hand
#include "models/gauging/lever.h"       // IWYU pragma: export — radial play at the ends and at the bearings
#include "models/gauging/plausible.h"   // IWYU pragma: export — an entry that looks like a slip
#include "models/gauging/repeats.h"     // IWYU pragma: export — several readings of one quantity
#include "models/gauging/ring.h"        // IWYU pragma: export — groove, end gap, gap when hot, leak path
#include "models/gauging/temperature.h" // IWYU pragma: export — lengths at 20 °C
#include "models/gauging/unbalance.h"   // IWYU pragma: export — ISO 21940-11, split over two planes
