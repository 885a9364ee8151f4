#pragma once

#include "models/check/check.h"
#include "models/job/log.h"
#include "models/procedure/step_graph.h"

#include <vector>

namespace gapwise {

/// A seating that can still be looked at.
struct LookLeft {
    SeatId seat{};
    PartId part{};             ///< What sits there; the part meant for it where the seat is empty.
    StepId hiddenBy{};         ///< The step that ends the look.
    std::size_t stepsLeft = 0; ///< Steps that must be done before that one can be: 0 = it is next.
    bool finished = false;     ///< Its rules hold and it was confirmed.
};

/// In the order in which they end, nearest first.
std::vector<LookLeft> looksLeft(const StepGraph& graph, const JobState& state, const Checked& checked);

/// The seatings that a step would hide while a rule of theirs is broken or open or nobody confirmed them.
std::vector<LookLeft> hiddenUnfinished(const StepGraph& graph, const JobState& state, const Checked& checked,
                                       const StepId& step);

} // namespace gapwise
