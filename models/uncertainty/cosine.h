#pragma once

#include "geometry/datum/angle.h"

namespace gapwise {

/// What the measured face moved when an indicator's contact moves aslant to it: reading × cos(angle). `angle`
/// is that between the contact's movement and the direction that is to be measured, in (−90°, 90°). Holds for
/// the tip of a lever indicator and for the plunger of a dial on a flat face square to the axis.
double trueReading(double reading, Degrees angle);

/// By which share such an indicator reads too much: 1/cos(angle) − 1; 0.015 at 10°.
double cosineError(Degrees angle);

} // namespace gapwise
