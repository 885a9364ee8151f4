#include "models/uncertainty/quantiles.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cassert>
#include <cmath>

namespace gapwise {

double normalQuantile(double p) {
    assert(p > 0.0 && p < 1.0);
    return boost::math::quantile(boost::math::normal{}, p);
}

double normalCumulative(double z) {
    assert(!std::isnan(z));
    return boost::math::cdf(boost::math::normal{}, z);
}

double studentQuantile(double p, double degreesOfFreedom) {
    assert(p > 0.0 && p < 1.0 && degreesOfFreedom > 0.0);
    if (std::isinf(degreesOfFreedom))
        return normalQuantile(p);
    return boost::math::quantile(boost::math::students_t{degreesOfFreedom}, p);
}

double coverageFactor(double probability, double degreesOfFreedom) {
    assert(probability > 0.0 && probability < 1.0);
    return studentQuantile((1.0 + probability) / 2.0, degreesOfFreedom);
}

} // namespace gapwise
