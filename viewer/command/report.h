#pragma once

#include "viewer/command/outcome.h"

#include <optional>
#include <string>

namespace gapwise {

/// Prints an outcome: its text on standard output, its errors on standard error (in JSON also on standard
/// output). A standard output that cannot be written makes it CannotNow. Returns the status of the process.
int report(const Outcome& outcome, Format format);

/// `{"errors": [{"file", "pointer", "found", "allowed"}]}` with its line feed; of the command line the file
/// is `command line` and the pointer the option. An error in the syntax of a file has `line` and `column`
/// too.
std::string errorsAsJson(const Outcome& outcome);

/// A place in an error, taken apart: `k1.json#/rules/3` is `k1.json` and `/rules/3`, `k1.json:2:11` is line
/// 2, column 11 of `k1.json`.
struct ErrorPlace {
    std::string file{};
    std::string pointer{}; ///< Empty where the error is about the file as a whole.
    std::optional<int> line{};
    std::optional<int> column{};

    bool operator==(const ErrorPlace&) const = default;
};
ErrorPlace placeOf(const Error& error);

} // namespace gapwise
