#pragma once

#include "geometry/base/result.h"

#include <array>
#include <string>
#include <string_view>

namespace gapwise {

/// The units that torque wrenches and service sheets are marked in.
enum class TorqueUnit {
    NewtonMetre,
    PoundForceFoot,
    PoundForceInch,
    KilogramForceMetre,
    KilogramForceCentimetre
};

/// All of them, in the order in which they are shown.
inline constexpr std::array kTorqueUnits{TorqueUnit::NewtonMetre, TorqueUnit::PoundForceFoot,
                                         TorqueUnit::PoundForceInch, TorqueUnit::KilogramForceMetre,
                                         TorqueUnit::KilogramForceCentimetre};

/// Newton-metres in one of this unit: exact products of the foot (0.3048 m), the pound-force (4.4482216152605
/// N) and the kilogram-force (9.80665 N).
double newtonMetresIn(TorqueUnit unit);

double toNewtonMetres(double value, TorqueUnit unit);
double fromNewtonMetres(double newtonMetres, TorqueUnit unit);

/// `N·m`, `lbf·ft`, `lbf·in`, `kgf·m` or `kgf·cm`.
std::string_view nameOf(TorqueUnit unit);

/// The same as any keyboard types it: `N.m`, `lbf.ft`, …
std::string_view typedNameOf(TorqueUnit unit);

/// Reads a unit as it is printed or typed: `N·m`, `N.m`, `Nm`, `lbf.ft`, `ft-lb`, `in-lb`, `kgf cm`, `kg.cm`,
/// … `where` names the option or file in an error.
Result<TorqueUnit> parseTorqueUnit(std::string_view text, std::string_view where);

/// A torque as somebody stated it, in his own unit.
struct StatedTorque {
    double value = 0.0;
    TorqueUnit unit = TorqueUnit::NewtonMetre;

    double newtonMetres() const { return toNewtonMetres(value, unit); }
    bool operator==(const StatedTorque&) const = default;
};

/// Least and most that is taken for a torque, in newton-metres.
inline constexpr double kLeastTorqueNm = 1e-6;
inline constexpr double kMostTorqueNm = 1e6;

/// Reads `32.4 lbf·ft`: a number and its unit, with or without a blank between. Refuses what is no torque to
/// tighten with: 0, below 0, not a number, out of [kLeastTorqueNm, kMostTorqueNm].
Result<StatedTorque> parseTorque(std::string_view text, std::string_view where);

/// The same where a number without a unit means newton-metres.
Result<StatedTorque> parseTorqueOrNewtonMetres(std::string_view text, std::string_view where);

/// `23.9 lbf·ft`: newton-metres in a unit, with its name, at so many significant figures.
std::string torqueWords(double newtonMetres, TorqueUnit unit = TorqueUnit::NewtonMetre, int figures = 3);

} // namespace gapwise
