#include "models/uncertainty/type_b.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace gapwise {

double standardFromResolution(double resolution) {
    assert(resolution >= 0.0);
    return resolution / std::sqrt(12.0);
}

double standardFromRectangular(double halfWidth) {
    assert(halfWidth >= 0.0);
    return halfWidth / std::sqrt(3.0);
}

double standardFromTriangular(double halfWidth) {
    assert(halfWidth >= 0.0);
    return halfWidth / std::sqrt(6.0);
}

double standardFromArcsine(double halfWidth) {
    assert(halfWidth >= 0.0);
    return halfWidth / std::sqrt(2.0);
}

double standardFromExpanded(double expanded, double coverageFactor) {
    assert(expanded >= 0.0 && coverageFactor > 0.0);
    return expanded / coverageFactor;
}

Sample statisticsOf(std::span<const double> values) {
    assert(!values.empty());
    const auto count = static_cast<double>(values.size());
    const auto [smallest, largest] = std::ranges::minmax(values);
    Sample sample{.count = values.size(), .range = largest - smallest, .degreesOfFreedom = count - 1.0};
    sample.mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    if (values.size() < 2)
        return sample;
    double squares = 0.0;
    for (const double value : values)
        squares += (value - sample.mean) * (value - sample.mean);
    sample.deviation = std::sqrt(squares / sample.degreesOfFreedom);
    sample.standard = sample.deviation / std::sqrt(count);
    return sample;
}

} // namespace gapwise
