#pragma once

#include "models/job/log.h"
#include "models/procedure/step_graph.h"

#include <string>
#include <vector>

namespace gapwise {

/// A step that was done before something that it needs.
struct OrderMiss {
    const Step* step = nullptr;
    const Precedence* need = nullptr;
    bool doneLater = false; ///< The needed step was done afterwards; false: it was not done at all.
};

/// In the frame's order. A needed step that was done and is open again is not missed: it is asked for again.
std::vector<OrderMiss> orderMisses(const StepGraph& graph, const JobState& state);

/// `S19 was done before S18 (W2 before stack hides the shaft)`.
std::string wordsOf(const OrderMiss& miss);

} // namespace gapwise
