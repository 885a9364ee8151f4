#pragma once

#include "models/check/check.h"

#include <string>

namespace gapwise {

/// What the sentences of a finding are made from.
struct Telling {
    const Frame& frame;
    const Build& build;
    const Finding& finding;
    View currentView{};
};

/// The whole finding in words: what is, what the rule says, why it happened, what to do. Every clock says
/// from where it is seen.
std::string wordsOf(const Telling& telling);

/// The one question that decides between the mistakes that remain; empty when a view decides or one mistake
/// is left.
std::string questionOf(const Frame& frame, const Finding& finding);

/// `Turn it 180° (half a turn) clockwise, as seen from the compressor side.`
std::string wordsOf(const TurnHint& turn);

} // namespace gapwise
