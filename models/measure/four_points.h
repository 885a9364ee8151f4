#pragma once

#include "models/measure/expect.h"

namespace gapwise {

/// Four gaps evaluated. `plays` are those of the parts that the rotor lay in; nothing: no sag is taken off
/// and nothing is said of rocking. The values are whole rounds of four.
FourPointResult fourPointResult(const Frame& frame, const Quantity& quantity, const Evaluated& read,
                                const std::optional<PartPlays>& plays);

} // namespace gapwise
