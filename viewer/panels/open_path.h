#pragma once

#include "viewer/workplace/wish.h"

#include <string>

namespace gapwise {

/// What is wished by opening what a person typed: the id of a bundled frame, the path of a frame file
/// (`….json`), else that of a build sheet. Paths become absolute, so that the job can be gone on with from
/// anywhere.
StartJob openTyped(const std::string& typed, Use use);

} // namespace gapwise
