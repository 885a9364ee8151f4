#pragma once

#include "viewer/command/outcome.h"

#include <string>
#include <vector>

namespace gapwise {

/// Becomes `gapwise-window`, which lies beside this program, with the same arguments, streams and process id;
/// returns only when that fails.
Outcome becomeWindowProgram(const std::vector<std::string>& arguments);

} // namespace gapwise
