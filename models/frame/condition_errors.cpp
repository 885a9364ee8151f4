#include "models/frame/frame_errors.h"

#include <fmt/format.h>

#include <map>

namespace gapwise {

namespace {

constexpr std::string_view kNew = "new";
constexpr std::string_view kDry = "dry";

} // namespace

/// A part is stated as a whole: what is dry has nothing on it, wherever; what is new may have anything.
void conditionErrors(const Frame& frame, Complaints& complaints) {
    std::map<PartId, const Rule*> surfaces;
    std::map<std::pair<PartId, std::string>, const Rule*> states;
    for (const Rule& rule : frame.rules) {
        const auto* condition = std::get_if<ConditionRule>(&rule.demand);
        if (!condition)
            continue;
        const auto [same, isFirst] = states.emplace(std::pair{condition->part, condition->state}, &rule);
        if (!isFirst)
            complaints.add(rule.pointer,
                           fmt::format("{} {}, as {} says already", condition->part.text, condition->state,
                                       same->second->id.text),
                           "each state of a part once");
        if (condition->state == kNew)
            continue;
        const auto [entry, isOnly] = surfaces.emplace(condition->part, &rule);
        const std::string& other = std::get<ConditionRule>(entry->second->demand).state;
        if (!isOnly && (other == kDry) != (condition->state == kDry))
            complaints.add(rule.pointer + "/state",
                           fmt::format("{}, but {} wants {} {}", quotedId(condition->state),
                                       entry->second->id.text, condition->part.text, other),
                           fmt::format("states of {} that can be true together", condition->part.text));
    }
}

} // namespace gapwise
