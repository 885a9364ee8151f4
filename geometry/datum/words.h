#pragma once

#include "geometry/datum/clock.h"
#include "geometry/datum/view.h"

#include <string>
#include <string_view>

namespace gapwise {

/// `3:00 seen from the compressor side`: a clock for a person is never a bare number.
std::string clockSeenFrom(Degrees clockwise, Side side);

/// A bench word as it stands in a sentence: `away from you`, `to your right`, `up`, `down and to the right`.
std::string benchPhrase(Degrees seen, EndUp up);

/// How the workpiece lies: `turbine end up, drain at 9:00`, or `level, drain at 6:00 seen from the compressor
/// side`.
std::string describe(const Attitude& attitude);

/// `compressor`, `turbine` or `level`, as in files and on the command line.
std::string_view nameOf(EndUp up);

/// Reads `compressor`, `turbine` or `level`. `where` names the option or file in an error.
Result<EndUp> parseEndUp(std::string_view text, std::string_view where);

} // namespace gapwise
