#pragma once

#include "models/chain/investigation.h"

#include <string>

namespace gapwise {

/// One sentence for or against a cause: what it leaves, which reading contradicts it, which could not see it.
std::string whyWords(const Investigation& seen, const Cause& cause);

/// The whole diagnosis as a technician would say it: what moved, what that tells, what fits, what to read
/// next. `diagnosis` is complete but for its summary.
std::string summaryWords(const Investigation& seen, const Diagnosis& diagnosis);

} // namespace gapwise
