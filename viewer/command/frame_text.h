#pragma once

#include "models/frame/frame.h"

#include <string>

namespace gapwise {

/// The frame for a person: parts, seats in order along the shaft, rules with both clocks, steps and
/// fasteners.
std::string frameAsText(const Frame& frame);

/// What a rule demands, in words, every clock with its side and from the other side too:
/// `3:00 ± 30° seen from the turbine side = 9:00 seen from the compressor side, inlet on top`.
std::string demandOf(const Frame& frame, const Rule& rule);

} // namespace gapwise
