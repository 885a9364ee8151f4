#pragma once

#include "viewer/command/outcome.h"
#include "viewer/window/open_window.h"

#include <string>
#include <variant>
#include <vector>

namespace gapwise {

/// The arguments after `open`: a request without its folders, or what there is to say instead (help, or a
/// usage error).
std::variant<OpenRequest, Outcome> parseOpenArguments(const std::vector<std::string>& arguments);

} // namespace gapwise
