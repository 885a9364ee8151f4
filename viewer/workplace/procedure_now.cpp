#include "viewer/workplace/procedure_now.h"

#include "models/procedure/lying.h"
#include "viewer/workplace/workplace.h"

#include <algorithm>

namespace gapwise {

namespace {

/// A step that goes on from the one done last with the piece as it lies: who began at the other end stays
/// there.
std::optional<StepId> goesOn(const Job& job, const StepGraph& graph,
                             const std::vector<StepStatus>& statuses) {
    if (job.state.build.stepsDone.empty())
        return std::nullopt;
    const auto last = graph.indexOf(job.state.build.stepsDone.back());
    if (!last)
        return std::nullopt;
    for (const StepGraph::Edge& edge : graph.followersOf(*last))
        if (statuses[edge.step].standing == StepStanding::Possible &&
            isDoneLying(job.frame.steps[edge.step], job.attitude().up))
            return job.frame.steps[edge.step].id;
    return std::nullopt;
}

std::optional<StepId> leadingOf(const Job& job, const StepGraph& graph,
                                const std::vector<StepStatus>& statuses) {
    const auto first = std::ranges::find(statuses, StepStanding::Possible, &StepStatus::standing);
    if (first == statuses.end())
        return std::nullopt;
    const Step& step = job.frame.steps[static_cast<std::size_t>(first - statuses.begin())];
    if (isDoneLying(step, job.attitude().up))
        return step.id;
    return goesOn(job, graph, statuses).value_or(step.id);
}

} // namespace

ProcedureNow procedureNow(const Job& job) {
    const StepGraph graph{job.frame};
    ProcedureNow now{.statuses = stepStatuses(graph, job.state),
                     .looks = looksLeft(graph, job.state, job.checked),
                     .findings = procedureFindings(job.frame, job.state),
                     .nextHoldPoint = nextHoldPoint(graph, job.state)};
    now.leading = leadingOf(job, graph, now.statuses);
    return now;
}

StepStatus statusOf(const Job& job, const StepId& step) {
    const auto index = job.frame.stepIndex(step);
    return index && *index < job.procedure.statuses.size() ? job.procedure.statuses[*index] : StepStatus{};
}

} // namespace gapwise
