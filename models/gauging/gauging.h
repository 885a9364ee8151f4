#pragma once

/// Gauging: what readings come to. Plain numbers in, plain structs out; nothing here reads a frame or a
/// build.
///
/// Millimetres, degrees Celsius and kelvins, g·mm; the unit stands in the name. A direction is never bare: it
/// keeps the side that it was seen from. Numbers are finite; what the world may state wrongly comes back as
/// Errors or a Result, all else is the caller's duty. Limits are never in here but where a comment says so:
/// they belong to a frame file.

#include "models/gauging/band.h"       // IWYU pragma: export — from least to most
#include "models/gauging/four_point.h" // IWYU pragma: export — tip clearance: offset, sag, rocking by hand
#include "models/gauging/lever.h"      // IWYU pragma: export — radial play at the ends and at the bearings
