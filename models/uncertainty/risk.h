#pragma once

#include "models/uncertainty/decision.h"

#include <optional>

namespace gapwise {

/// A normal distribution: what a measured value with its standard uncertainty says of the true one, or what a
/// process makes.
struct NormalDistribution {
    double mean = 0.0;
    double deviation = 0.0;
};

/// The chance that the true value is within the limits: Φ((T_U − y)/u) − Φ((T_L − y)/u), JCGM 106:2012 clause
/// 7. With no uncertainty it is 1 or 0.
double conformanceProbability(const NormalDistribution& value, const ToleranceInterval& limits);

/// Chances of a wrong verdict over all that a process makes, JCGM 106:2012 clause 9.
struct GlobalRisk {
    double falseAccept = 0.0; ///< Outside the tolerance and accepted: the consumer's.
    double falseReject = 0.0; ///< Within the tolerance and rejected: the producer's.
};

/// What measurement does to a process: a part is accepted when its measured value, which scatters by
/// `measuring` (above 0) about the true one, is within `accepted`.
GlobalRisk globalRisk(const NormalDistribution& process, double measuring, const ToleranceInterval& tolerance,
                      const ToleranceInterval& accepted);

/// How well a process keeps within limits.
struct Capability {
    std::optional<double> cp{}; ///< Width of the limits over 6 s; nothing where one limit is absent.
    double cpk = 0.0;           ///< From the mean to the nearer limit over 3 s.
    double outside = 0.0;       ///< Share that is made out of the limits.
};

/// `process.deviation` above 0, at least one limit.
Capability processCapability(const NormalDistribution& process, const ToleranceInterval& limits);

/// C_m = T/(2U): the width of the tolerance against that of value ± U; JCGM 106:2012 7.6.3. U above 0.
double measurementCapability(double toleranceWidth, double expandedU);

} // namespace gapwise
