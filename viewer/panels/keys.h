#pragma once

#include <span>
#include <string_view>

namespace gapwise {

/// A key and what it does, as the screen and the manual list them.
struct KeyHelp {
    std::string_view key{};
    std::string_view does{};
};
std::span<const KeyHelp> keyHelp();

} // namespace gapwise
