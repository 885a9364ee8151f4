#pragma once

#include "models/card/card.h"

#include <string>

namespace gapwise {

/// What `gapwise frame show --part --json` prints: the facts of the text, every clock from both sides. With
/// its line feed.
std::string cardAsJson(const Frame& frame, const PartCard& card);

} // namespace gapwise
