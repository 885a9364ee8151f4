#pragma once

#include "viewer/command/outcome.h"

#include <optional>
#include <string>

namespace gapwise {

/// The words of `gapwise clock` as typed.
struct ClockRequest {
    std::string clock{};
    std::string from{};
    std::optional<std::string> up{};
    std::optional<std::string> drain{};
    std::optional<std::string> stand{};
    std::optional<std::string> seenFrom{};
    bool asSeen = false;
};

/// One direction as both sides print it (inlet on top) and, with `up` and `drain`, as it is seen on the
/// bench: on an upright piece looking down on the end that is up, on a level piece looking at each end,
/// `from` first. With `asSeen` the clock is the first of these bench views and the printed clocks are the
/// answer. The drain of a level piece is seen from `seenFrom`, which is `from` when it is not given.
Outcome clockCommand(const ClockRequest& request, Format format);

} // namespace gapwise
