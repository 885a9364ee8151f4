#include "viewer/command/outcome.h"

#include <utility>

namespace gapwise {

Outcome failed(ExitStatus status, Errors errors) {
    return Outcome{.status = status, .text = {}, .errors = std::move(errors), .command = {}};
}

Outcome misused(std::string command, Errors errors) {
    return Outcome{.status = ExitStatus::BadInput,
                   .text = {},
                   .errors = std::move(errors),
                   .command = std::move(command)};
}

} // namespace gapwise
