#pragma once

#include "geometry/base/result.h"
#include "geometry/datum/angle.h"

#include <string_view>

namespace gapwise {

/// Before a shaft nut is taken off, a line is drawn across shaft end, nut and wheel. How far the nut stands
/// from it afterwards, tightening positive, tells whether everything went home, once the shift is taken off
/// that a longer or shorter stack explains.

/// −Δ/P·360°: a longer clamped stack stops the nut short of its line. `stackNewMinusOldMm` is the sum over
/// the clamped parts; the pitch must be above 0.
Degrees expectedNutShift(double stackNewMinusOldMm, double pitchMm);

/// How far from the line, without sign, still agrees, and how far is still small.
struct ShiftLimits {
    Degrees agrees{0.0};
    Degrees small{0.0};
};

/// Errors, of `agrees` and `small`, of limits that are not in order; none where they are.
Errors limitErrors(const ShiftLimits& limits);

enum class NutLineOutcome { Agrees, Small, Large };

/// `agrees`, `small` or `large`.
std::string_view nameOf(NutLineOutcome outcome);

/// What is done then.
std::string_view adviceFor(NutLineOutcome outcome);

/// The three numbers that a record holds, and what they come to.
struct NutLineShift {
    Degrees expected{0.0};
    Degrees read{0.0};
    Degrees corrected{0.0}; ///< read − expected.
    NutLineOutcome outcome = NutLineOutcome::Agrees;
};

/// The boundaries belong to the better outcome. Limits must have no limitErrors.
NutLineShift judgeNutLine(Degrees read, Degrees expected, const ShiftLimits& limits);

} // namespace gapwise
