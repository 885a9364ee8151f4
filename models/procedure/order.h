#pragma once

#include "models/frame/frame.h"

#include <vector>

namespace gapwise {

/// The parts in the order in which the frame's steps place them; parts that no step places come last, in the
/// frame's order.
std::vector<PartId> partsInOrder(const Frame& frame);

} // namespace gapwise
