#include "models/procedure/order_misses.h"

#include "models/procedure/standings.h"

#include <fmt/format.h>

namespace gapwise {

std::vector<OrderMiss> orderMisses(const StepGraph& graph, const JobState& state) {
    const std::vector<StepStanding> standings = standingsOf(graph, state);
    std::vector<std::size_t> place(graph.size(), 0);
    for (std::size_t i = 0; i < state.build.stepsDone.size(); ++i)
        if (const auto step = graph.indexOf(state.build.stepsDone[i]))
            place[*step] = i;
    std::vector<OrderMiss> misses;
    for (std::size_t step = 0; step < graph.size(); ++step) {
        if (standings[step] != StepStanding::Done)
            continue;
        for (const StepGraph::Edge& need : graph.needsOf(step)) {
            const bool done = standings[need.step] == StepStanding::Done;
            if (!applies(need.precedence->when, state.build) || (done && place[need.step] < place[step]) ||
                (!done && isSettled(standings[need.step])) ||
                (!done && state.reopened.contains(need.precedence->step)))
                continue;
            misses.push_back({&graph.frame().steps[step], need.precedence, done});
        }
    }
    return misses;
}

std::string wordsOf(const OrderMiss& miss) {
    return fmt::format("{} was done {} {} ({})", miss.step->id.text, miss.doneLater ? "before" : "without",
                       miss.need->step.text, miss.need->why);
}

} // namespace gapwise
