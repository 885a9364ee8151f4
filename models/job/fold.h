#pragma once

#include "models/job/log.h"
#include "models/procedure/step_graph.h"

#include <vector>

namespace gapwise {

/// The state of a job, event by event. An event costs what it changes, not the length of the log; only what
/// re-opens steps looks at all of them.
class Fold {
public:
    /// The graph must outlive the fold.
    Fold(const StepGraph& graph, JobState start);

    /// An event that stands (neither Undone nor Redone).
    void add(const Event& event);

    JobState state() && { return std::move(state_); }

private:
    void on(const AttitudeChanged& event);
    void on(const PartPlaced& event);
    void on(const PartTakenOff& event);
    void on(const StepDone& event);
    void on(const StepSkipped& event);
    void on(const StepUndone& event);
    void on(const HoldPointPassed& event);
    void on(const Tightened& event);
    void on(const Loosened& event);
    void on(const Answered& event);
    void on(const NutLineRead& event);
    void on(const CautionAcknowledged& event);
    void on(const PersonCame& event);
    template <class Other>
    void on(const Other& event);

    bool isDone(const StepId& step) const;
    void markDone(const StepId& step);
    void reopen(const StepId& step);
    void open(const StepId& step, const StepId& by);
    void voidWorkOf(const StepId& step);
    void voidTightening(const FastenerId& fastener);

    const StepGraph& graph_;
    const Frame& frame_;
    JobState state_;
    std::vector<bool> done_; ///< By index of the step.
};

/// As stateOf of a frame, with its graph made already.
JobState stateOf(const StepGraph& graph, const Log& log);

} // namespace gapwise
