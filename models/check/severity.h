#pragma once

#include <string_view>

namespace gapwise {

/// What a severity of 1 to 4 means, as it stands beside its number: `cosmetic`, `leak or loss of
/// performance`, `early wear`, `fails at start-up`.
std::string_view severityWord(int severity);

} // namespace gapwise
