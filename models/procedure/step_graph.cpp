#include "models/procedure/step_graph.h"

namespace gapwise {

StepGraph::StepGraph(const Frame& frame)
    : frame_{&frame}, needs_(frame.steps.size()), followers_(frame.steps.size()) {
    index_.reserve(frame.steps.size());
    for (std::size_t i = 0; i < frame.steps.size(); ++i)
        index_.emplace(frame.steps[i].id.text, i);
    for (std::size_t i = 0; i < frame.steps.size(); ++i)
        for (const Precedence& precedence : frame.steps[i].after)
            if (const auto before = indexOf(precedence.step)) {
                needs_[i].push_back({*before, &precedence});
                followers_[*before].push_back({i, &precedence});
            }
}

std::optional<std::size_t> StepGraph::indexOf(const StepId& id) const {
    const auto found = index_.find(id.text);
    return found == index_.end() ? std::nullopt : std::optional{found->second};
}

bool applies(OnlyWhen when, const Build& build) {
    return when == OnlyWhen::Always || build.rotorLoweredIn.value_or(false);
}

} // namespace gapwise
