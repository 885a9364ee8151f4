#pragma once

#include "models/gauging/band.h"

#include <span>
#include <vector>

namespace gapwise {

/// The form of one diameter, and clearances of the parts that make a bearing. Millimetres.

/// Readings of one plane, one for each direction (or repeat of it).
using PlaneReadings = std::vector<double>;

/// What the readings of one diameter tell.
struct DiameterForm {
    double leastMm = 0.0;
    double mostMm = 0.0;
    double meanMm = 0.0;    ///< Of all readings.
    double ovalityMm = 0.0; ///< Greatest difference between directions of one plane.
    double taperMm = 0.0;   ///< Greatest difference between the means of planes.
};

/// At least one plane, each with at least one reading. One direction tells no ovality, one plane no taper: 0.
DiameterForm formOf(std::span<const PlaneReadings> planes);

/// Greatest − least, mm: parallelism of a thickness, total indicator reading of a full turn. At least one
/// reading.
double rangeMm(std::span<const double> readings);

/// How deep a running track lies, mm: mean thickness at the unworn hub − least thickness in the track. Both
/// have at least one reading. A flat anvil bridges the track and reads none.
double trackDepthMm(std::span<const double> atHub, std::span<const double> inTrack);

/// The four diameters of one floating bearing: of parts as measured, or of their tolerances.
struct BearingSizes {
    Band journalMm{};
    Band insideMm{};  ///< Bearing, inner diameter.
    Band outsideMm{}; ///< Bearing, outer diameter.
    Band boreMm{};
};

/// Diametral clearances, from the closest pair to the loosest.
struct BearingClearances {
    Band inner{}; ///< Bearing on journal.
    Band outer{}; ///< Bore round bearing.
    Band total{}; ///< Their sum: what the shaft can move. A pinned bush adds the outer one while its film is
                  ///< free.
};

/// The pair decides, not the single part: four parts each just inside their limits may give a clearance
/// outside of its own.
BearingClearances clearancesOf(const BearingSizes& sizes);

} // namespace gapwise
