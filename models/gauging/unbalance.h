#pragma once

#include "geometry/base/result.h"

#include <array>
#include <string_view>

namespace gapwise {

/// Permissible residual unbalance of a rigid rotor by ISO 21940-11 (formerly ISO 1940-1).

/// The balance quality grades, mm/s: a series with the ratio 2.5, rounded (ISO 21940-11 table 1). Which grade
/// a rotor needs is for its own sheet to say: public lists differ for turbochargers.
inline constexpr std::array kBalanceGrades{0.4,   1.0,   2.5,   6.3,    16.0,  40.0,
                                           100.0, 250.0, 630.0, 1600.0, 4000.0};

/// Where the axis of mass may lie off the shaft's, µm: grade over angular speed. Both above 0.
double permissibleEccentricityUm(double gradeMmPerS, double speedRpm);

/// What the rotor may have left, g·mm: 30000/π · grade · mass / speed, the trade's "9549". All above 0.
double permissibleUnbalanceGmm(double gradeMmPerS, double massKg, double speedRpm);

/// Stations along the shaft, mm, on one axis of either sense: two planes and what lies between them.
struct BalancePlanes {
    double centreMm = 0.0; ///< Centre of gravity of the rotor.
    double aMm = 0.0;      ///< One plane, a bearing for choice.
    double bMm = 0.0;      ///< The other.
};

/// What each plane may have left, g·mm.
struct PlaneShares {
    double aGmm = 0.0;
    double bGmm = 0.0;

    bool operator==(const PlaneShares&) const = default;
};

/// Shares of a permissible total, the nearer plane having the greater one: U·L_B/L and U·L_A/L, each held
/// within 0.3 and 0.7 of the total (ISO 21940-11). Refuses planes that coincide and a centre of gravity that
/// does not lie between them: the rule is not made for an overhung rotor. `where` names the place of the
/// stations in the error.
Result<PlaneShares> splitOverPlanes(double totalGmm, const BalancePlanes& planes, std::string_view where);

} // namespace gapwise
