#pragma once

#include <limits>
#include <span>
#include <string>
#include <vector>

namespace gapwise {

/// One cause of doubt in a result.
struct UncertaintyComponent {
    std::string name{};
    double sensitivity = 1.0; ///< How much the result changes with it; any sign.
    double standard = 0.0;    ///< Its standard uncertainty.
    double degreesOfFreedom = std::numeric_limits<double>::infinity(); ///< At least 1.
};

/// An uncertainty with the share of values that it holds.
struct ExpandedUncertainty {
    double standard = 0.0;                                             ///< u_c.
    double degreesOfFreedom = std::numeric_limits<double>::infinity(); ///< Effective, cut to a whole number.
    double coverageFactor = 0.0;                                       ///< k.
    double expanded = 0.0;                                             ///< U = k·u_c.
};

/// u_c of independent components: the root of the sum of (sensitivity·standard)²; JCGM 100:2008 5.1.2.
double combinedStandard(std::span<const UncertaintyComponent> components);

/// Welch and Satterthwaite, JCGM 100:2008 G.4.1, not yet cut to a whole number; infinite where no component
/// that counts has finite degrees of freedom.
double effectiveDegreesOfFreedom(std::span<const UncertaintyComponent> components);

/// The uncertainty that holds the share `probability`, in (0, 1): Student's factor for the effective degrees
/// of freedom cut to a whole number (JCGM 100:2008 G.6.4).
ExpandedUncertainty expandedUncertainty(std::span<const UncertaintyComponent> components,
                                        double probability = 0.95);

/// The part of u_c² that each component brings, in their order; all 0 where u_c is 0.
std::vector<double> sharesOfVariance(std::span<const UncertaintyComponent> components);

} // namespace gapwise
