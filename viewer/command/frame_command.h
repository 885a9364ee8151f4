#pragma once

#include "models/frame/read_frame.h"
#include "viewer/command/outcome.h"

#include <optional>
#include <string>

namespace gapwise {

/// `gapwise frame check FRAME`, `gapwise frame show FRAME`
struct FrameRequest {
    enum class Act { Check, Show };
    Act act = Act::Check;
    std::string frame{};               ///< A bundled id or a path.
    std::optional<std::string> part{}; ///< Show: the card of this part only.
};

/// Check: whether the frame can be used, with every error at once. Show: its parts, seats, rules and steps,
/// or the card of one part.
Outcome frameCommand(const DataFolder& data, const FrameRequest& request, Format format);

} // namespace gapwise
