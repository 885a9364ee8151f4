#pragma once

#include <filesystem>

namespace gapwise {

/// The file of this process. Where the system does not tell (a bare root without /proc), the name that it was
/// started by, when that is a path; else empty.
std::filesystem::path runningProgram();

} // namespace gapwise
