#pragma once

#include "models/frame/read_frame.h"
#include "viewer/command/outcome.h"

#include <string>

namespace gapwise {

/// `gapwise check BUILD [--complete]`
struct CheckRequest {
    std::string build{}; ///< A path, or `-` for standard input.
    bool complete = false;
};

/// Judges every rule of the build's frame.
Outcome checkCommand(const DataFolder& data, const CheckRequest& request, Format format);

} // namespace gapwise
