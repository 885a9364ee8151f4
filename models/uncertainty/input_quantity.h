#pragma once

#include <limits>

namespace gapwise {

/// How likely the values of a quantity are.
enum class Distribution { Fixed, Normal, Rectangular, Triangular, Arcsine, Student };

/// A quantity that enters a model, as it is known (JCGM 101:2008 clause 6.4). Made by the functions below.
struct InputQuantity {
    Distribution distribution = Distribution::Fixed;
    double mean = 0.0;
    double width = 0.0; ///< Normal: standard deviation; Student: scale s; the others: half width.
    double degreesOfFreedom = std::numeric_limits<double>::infinity(); ///< Of Student's.

    static InputQuantity fixed(double value);
    static InputQuantity normal(double mean, double standardDeviation);
    static InputQuantity rectangular(double mean, double halfWidth);
    static InputQuantity triangular(double mean, double halfWidth);
    static InputQuantity arcsine(double mean, double halfWidth);
    /// A mean of few repeats with their standard uncertainty `scale` (JCGM 101:2008 6.4.9.2);
    /// `degreesOfFreedom` above 2.
    static InputQuantity student(double mean, double scale, double degreesOfFreedom);

    /// Standard uncertainty.
    double standard() const;
    bool operator==(const InputQuantity&) const = default;
};

} // namespace gapwise
