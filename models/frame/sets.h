#pragma once

#include "models/frame/frame.h"

#include <string>
#include <vector>

namespace gapwise {

/// The pieces that go in and come out together with a part: of a screw, a washer or a tab plate all of its
/// type that belong to the same fastener, in the frame's order. A part that is no fastener stands alone.
std::vector<PartId> piecesOf(const Frame& frame, const PartId& part);

/// `T2 × 6` for a piece of a set of six, else the id of the part.
std::string setNameOf(const Frame& frame, const PartId& part);

} // namespace gapwise
