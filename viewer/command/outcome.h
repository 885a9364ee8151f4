#pragma once

#include "geometry/base/result.h"

#include <string>

namespace gapwise {

/// What the shell learns from every command.
enum class ExitStatus {
    Holds = 0,    ///< Done; nothing is broken.
    Broken = 1,   ///< At least one broken rule.
    BadInput = 2, ///< A file or the command line cannot be used as it is.
    CannotNow = 3 ///< This machine cannot do it now.
};

/// Whom the output speaks to.
enum class Format { Text, Json };

/// What a command has to say; nothing is printed before it is whole.
struct Outcome {
    ExitStatus status = ExitStatus::Holds;
    std::string text{};    ///< For standard output, with its last line feed.
    Errors errors{};       ///< For standard error; in JSON on standard output too.
    Errors notes{};        ///< For standard error: what went wrong without keeping the command from its work.
    std::string command{}; ///< `gapwise clock` where the errors are of the command line; else empty.
};

/// Files or this machine kept the command from its work.
Outcome failed(ExitStatus status, Errors errors);

/// The command line itself is wrong; `command` is the command as typed, `where` of an error an option.
Outcome misused(std::string command, Errors errors);

} // namespace gapwise
