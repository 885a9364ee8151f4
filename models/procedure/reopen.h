#pragma once

#include "models/procedure/step_graph.h"

#include <vector>

namespace gapwise {

/// What is open again when a step is undone or its fastener touched.
struct Reopened {
    std::vector<StepId> steps{};  ///< The step itself and every descendant through PHY, ACC or MEA, if done.
    std::vector<StepId> lapsed{}; ///< Hold points and the closed record that follow in any way: their
                                  ///< signature is asked for again. Not among `steps`.
};

/// By index, whether a step follows this one through edges that apply, directly or through others.
std::vector<bool> followersOf(const StepGraph& graph, const Build& build, std::size_t step);

/// Of the steps that are done in `build`.
Reopened reopenedBy(const StepGraph& graph, const Build& build, const StepId& step);

} // namespace gapwise
