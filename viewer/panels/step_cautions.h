#pragma once

#include "viewer/workplace/workplace.h"

#include <cstddef>
#include <vector>

namespace gapwise {

/// The cautions of a step, the gravest first.
std::vector<const Caution*> cautionsOf(const Frame& frame, const StepId& step);

/// How many of them nobody has read in this job.
std::size_t unreadOf(const Job& job, const StepId& step);

} // namespace gapwise
