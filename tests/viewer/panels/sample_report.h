#pragma once

#include "models/measure/report.h"

#include <span>

namespace gapwise {

/// A report as the sheet of measurements shows one, made by hand on the chains of a frame: these values were
/// measured (of parts, of gaps), everything else was not read. Standings are by the mean alone; the first
/// part with a number lies between new and limit and asks for a decision; where the axial clearance was read
/// the first change of the frame is the likeliest cause.
MeasureReport sampleReport(const Frame& frame, std::span<const MeasuredValue> measured);

} // namespace gapwise
