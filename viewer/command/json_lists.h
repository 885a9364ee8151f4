#pragma once

#include <nlohmann/json_fwd.hpp>

namespace gapwise {

/// A JSON array with what `make` gives for each thing, in their order.
template <class Things, class Make, class Json = nlohmann::ordered_json>
Json arrayOf(const Things& things, const Make& make) {
    Json list = Json::array();
    for (const auto& thing : things)
        list.push_back(make(thing));
    return list;
}

/// The texts of ids as a JSON array.
template <class Ids, class Json = nlohmann::ordered_json>
Json idsOf(const Ids& ids) {
    return arrayOf(ids, [](const auto& id) { return id.text; });
}

} // namespace gapwise
