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

/// `T2 × 6, W2 × 6`.
std::string piecesWords(const CardFastener& fastener);

/// `turn counter-clockwise to tighten, as seen from the compressor side`.
std::string tighteningWords(const CardFastener& fastener);

/// `S07 Fit SR-TI`; `not named` for none.
std::string wordsOf(const CardStep& step);

/// `S07 Fit SR-TI` for one step, `S07, S09, S11` for several.
std::string wordsOf(const std::vector<CardStep>& steps);

/// `before S08 Fit the bearing, which hides it`; `no step hides it`.
std::string lastLookWords(const PartCard& card);

} // namespace gapwise
