#include "models/procedure/reopen.h"

namespace gapwise {

namespace {

/// Its work is void when what it needed is undone: physics, access and measuring. Cleanliness, safety and the
/// record are not work that would have to be done again.
bool voidsWork(const Precedence& precedence) {
    return precedence.reason == "PHY" || precedence.reason == "ACC" || precedence.reason == "MEA";
}

/// Everything that follows from `start` through edges that apply and that `take` takes.
template <class Take>
std::vector<bool> descendants(const StepGraph& graph, const Build& build, std::size_t start, Take take) {
    std::vector<bool> reached(graph.size(), false);
    std::vector<std::size_t> open{start};
    while (!open.empty()) {
        const std::size_t step = open.back();
        open.pop_back();
        for (const StepGraph::Edge& edge : graph.followersOf(step)) {
            if (reached[edge.step] || !applies(edge.precedence->when, build) || !take(*edge.precedence))
                continue;
            reached[edge.step] = true;
            open.push_back(edge.step);
        }
    }
    return reached;
}

} // namespace

std::vector<bool> followersOf(const StepGraph& graph, const Build& build, std::size_t step) {
    return descendants(graph, build, step, [](const Precedence& /*any*/) { return true; });
}

Reopened reopenedBy(const StepGraph& graph, const Build& build, const StepId& step) {
    const auto start = graph.indexOf(step);
    if (!start)
        return {};
    std::vector<bool> done(graph.size(), false);
    for (const StepId& id : build.stepsDone)
        if (const auto index = graph.indexOf(id))
            done[*index] = true;
    std::vector<bool> open = descendants(graph, build, *start, voidsWork);
    open[*start] = true;
    const std::vector<bool> after = followersOf(graph, build, *start);
    Reopened reopened;
    const std::vector<Step>& steps = graph.frame().steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (done[i] && open[i])
            reopened.steps.push_back(steps[i].id);
        else if (done[i] && after[i] && (steps[i].holdPoint || steps[i].closesRecord))
            reopened.lapsed.push_back(steps[i].id);
    }
    return reopened;
}

} // namespace gapwise
