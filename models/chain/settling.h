#pragma once

#include "models/chain/investigation.h"

namespace gapwise {

/// Readings of the frame not yet taken, or taken blind, that would differ most between the likely causes, in
/// units of how well they can be read; at most three, the most telling first.
std::vector<Settling> settlingsOf(const Investigation& seen, const std::vector<Cause>& causes);

} // namespace gapwise
