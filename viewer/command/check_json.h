#pragma once

#include "models/check/check.h"

#include <string>

namespace gapwise {

/// What `gapwise check --json` prints: `{"frame", "holds", "counts", "findings"}`, with its line feed.
/// Degrees everywhere; what is not known is null. A finding that is not due (only with `complete`) is `open`.
std::string checkAsJson(const Frame& frame, const Checked& checked);

} // namespace gapwise
