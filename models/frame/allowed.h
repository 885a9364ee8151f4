#pragma once

#include "models/frame/frame.h"

#include <optional>

namespace gapwise {

/// How far the middle of a ring's gap must keep from the middle of a feature: feature half-angle + gap
/// half-angle + margin, both on the bore that the groove is cut into. Nothing when the ring has no gap, the
/// seat no groove, or the feature is not there or wider than the bore.
std::optional<Degrees> clearanceNeeded(const Frame& frame, const GapClearOfRule& rule, const PartType& ring);

/// The directions of a part's index that one rule allows in the housing's clock, stored as from the
/// compressor side; the whole circle for a rule that does not speak of one part's direction in the housing.
Arcs allowedBy(const Frame& frame, const Rule& rule);

} // namespace gapwise
