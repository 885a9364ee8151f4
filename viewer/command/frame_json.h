#pragma once

#include "models/frame/frame.h"

#include <string>

namespace gapwise {

/// What `gapwise frame show --json` prints: the frame's parts, seats, rules, steps, fasteners and rests,
/// every printed clock from both sides. With its line feed.
std::string frameAsJson(const Frame& frame);

/// What `gapwise frame check --json` prints of a frame that can be used: its id, what it is for, and how many
/// parts, seats, rules and steps it has.
std::string frameUsableAsJson(const Frame& frame);

} // namespace gapwise
