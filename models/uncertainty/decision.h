#pragma once

#include <optional>

namespace gapwise {

/// What is allowed, bounds included; one of them may be absent.
struct ToleranceInterval {
    std::optional<double> least{};
    std::optional<double> most{};

    bool operator==(const ToleranceInterval&) const = default;
};

/// Rounding allowance when a value is compared with a limit, in the unit of both (of a millimetre: a
/// millionth of a micrometre): 15.595 is on the limit 15.590 + 0.005 though binary fractions disagree.
inline constexpr double kLimitRounding = 1e-9;

/// True when the value is not beyond a limit; the limits themselves are within.
bool within(double value, const ToleranceInterval& limits);

/// Who bears the uncertainty.
enum class DecisionRule {
    AsPrinted, ///< The value is compared with the limit as it stands.
    Guarded    ///< ISO 14253-1: the uncertainty counts against whoever must prove.
};

/// The rule of a limit.
struct Deciding {
    DecisionRule rule = DecisionRule::AsPrinted;
    double guardFactor = 1.0; ///< Guard band in units of U, where guarded; not below 0.

    constexpr Deciding() = default;
    /// Not explicit: where U itself is the guard band the rule says all.
    constexpr Deciding(DecisionRule kind, double factor = 1.0) : rule{kind}, guardFactor{factor} {}
    bool operator==(const Deciding&) const = default;
};

enum class Conformity {
    Within,
    Outside,
    NotProven ///< Neither is proven; as printed this does not occur.
};

struct Decision {
    Conformity conformity = Conformity::NotProven;
    bool close = false;     ///< A limit lies inside value ± U.
    double guardBand = 0.0; ///< What was used on either side of a limit; 0 as printed.

    bool operator==(const Decision&) const = default;
};

/// Judges a value as it is, not as it is shown: give it unrounded. As printed, a value on the limit is
/// within. Guarded by g, it is within when no limit is nearer than g, outside when it is beyond one by g or
/// more, and not proven otherwise; both boundaries belong to what is proven (ISO 14253-1). Where least + g is
/// above most − g nothing can be proven to be within. At least one limit must be given.
Decision decide(double value, double expandedU, const ToleranceInterval& limits, Deciding deciding = {});

/// The guard band that leaves the share `probability` (in (0.5, 1)) of conformity at the edge of what is
/// accepted, where one limit is near: Φ⁻¹(probability)·u. ISO 14253-1:2017, from memory, asks for 0.95.
double guardBand(double standardU, double probability);

/// 1.6449·u.
double guardBand95(double standardU);

/// The smallest difference of two measured values that is one: k·√(u₁² + u₂²).
double leastSignificantChange(double standardBefore, double standardAfter, double coverageFactor = 2.0);

/// True when |change| is above it.
bool isSignificant(double change, double leastSignificant);

} // namespace gapwise
