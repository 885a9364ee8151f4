#pragma once

/// Torque: what the wrench must be set to, what it does to the thread, and which way it turns.
///
/// Newton-metres, millimetres, degrees, kilonewtons and megapascals; other units of torque only where one is
/// read or shown. Numbers come in checked where a function returns a Result; elsewhere they must be finite
/// and above 0, which the caller sees to.

#include "models/torque/angle_window.h" // IWYU pragma: export — from snug to final: expected, read, what it means
#include "models/torque/figures.h"      // IWYU pragma: export — numbers with significant figures
#include "models/torque/nut_line.h"     // IWYU pragma: export — the old mark across shaft and nut
#include "models/torque/pattern.h"      // IWYU pragma: export — in which order the screws of a flange
#include "models/torque/preload.h"      // IWYU pragma: export — torque to clamp force and back, friction
#include "models/torque/stages.h"       // IWYU pragma: export — parts of the torque, one after the other
#include "models/torque/strength.h"     // IWYU pragma: export — property classes, proof load, stress
#include "models/torque/thread.h"       // IWYU pragma: export — ISO metric threads and their hand
#include "models/torque/turning.h"      // IWYU pragma: export — which way it turns, seen from where
#include "models/torque/units.h"        // IWYU pragma: export — N·m, lbf·ft, lbf·in, kgf·m, kgf·cm
#include "models/torque/wrench.h"       // IWYU pragma: export — adapter, range and tolerance of the wrench
