#pragma once

#include "geometry/datum/angle.h"
#include "models/gauging/repeats.h"

#include <span>

namespace gapwise {

/// What a dial indicator or a depth micrometer on the shaft's end tells. Millimetres.

/// The dial with the rotor pushed fully to each end, held. It may stand anywhere and count either way: only
/// its travel says something.
struct PushPull {
    double towardTurbineMm = 0.0;
    double towardCompressorMm = 0.0;
};

/// Axial clearance of one push and pull, mm: the travel, without sign.
double axialClearanceMm(const PushPull& read);

/// The same of several; the mean is the clearance. At least one.
Repeats axialClearance(std::span<const PushPull> reads);

/// A held reading that springs back by more when it is let go means that the plate or bearing flexes or is
/// not seated, mm. Common practice, no source.
inline constexpr double kMostSpringBackMm = 0.010;

/// True when it springs back by more than kMostSpringBackMm.
bool springsBack(double heldMm, double releasedMm);

/// Total indicator reading of a full turn: twice the eccentricity of a round surface.
double totalReadingMm(double eccentricityMm);
double eccentricityFromTotalMm(double totalMm);

/// Travel along the axis, mm, when the stem stands askew by less than 90°: reading × cos.
double alongAxisMm(double readMm, Degrees askew);

/// Depth from the bridge to the shaft's end: the bridge is turned by half a turn and the two are averaged.
double noseDepthMm(double oneWayMm, double turnedMm);

/// How nose depths in the two pushed positions and the dial must agree, mm. Common practice, no source.
inline constexpr double kNoseDepthAgreementMm = 0.02;

/// Nose depths N with the rotor pushed to each end beside the axial clearance of the dial.
struct NoseCheck {
    double clearanceMm = 0.0; ///< N_T − N_C: the same clearance a second way.
    double offMm = 0.0;       ///< That less the dial's.
    bool agrees = false;      ///< Within kNoseDepthAgreementMm; the boundary holds.
};
NoseCheck noseCheck(double towardTurbineMm, double towardCompressorMm, double dialMm);

} // namespace gapwise
