#pragma once

namespace gapwise {

/// The value below which the share `p` of the standard normal distribution lies, p in (0, 1).
double normalQuantile(double p);

/// The share of the standard normal distribution below `z`; `z` may be infinite.
double normalCumulative(double z);

/// The same of Student's distribution, p in (0, 1); `degreesOfFreedom` above 0, infinite gives the normal
/// one.
double studentQuantile(double p, double degreesOfFreedom);

/// The factor k by which a standard uncertainty becomes an expanded one that holds the share `probability`,
/// in (0, 1), symmetrically: t_p(ν) of JCGM 100:2008 table G.2.
double coverageFactor(double probability, double degreesOfFreedom);

} // namespace gapwise
