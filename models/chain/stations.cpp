#include "models/chain/stations.h"

#include <deque>
#include <vector>

namespace gapwise {

namespace {

/// A way from a station to a next one, that far along Z.
struct Leg {
    StationId to{};
    double alongMm = 0.0;
};

using Ways = std::map<StationId, std::vector<Leg>>;

void addBothWays(Ways& ways, const StationId& from, const StationId& to, double alongMm) {
    ways[from].push_back({.to = to, .alongMm = alongMm});
    ways[to].push_back({.to = from, .alongMm = -alongMm});
}

Ways waysOf(const Frame& frame, const std::map<QuantityId, DimensionValue>& values, Side pushedTo) {
    Ways ways;
    for (const Contact& contact : frame.contacts)
        if (!contact.pushedTo || *contact.pushedTo == pushedTo)
            addBothWays(ways, contact.first, contact.second, 0.0);
    for (const Dimension& dimension : frame.dimensions)
        addBothWays(ways, dimension.from, dimension.to, values.at(dimension.id).valueMm);
    // Diameters lead outward, not along.
    ways.erase(StationId{"axis"});
    return ways;
}

} // namespace

StationId datumStation() {
    return StationId{"HOUSING/datum"};
}

std::map<StationId, double>
stationsAlongShaft(const Frame& frame, const std::map<QuantityId, DimensionValue>& values, Side pushedTo) {
    const Ways ways = waysOf(frame, values, pushedTo);
    std::map<StationId, double> stations{{datumStation(), 0.0}};
    std::deque<StationId> next{datumStation()};
    while (!next.empty()) {
        const StationId here = next.front();
        next.pop_front();
        const auto legs = ways.find(here);
        if (legs == ways.end())
            continue;
        for (const Leg& leg : legs->second)
            if (stations.emplace(leg.to, stations.at(here) + leg.alongMm).second)
                next.push_back(leg.to);
    }
    return stations;
}

} // namespace gapwise
