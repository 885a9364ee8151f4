#pragma once

#include "viewer/command/outcome.h"

#include <filesystem>
#include <string>
#include <vector>

namespace gapwise {

/// The file of this process; empty when the system does not tell.
std::filesystem::path runningProgram();

/// Becomes `gapwise-window`, which lies beside this program, with the same arguments, streams and process id;
/// returns only when that fails.
Outcome becomeWindowProgram(const std::vector<std::string>& arguments);

} // namespace gapwise
