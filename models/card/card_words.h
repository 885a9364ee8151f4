#pragma once

#include "models/card/card.h"

#include <string>

namespace gapwise {

/// What a demand asks for, every clock from both sides, the one that the sheet prints first:
/// `gap at 3:00 from the turbine side, 9:00 from the compressor side; ± 30°, inlet on top`.
std::string wordsOf(const CardDemand& demand);

/// What is to be seen from a side when the part sits right: `the sharp face, the gap at 3:00 ± 30°`; empty
/// where no rule says.
std::string rightSightWords(const PartCard& card, Side eye);

/// `0.7 g`, `98 g`, `2.5 kg`: as it stands on a parts list.
std::string massWords(double massKg);

/// `turn counter-clockwise to tighten, as seen from the compressor side`.
std::string tighteningWords(const CardFastener& fastener);

/// `S07 Fit SR-TI`; `not named` for none.
std::string wordsOf(const CardStep& step);

/// `When it can be looked at for the last time`: `at S07 …; S08 … hides it`; `nothing hides it`.
std::string lastLookWords(const PartCard& card);

} // namespace gapwise
