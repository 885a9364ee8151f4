#pragma once

#include "models/measure/evaluate.h"

#include <string_view>

namespace gapwise {

/// k of every expanded uncertainty here.
inline constexpr double kCoverageFactor = 2.0;

/// U (k = 2) of one value: the instrument's; where it is not known, or reads in another unit, what is usual
/// for the kind of gauge that the method asks for; 0 where nothing is known.
double expandedOf(const ReadingCase& readingCase, const Instrument* instrument, const Reading& reading);

/// U (k = 2) that is usual for a kind of instrument, mm, used with care. Common practice, no source.
double usualUncertainty(std::string_view kind);

/// `flat-anvil micrometer` for `flat_anvil_micrometer`.
std::string kindWords(std::string_view kind);

} // namespace gapwise
