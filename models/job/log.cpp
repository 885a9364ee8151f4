#include "models/job/log.h"

#include "models/job/fold.h"

#include <algorithm>

namespace gapwise {

namespace {

struct Parted {
    std::vector<const Event*> standing{};
    std::vector<const Event*> takenBack{}; ///< The one that comes back first is last.
};

Parted partedEvents(const Log& log) {
    Parted parted;
    const auto move = [](std::vector<const Event*>& from, std::vector<const Event*>& to) {
        if (from.empty())
            return;
        to.push_back(from.back());
        from.pop_back();
    };
    for (const Event& event : log.events) {
        if (std::holds_alternative<Undone>(event)) {
            move(parted.standing, parted.takenBack);
        } else if (std::holds_alternative<Redone>(event)) {
            move(parted.takenBack, parted.standing);
        } else if (!std::holds_alternative<LookedFirst>(event)) {
            parted.standing.push_back(&event);
            parted.takenBack.clear();
        }
    }
    return parted;
}

} // namespace

const Answered* JobState::answer(const StepId& step, std::string_view question) const {
    const auto found = std::ranges::find_if(
        answers, [&](const Answered& each) { return each.step == step && each.question == question; });
    return found == answers.end() ? nullptr : &*found;
}

std::vector<const Event*> standingEvents(const Log& log) {
    return partedEvents(log).standing;
}

JobState stateOf(const Frame& frame, const Log& log) {
    return stateOf(StepGraph{frame}, log);
}

JobState stateOf(const StepGraph& graph, const Log& log) {
    JobState start{.build = log.start};
    start.rehearsal = log.rehearsal;
    start.demands = log.demands;
    const Parted parted = partedEvents(log);
    Fold fold{graph, std::move(start)};
    for (const Event* event : parted.standing)
        fold.add(*event);
    JobState state = std::move(fold).state();
    for (const Event& event : log.events)
        if (const auto* looked = std::get_if<LookedFirst>(&event))
            state.lookedFirst.insert(looked->seat);
    state.canUndo = parted.standing.size();
    state.canRedo = parted.takenBack.size();
    return state;
}

} // namespace gapwise
