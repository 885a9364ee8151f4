#pragma once

#include "models/frame/frame.h"

#include <string>

namespace gapwise {

/// What a frame measures, a line a quantity: symbol, name, unit and limits. Empty when it measures nothing.
std::string measurementsText(const Frame& frame);

/// The chains of a frame with their links, nominal value and scatter. Empty when it has none.
std::string chainsText(const Frame& frame);

} // namespace gapwise
