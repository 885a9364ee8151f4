#pragma once

#include <algorithm>
#include <cstddef>
#include <vector>

namespace gapwise::bench {

/// The middle one of the values, the upper of the middle two; `values` must not be empty.
inline double medianOf(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

} // namespace gapwise::bench
