#include "models/uncertainty/input_quantity.h"

#include "models/uncertainty/type_b.h"

#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

InputQuantity quantity(Distribution distribution, double mean, double width) {
    assert(std::isfinite(mean) && std::isfinite(width) && width >= 0.0);
    return {.distribution = distribution, .mean = mean, .width = width};
}

} // namespace

InputQuantity InputQuantity::fixed(double value) {
    return quantity(Distribution::Fixed, value, 0.0);
}

InputQuantity InputQuantity::normal(double mean, double standardDeviation) {
    return quantity(Distribution::Normal, mean, standardDeviation);
}

InputQuantity InputQuantity::rectangular(double mean, double halfWidth) {
    return quantity(Distribution::Rectangular, mean, halfWidth);
}

InputQuantity InputQuantity::triangular(double mean, double halfWidth) {
    return quantity(Distribution::Triangular, mean, halfWidth);
}

InputQuantity InputQuantity::arcsine(double mean, double halfWidth) {
    return quantity(Distribution::Arcsine, mean, halfWidth);
}

InputQuantity InputQuantity::student(double mean, double scale, double degreesOfFreedom) {
    assert(degreesOfFreedom > 2.0);
    InputQuantity result = quantity(Distribution::Student, mean, scale);
    result.degreesOfFreedom = degreesOfFreedom;
    return result;
}

double InputQuantity::standard() const {
    switch (distribution) {
    case Distribution::Fixed: return 0.0;
    case Distribution::Normal: return width;
    case Distribution::Rectangular: return standardFromRectangular(width);
    case Distribution::Triangular: return standardFromTriangular(width);
    case Distribution::Arcsine: return standardFromArcsine(width);
    case Distribution::Student: return width * std::sqrt(degreesOfFreedom / (degreesOfFreedom - 2.0));
    }
    return 0.0;
}

} // namespace gapwise
