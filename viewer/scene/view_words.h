#pragma once

#include "geometry/datum/camera.h"

#include <string>

namespace gapwise {

/// What a banner says about a look at the cartridge.
struct ViewWords {
    std::string where{}; ///< `You look from the COMPRESSOR side`, or from beside with the side of each end.
    std::string drain{}; ///< `Inlet up, drain down`, `Drain: toward you`.
    std::string note{};  ///< How far a clock can be read from here; empty when it can be read exactly.
};

ViewWords viewWordsOf(const Camera& camera);

/// `COMPRESSOR` or `TURBINE`, as in pictures.
std::string capitalNameOf(Side side);

} // namespace gapwise
