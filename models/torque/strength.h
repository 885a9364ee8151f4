#pragma once

#include "geometry/base/result.h"
#include "models/torque/thread.h"

#include <array>
#include <string_view>

namespace gapwise {

/// Property classes of ISO 898-1: 8.8, 9.8, 10.9 and 12.9.
enum class PropertyClass { P88, P98, P109, P129 };

inline constexpr std::array kPropertyClasses{PropertyClass::P88, PropertyClass::P98, PropertyClass::P109,
                                             PropertyClass::P129};

/// `8.8`, `9.8`, `10.9` or `12.9`, as on the head of the screw.
std::string_view nameOf(PropertyClass property);

/// `where` names the option or file in an error.
Result<PropertyClass> parsePropertyClass(std::string_view text, std::string_view where);

/// Whether the class is made in this size: 9.8 ends at M16.
bool isMade(PropertyClass property, double diameterMm);

/// Sₚ, nominal stress under the proof load, MPa (ISO 898-1 table 3). Class 8.8 is stronger above 16 mm.
double proofStressMpa(PropertyClass property, double diameterMm);

/// Least R_m, MPa (ISO 898-1 table 3).
double leastTensileStrengthMpa(PropertyClass property, double diameterMm);

/// R_p0.2 as the tables of VDI 2230 reckon with it, MPa.
double yieldStressMpa(PropertyClass property, double diameterMm);

/// The proof load as ISO 898-1 tables 5 and 7 print it, kN: nominal stress area (three figures) times proof
/// stress, to three figures; some of class 8.8 are printed otherwise, and the print counts.
double proofLoadKn(PropertyClass property, const MetricThread& thread);

/// The share of the proof load that a clamp force uses: 1 is all of it.
double proofLoadUse(double forceKn, PropertyClass property, const MetricThread& thread);

/// Tension in the stress area of the thread, MPa.
double stressMpa(double forceKn, const MetricThread& thread);

} // namespace gapwise
