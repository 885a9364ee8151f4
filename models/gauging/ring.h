#pragma once

#include "models/gauging/band.h"

namespace gapwise {

/// Rings: in their groove, in their bore, and hot. Millimetres and kelvins above 20 °C.

/// Groove width − ring width, mm: seal rings and snap rings alike.
double sideClearanceMm(double grooveMm, double ringMm);

/// The same of two tolerances: least groove on widest ring, and the other way about.
Band sideClearance(const Band& grooveMm, const Band& ringMm);

/// How much wider a groove is at its rim than at its root, mm. A flared groove is worn even if its root is in
/// size.
double flareMm(double atRimMm, double atRootMm);

/// What the gap between a ring's ends gains when its bore grows by so much in diameter, mm: π·ΔD.
double gapGrowthMm(double boreGrowthMm);

/// A ring in its bore, and what heat does to both.
struct RingHeat {
    double boreMm = 0.0;    ///< Diameter of the bore at 20 °C, above 0.
    double coldGapMm = 0.0; ///< Between the ends, the ring in that bore at 20 °C.
    double ringPerK = 0.0;  ///< Linear expansion of each, 1/K.
    double borePerK = 0.0;
    double ringRiseK = 0.0; ///< Above 20 °C when it runs.
    double boreRiseK = 0.0;
};

/// The gap at temperature: πD(1 + α_B ΔT_B) − (πD − g₀)(1 + α_R ΔT_R). Below 0 is what the ends would overlap
/// by, did they not butt.
double hotGapMm(const RingHeat& heat);

/// To first order: g₀ + πD(α_B ΔT_B − α_R ΔT_R). For a check by hand; hotGapMm decides.
double hotGapFirstOrderMm(const RingHeat& heat);

/// True when the ends meet at temperature; touching is meeting.
bool endsButt(const RingHeat& heat);

/// The cold gap that leaves `hotGapMm` at temperature: the exact inverse. `heat.coldGapMm` is not read.
double coldGapForMm(const RingHeat& heat, double hotGapMm);

/// Shape of a ring's joint.
enum class JointForm { Straight, Stepped };

/// True when one can look through the joint from side to side: a straight one always, a stepped one from the
/// gap at which its overlap has gone. From memory.
bool leaksThrough(JointForm joint, double gapMm, double overlapMm);

/// The passage that an open joint leaves, mm²: the gap times the ring's radial height, or 0 where nothing
/// leaks through.
double leakAreaMm2(JointForm joint, double gapMm, double overlapMm, double radialMm);

} // namespace gapwise
