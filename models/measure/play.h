#pragma once

#include "models/measure/expect.h"

namespace gapwise {

/// Readings at both ends of the shaft, where they were taken.
struct EndsRead {
    std::optional<Evaluated> nose{};
    std::optional<Evaluated> turbine{};
    Occasion occasion = Occasion::After;
};

/// Two end readings taken apart into a band of play at each bearing, beside what the parts give. Readings
/// from before are of other parts: they are not said to agree. Nothing where one is missing or the frame has
/// no lever.
std::optional<PlayResult> playResult(const Frame& frame, std::span<const Prediction> chains,
                                     const EndsRead& read);

} // namespace gapwise
