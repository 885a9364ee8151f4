#pragma once

#include "models/job/log.h"

namespace gapwise {

// What refusalOf says of readings and of what is decided on them.

/// A quantity that the frame does not have, no values, a value that is no number, another unit, a method that
/// the measurement does not know. A reading that only looks odd is taken, and flagged in the report.
Errors refusalOfReading(const Frame& frame, const JobState& state, const ReadingTaken& event);

/// A part that the frame does not have, no name; reuse that needs a reason or a concession and has none.
Errors refusalOfDecision(const Frame& frame, const JobState& state, const PartDecided& event);

/// Work that no expectation of the frame speaks of.
Errors refusalOfWork(const Frame& frame, const WorkStated& event);

} // namespace gapwise
