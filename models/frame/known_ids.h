#pragma once

#include "models/json/fields.h"

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What ids of one kind a frame has, and where: for errors about ids.
class KnownIds {
public:
    /// `one` and `many` name the kind: `seat`, `seats`.
    KnownIds(std::string_view one, std::string_view many) : one_{one}, many_{many} {}

    /// Complains when the id is there already.
    void add(const std::string& id, const std::string& pointer, Complaints& complaints);
    bool has(const std::string& id) const { return places_.contains(id); }
    /// Complains when the id is not there. An empty id was complained about before.
    void need(const std::string& id, const std::string& pointer, Complaints& complaints) const;

private:
    std::string_view one_;
    std::string_view many_;
    std::map<std::string, std::string> places_{};
    std::vector<std::string> order_{};
};

/// All things of a kind that have an id and a pointer; complains about ids that are there twice.
template <class Things>
KnownIds knownIds(std::string_view one, std::string_view many, const Things& things, Complaints& complaints) {
    KnownIds known{one, many};
    for (const auto& thing : things)
        if constexpr (requires { thing.id.text; })
            known.add(thing.id.text, thing.pointer, complaints);
        else
            known.add(thing.id, thing.pointer, complaints);
    return known;
}

/// The same without complaints: those are another's.
template <class Things>
KnownIds knownIds(std::string_view one, std::string_view many, const Things& things) {
    Complaints ignored{""};
    return knownIds(one, many, things, ignored);
}

/// `pointer/key/index`
std::string itemOf(std::string_view pointer, std::string_view key, std::size_t index);

} // namespace gapwise
