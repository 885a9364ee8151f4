#include "models/frame/known_ids.h"

#include "models/json/document.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

constexpr std::size_t kLongestList = 60; // ids that an error still lists

} // namespace

void KnownIds::add(const std::string& id, const std::string& pointer, Complaints& complaints) {
    const auto [entry, isNew] = places_.emplace(id, pointer);
    if (isNew)
        order_.push_back(id);
    else
        complaints.add(pointer + "/id", fmt::format("{}, as at {}", quotedText(id), entry->second),
                       fmt::format("an id that no other {} has", one_));
}

void KnownIds::need(const std::string& id, const std::string& pointer, Complaints& complaints) const {
    if (id.empty() || has(id))
        return;
    const bool few = !order_.empty() && order_.size() <= kLongestList;
    complaints.add(pointer, quotedText(id),
                   few ? fmt::format("a {}: {}", one_, schema::listed(order_, "or"))
                       : fmt::format("one of the {} {} of this frame", order_.size(), many_));
}

std::string itemOf(std::string_view pointer, std::string_view key, std::size_t index) {
    return fmt::format("{}/{}/{}", pointer, key, index);
}

} // namespace gapwise
