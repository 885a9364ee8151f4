#pragma once

#include "models/frame/frame.h"

#include <string>

namespace gapwise {

/// What `gapwise frame show --kit` prints: pick list, gauges, tools and the least height of the block under
/// the piece with each end up.
std::string kitAsText(const Frame& frame);

/// The same facts as JSON. With its line feed.
std::string kitAsJson(const Frame& frame);

} // namespace gapwise
