#pragma once

#include "models/procedure/procedure.h"

#include <optional>
#include <vector>

namespace gapwise {

struct Job;

/// How the procedure of a job stands: computed once after every event. Points into the job's frame.
struct ProcedureNow {
    std::vector<StepStatus> statuses{}; ///< One a step, in the frame's order.
    std::vector<LookLeft> looks{};      ///< What can still be looked at, nearest first.
    std::vector<ProcedureFinding> findings{};
    std::optional<StepId> nextHoldPoint{};
    std::optional<StepId> leading{}; ///< The step that one most likely wants next.
};

ProcedureNow procedureNow(const Job& job);

/// Where a step stands; blocked for one that the frame does not have.
StepStatus statusOf(const Job& job, const StepId& step);

} // namespace gapwise
