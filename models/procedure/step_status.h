#pragma once

#include "models/job/log.h"
#include "models/procedure/step_graph.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

enum class StepStanding {
    Done,
    Skipped,
    NotNeeded, ///< It does not apply, or a step that stands for it is done.
    Possible,  ///< Everything that it needs is done, skipped or not needed.
    Blocked
};

/// Where a step stands in a job.
struct StepStatus {
    StepStanding standing = StepStanding::Blocked;
    std::vector<const Precedence*> waitsFor{}; ///< What it needs directly and is open, in the frame's order.
    std::optional<StepId> reopenedBy{}; ///< It was done before, and is open since this step was re-opened.
};

/// One status a step, in the frame's order.
std::vector<StepStatus> stepStatuses(const StepGraph& graph, const JobState& state);

/// The steps that can be done now, in the frame's order.
std::vector<StepId> possibleNow(const StepGraph& graph, const JobState& state);

/// Why a step cannot be done now, in words: `S17 waits for S14 (hold point W1: …) and S15 (…)`; empty when it
/// can.
std::string whyBlocked(const StepGraph& graph, const JobState& state, const StepId& step);

/// What keeps a step that is possible from being called done.
struct Missing {
    enum class Kind { Part, Fastener, Reading, Question, Caution, HoldPoint, Attitude };
    Kind kind = Kind::Part;
    std::string id{};    ///< Of the part, fastener, quantity, caution; the name of the question.
    std::string words{}; ///< `SR-TI is not in its seat`.
    bool stops = true;   ///< False: the program only says so.
};

/// Parts that are not in a seat, fasteners not at their last stage, quantities not read that the step asks
/// for, questions not answered, cautions not read, a hold point not passed, an attitude that the step does
/// not name (which only is said).
std::vector<Missing> missingFrom(const Frame& frame, const JobState& state, const StepId& step);

/// The next hold point in the frame's order that is needed and not passed.
std::optional<StepId> nextHoldPoint(const StepGraph& graph, const JobState& state);

/// `variant`, `pick_list`, `gauges`, `count_in`, … as in frame files and journals.
std::string_view nameOf(StepQuestion question);

} // namespace gapwise
