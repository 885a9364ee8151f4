#pragma once

#include <string_view>

namespace gapwise {

/// The text of a shader file of this folder, `part.frag`; empty when there is none of that name.
std::string_view shaderSource(std::string_view file);

} // namespace gapwise
