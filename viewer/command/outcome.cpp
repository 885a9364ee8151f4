#include "viewer/command/outcome.h"

#include <utility>

namespace gapwise {

Outcome failed(ExitStatus status, Errors errors) {
    return Outcome{.status = status, .errors = std::move(errors)};
}

Outcome misused(std::string command, Errors errors) {
    return Outcome{
        .status = ExitStatus::BadInput, .errors = std::move(errors), .command = std::move(command)};
}

} // namespace gapwise
