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
    std::optional<std::string> step{}; ///< Show: the card of this step only.
    bool kit = false;                  ///< Show: pick list, gauges, tools and block heights only.
};

/// Check: whether the frame can be used, with every error at once. Show: its parts, seats, rules, steps and
/// fasteners, or the card of one part or step, or its kit.
Outcome frameCommand(const DataFolder& data, const FrameRequest& request, Format format);

} // namespace gapwise
