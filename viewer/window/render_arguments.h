#pragma once

#include "viewer/picture/render_command.h"

#include <variant>
#include <vector>

namespace gapwise {

/// The arguments after `render`: a request, or what there is to say instead (help, or a usage error).
std::variant<RenderRequest, Outcome> parseRenderArguments(const std::vector<std::string>& arguments);

} // namespace gapwise
