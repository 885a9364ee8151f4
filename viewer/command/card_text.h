#pragma once

#include "models/card/card.h"

#include <string>

namespace gapwise {

/// The card of a part for a person, with the practice notice and what prevails as its last lines.
std::string cardAsText(const Frame& frame, const PartCard& card);

} // namespace gapwise
