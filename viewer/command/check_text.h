#pragma once

#include "models/check/check.h"

#include <string>
#include <string_view>

namespace gapwise {

/// What `gapwise check` prints for a person: the count, every finding with what is demanded, found, at stake
/// and to do, and as its last line what the verdict rests on. `name` is what the build is called.
std::string checkAsText(const Frame& frame, const Build& build, const Checked& checked,
                        std::string_view name);

} // namespace gapwise
