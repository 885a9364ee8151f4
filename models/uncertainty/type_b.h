#pragma once

#include <cstddef>
#include <span>

namespace gapwise {

/// Standard uncertainty of one reading for the step of the display or scale: r/√12, JCGM 100:2008 F.2.2.1.
double standardFromResolution(double resolution);

/// Standard uncertainty of a value of which only ± `halfWidth` is known, any place in it as likely: a/√3,
/// JCGM 100:2008 4.3.7.
double standardFromRectangular(double halfWidth);

/// The same where the middle is the likeliest: a/√6, JCGM 100:2008 4.3.9.
double standardFromTriangular(double halfWidth);

/// The same for what swings between the ends as a sine does (a temperature under control): a/√2.
double standardFromArcsine(double halfWidth);

/// Standard uncertainty from a certificate's expanded one: U/k, k above 0; JCGM 100:2008 4.3.3.
double standardFromExpanded(double expanded, double coverageFactor);

/// Repeats of one reading, summed up (type A evaluation, JCGM 100:2008 4.2).
struct Sample {
    std::size_t count = 0;
    double mean = 0.0;
    double deviation = 0.0; ///< Experimental standard deviation, divisor n − 1; 0 for a single reading.
    double range = 0.0;     ///< Largest − smallest.
    double standard = 0.0;  ///< Standard uncertainty of the mean, s/√n.
    double degreesOfFreedom = 0.0; ///< n − 1; 0 says that nothing is known of the spread.
};

/// `values` must not be empty.
Sample statisticsOf(std::span<const double> values);

} // namespace gapwise
