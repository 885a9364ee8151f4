#pragma once

#include "models/measure/expect.h"

namespace gapwise {

/// Two end readings taken apart into a band of play at each bearing, beside what the parts give. Nothing
/// where one is missing or the frame has no lever.
std::optional<PlayResult> playResult(const Frame& frame, std::span<const Prediction> chains,
                                     const std::optional<Evaluated>& nose,
                                     const std::optional<Evaluated>& turbine);

} // namespace gapwise
