#include "geometry/base/running_program.h"

#include <cerrno>
#include <string_view>
#include <system_error>

namespace gapwise {

std::filesystem::path runningProgram() {
    std::error_code untold;
    std::filesystem::path told = std::filesystem::read_symlink("/proc/self/exe", untold);
    const std::string_view startedBy = program_invocation_name;
    if (untold && startedBy.find('/') != std::string_view::npos)
        told = std::filesystem::absolute(startedBy, untold);
    return told;
}

} // namespace gapwise
