#pragma once

#include "models/frame/read_frame.h"
#include "viewer/command/outcome.h"

#include <string>

namespace gapwise {

/// `gapwise frame check FRAME`, `gapwise frame show FRAME`
struct FrameRequest {
    enum class Act { Check, Show };
    Act act = Act::Check;
    std::string frame{}; ///< A bundled id or a path.
};

/// Check: whether the frame can be used, with every error at once. Show: its parts, seats, rules and steps.
Outcome frameCommand(const DataFolder& data, const FrameRequest& request, Format format);

} // namespace gapwise
