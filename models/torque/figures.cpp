#include "models/torque/figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdlib>

namespace gapwise {

std::string withFigures(double value, int figures) {
    assert(figures >= 1);
    if (value == 0.0)
        return "0";
    if (!std::isfinite(value))
        return fmt::format("{}", value);
    // The power of ten after rounding: 9.996 at three figures is 10.0.
    const std::string rounded = fmt::format("{:.{}e}", value, figures - 1);
    const int power = std::atoi(rounded.substr(rounded.find('e') + 1).c_str());
    return fmt::format("{:.{}f}", std::strtod(rounded.c_str(), nullptr), std::max(0, figures - 1 - power));
}

} // namespace gapwise
