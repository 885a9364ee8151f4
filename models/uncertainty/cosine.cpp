#include "models/uncertainty/cosine.h"

#include <cassert>
#include <cmath>

namespace gapwise {

double trueReading(double reading, Degrees angle) {
    assert(std::abs(angle.value) < 90.0);
    return reading * std::cos(radians(angle));
}

double cosineError(Degrees angle) {
    assert(std::abs(angle.value) < 90.0);
    return 1.0 / std::cos(radians(angle)) - 1.0;
}

} // namespace gapwise
