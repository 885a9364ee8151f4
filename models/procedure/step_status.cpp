#include "models/procedure/step_status.h"

#include "models/procedure/standings.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

bool isOpenNeed(const StepGraph::Edge& need, const std::vector<StepStanding>& standings, const Build& build) {
    return applies(need.precedence->when, build) && !isSettled(standings[need.step]);
}

std::vector<const Precedence*> openNeeds(const StepGraph& graph, std::size_t step,
                                         const std::vector<StepStanding>& standings, const Build& build) {
    std::vector<const Precedence*> open;
    for (const StepGraph::Edge& need : graph.needsOf(step))
        if (isOpenNeed(need, standings, build))
            open.push_back(need.precedence);
    return open;
}

void markDone(const StepGraph& graph, const Build& build, std::vector<StepStanding>& standings) {
    for (const StepId& id : build.stepsDone)
        if (const auto step = graph.indexOf(id))
            standings[*step] = StepStanding::Done;
}

/// What does not apply, and what a step that is done stands for.
void markNotNeeded(const StepGraph& graph, const Build& build, std::vector<StepStanding>& standings) {
    const std::vector<Step>& steps = graph.frame().steps;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        if (standings[i] == StepStanding::Blocked && !applies(steps[i].when, build))
            standings[i] = StepStanding::NotNeeded;
        if (standings[i] != StepStanding::Done)
            continue;
        for (const StepId& other : steps[i].standsFor)
            if (const auto index = graph.indexOf(other); index && standings[*index] == StepStanding::Blocked)
                standings[*index] = StepStanding::NotNeeded;
    }
}

} // namespace

bool isSettled(StepStanding standing) {
    return standing != StepStanding::Possible && standing != StepStanding::Blocked;
}

std::vector<StepStanding> standingsOf(const StepGraph& graph, const JobState& state) {
    std::vector<StepStanding> standings(graph.size(), StepStanding::Blocked);
    for (const StepSkipped& skipped : state.skipped)
        if (const auto step = graph.indexOf(skipped.step))
            standings[*step] = StepStanding::Skipped;
    markDone(graph, state.build, standings);
    markNotNeeded(graph, state.build, standings);
    for (std::size_t i = 0; i < standings.size(); ++i) {
        const auto open = [&](const StepGraph::Edge& need) {
            return isOpenNeed(need, standings, state.build);
        };
        if (standings[i] == StepStanding::Blocked && std::ranges::none_of(graph.needsOf(i), open))
            standings[i] = StepStanding::Possible;
    }
    return standings;
}

std::vector<StepStatus> stepStatuses(const StepGraph& graph, const JobState& state) {
    const std::vector<StepStanding> standings = standingsOf(graph, state);
    std::vector<StepStatus> statuses(graph.size());
    for (std::size_t i = 0; i < statuses.size(); ++i) {
        statuses[i].standing = standings[i];
        if (standings[i] == StepStanding::Blocked || standings[i] == StepStanding::NotNeeded)
            statuses[i].waitsFor = openNeeds(graph, i, standings, state.build);
    }
    for (const auto& [open, by] : state.reopened)
        if (const auto step = graph.indexOf(open))
            statuses[*step].reopenedBy = by;
    return statuses;
}

std::vector<StepId> possibleNow(const StepGraph& graph, const JobState& state) {
    const std::vector<StepStanding> standings = standingsOf(graph, state);
    std::vector<StepId> possible;
    for (std::size_t i = 0; i < standings.size(); ++i)
        if (standings[i] == StepStanding::Possible)
            possible.push_back(graph.frame().steps[i].id);
    return possible;
}

std::string whyBlocked(const StepGraph& graph, const JobState& state, const StepId& step) {
    const auto index = graph.indexOf(step);
    if (!index)
        return {};
    const std::vector<StepStanding> standings = standingsOf(graph, state);
    if (standings[*index] == StepStanding::Done || standings[*index] == StepStanding::Skipped)
        return {};
    const std::vector<const Precedence*> open = openNeeds(graph, *index, standings, state.build);
    std::string words;
    for (std::size_t i = 0; i < open.size(); ++i) {
        const std::string_view link = i == 0 ? "" : i + 1 == open.size() ? " and " : ", ";
        words += fmt::format("{}{} ({})", link, open[i]->step.text, open[i]->why);
    }
    return words.empty() ? words : fmt::format("{} waits for {}", step.text, words);
}

std::optional<StepId> nextHoldPoint(const StepGraph& graph, const JobState& state) {
    const std::vector<StepStanding> standings = standingsOf(graph, state);
    for (std::size_t i = 0; i < standings.size(); ++i)
        if (graph.frame().steps[i].holdPoint && !isSettled(standings[i]))
            return graph.frame().steps[i].id;
    return std::nullopt;
}

} // namespace gapwise
