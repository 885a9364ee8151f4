#pragma once

#include "models/frame/frame.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace gapwise {

/// What `gapwise frame show --step --json` prints: the same facts as the text. With its line feed.
std::string stepAsJson(const Frame& frame, const Step& step);

/// A step as its frame file says it.
nlohmann::ordered_json stepJson(const Step& step);

/// A fastener as its frame file says it; the keys of a plan only where it has one.
nlohmann::ordered_json fastenerJson(const Fastener& fastener);

} // namespace gapwise
