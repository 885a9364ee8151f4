#pragma once

#include "models/measure/evaluate.h"

namespace gapwise {

/// What is odd about a reading: method, instrument, calibration, values, spread, form, and whether the parts
/// were in.
std::vector<Flag> flagsOf(const ReadingCase& readingCase, const Reading& reading, const Evaluated& evaluated);

/// Whether a flag of that kind is among them.
bool hasFlag(const std::vector<Flag>& flags, FlagKind kind);

} // namespace gapwise
