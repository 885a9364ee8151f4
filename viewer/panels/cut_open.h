#pragma once

#include "viewer/workplace/workplace.h"

#include <optional>
#include <string>

namespace gapwise {

/// The piece is cut open to look into it, and the cut is turned about the shaft.

/// How far one press turns the cut.
inline constexpr Degrees kCutStep{15.0};

/// In which view the clock of the cut is told and turned: the picture's; where that offers no clock, from the
/// side on which the eye is, inlet on top.
View cutViewOf(const Job& job);

/// The cut opens toward the eye, wherever it was before; nothing: the piece is whole again.
Wish cutOpen(const Job& job, std::optional<Section::Kind> kind);

/// Half, quarter, whole, half: the one after what is shown.
std::optional<Section::Kind> nextCut(const Job& job);

/// The cut is turned on, clockwise as seen in `cutViewOf`. Nothing while the piece is whole.
std::optional<Wish> turnCut(const Job& job, Degrees seenClockwise);

/// The same to a clock as seen in `cutViewOf`.
std::optional<Wish> turnCutTo(const Job& job, Degrees seen);

/// Shows the casings, or puts them out of sight; nothing while none is in place.
std::optional<Wish> turnCasings(const Job& job);

/// `Cut away: the half at 3:00 seen from the compressor side`; empty while the piece is whole.
std::string cutWordsOf(const Job& job);

} // namespace gapwise
