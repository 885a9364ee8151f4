#include "geometry/datum/arcs.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Arcs cut at 360, as plain intervals in [0, 360], sorted. What touches 0 also stands at 360, and the other
/// way round.
std::vector<std::pair<double, double>> intervalsOf(const std::vector<Arc>& arcs) {
    std::vector<std::pair<double, double>> intervals;
    for (const Arc& arc : arcs) {
        const double end = arc.start.value + arc.sweep.value;
        intervals.emplace_back(arc.start.value, std::min(end, 360.0));
        if (end > 360.0)
            intervals.emplace_back(0.0, end - 360.0);
        else if (end >= 360.0 - kAngleRounding.value)
            intervals.emplace_back(0.0, 0.0);
        if (arc.start.value <= kAngleRounding.value)
            intervals.emplace_back(360.0, 360.0);
    }
    std::ranges::sort(intervals);
    return intervals;
}

/// Joins touching intervals, and the first to the last where they meet at 0 = 360.
std::vector<Arc> arcsOf(std::vector<std::pair<double, double>> intervals) {
    std::ranges::sort(intervals);
    std::vector<std::pair<double, double>> joined;
    for (const auto& [from, to] : intervals) {
        if (!joined.empty() && from <= joined.back().second + kAngleRounding.value)
            joined.back().second = std::max(joined.back().second, to);
        else
            joined.emplace_back(from, to);
    }
    const bool meets = joined.size() > 1 && joined.front().first <= kAngleRounding.value &&
                       joined.back().second >= 360.0 - kAngleRounding.value;
    if (meets) {
        joined.back().second = 360.0 + joined.front().second;
        joined.erase(joined.begin());
    }
    std::vector<Arc> arcs;
    arcs.reserve(joined.size());
    for (const auto& [from, to] : joined)
        arcs.push_back(Arc{wrapped(Degrees{from}), Degrees{to - from}});
    return arcs;
}

} // namespace

bool Arc::contains(Degrees angle) const {
    const double ahead = wrapped(angle - start).value;
    return ahead <= sweep.value + kAngleRounding.value || ahead >= 360.0 - kAngleRounding.value;
}

Arcs Arcs::whole() {
    Arcs all;
    all.arcs_.push_back(Arc{Degrees{0.0}, Degrees{360.0}});
    return all;
}

Arcs Arcs::around(Degrees middle, Degrees tolerance) {
    if (tolerance.value >= 180.0)
        return whole();
    Arcs window;
    if (tolerance.value >= 0.0)
        window.arcs_.push_back(Arc{wrapped(middle - tolerance), Degrees{2.0 * tolerance.value}});
    return window;
}

Arcs Arcs::awayFrom(Degrees middle, Degrees clearance) {
    return clearance.value <= 0.0 ? whole() : around(middle + Degrees{180.0}, Degrees{180.0} - clearance);
}

Arcs Arcs::intersectedWith(const Arcs& other) const {
    std::vector<std::pair<double, double>> common;
    for (const auto& [aFrom, aTo] : intervalsOf(arcs_))
        for (const auto& [bFrom, bTo] : intervalsOf(other.arcs_)) {
            const double from = std::max(aFrom, bFrom);
            const double to = std::min(aTo, bTo);
            if (from <= to + kAngleRounding.value)
                common.emplace_back(from, std::max(from, to));
        }
    Arcs result;
    result.arcs_ = arcsOf(std::move(common));
    return result;
}

Arcs Arcs::unitedWith(const Arcs& other) const {
    std::vector<std::pair<double, double>> both = intervalsOf(arcs_);
    for (const auto& interval : intervalsOf(other.arcs_))
        both.push_back(interval);
    Arcs result;
    result.arcs_ = arcsOf(std::move(both));
    return result;
}

bool Arcs::contains(Degrees angle) const {
    return std::ranges::any_of(arcs_, [&](const Arc& arc) { return arc.contains(angle); });
}

std::optional<Degrees> Arcs::turnInto(Degrees angle) const {
    if (contains(angle))
        return Degrees{0.0};
    std::optional<Degrees> best;
    for (const Arc& arc : arcs_)
        for (const Degrees edge : {arc.start, arc.start + arc.sweep}) {
            const Degrees turn = wrappedHalf(edge - angle);
            if (!best || std::abs(turn.value) < std::abs(best->value))
                best = turn;
        }
    return best;
}

} // namespace gapwise
