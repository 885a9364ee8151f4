#include "models/gauging/form.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace gapwise {

namespace {

double meanOf(std::span<const double> readings) {
    assert(!readings.empty());
    return std::accumulate(readings.begin(), readings.end(), 0.0) / static_cast<double>(readings.size());
}

/// Hole less what is in it.
Band clearance(const Band& hole, const Band& inside) {
    return {hole.least - inside.most, hole.most - inside.least};
}

} // namespace

DiameterForm formOf(std::span<const PlaneReadings> planes) {
    assert(!planes.empty());
    std::vector<double> all;
    std::vector<double> means;
    double ovality = 0.0;
    for (const PlaneReadings& plane : planes) {
        all.insert(all.end(), plane.begin(), plane.end());
        means.push_back(meanOf(plane));
        ovality = std::max(ovality, rangeMm(plane));
    }
    const auto [least, most] = std::ranges::minmax(all);
    return {.leastMm = least,
            .mostMm = most,
            .meanMm = meanOf(all),
            .ovalityMm = ovality,
            .taperMm = rangeMm(means)};
}

double rangeMm(std::span<const double> readings) {
    assert(!readings.empty());
    const auto [least, most] = std::ranges::minmax(readings);
    return most - least;
}

double trackDepthMm(std::span<const double> atHub, std::span<const double> inTrack) {
    assert(!inTrack.empty());
    return meanOf(atHub) - std::ranges::min(inTrack);
}

BearingClearances clearancesOf(const BearingSizes& sizes) {
    const Band inner = clearance(sizes.insideMm, sizes.journalMm);
    const Band outer = clearance(sizes.boreMm, sizes.outsideMm);
    return {.inner = inner, .outer = outer, .total = {inner.least + outer.least, inner.most + outer.most}};
}

} // namespace gapwise
