#pragma once

#include "geometry/datum/clock.h"
#include "models/gauging/lever.h"

#include <optional>
#include <string>

namespace gapwise {

/// Tip clearance at four points. The wheel rests, the housing lies level with its top up, the same blade is
/// turned to each point. Millimetres; right and up are those of the person who looks, so every result keeps
/// its side. Geometry of a rigid round rotor in a round casing, unless a function says otherwise.

/// Feeler gaps at 12, 3, 6 and 9 o'clock as one side sees them, mm, 0 or more.
struct FourGaps {
    double at12Mm = 0.0;
    double at3Mm = 0.0;
    double at6Mm = 0.0;
    double at9Mm = 0.0;

    bool operator==(const FourGaps&) const = default;
};

/// The smallest of the four.
double leastOf(const FourGaps& gaps);

/// How far the rotor's axis stands from the casing's, as an observer at one end sees it, mm.
struct Offset {
    double rightMm = 0.0; ///< Positive: to his right.
    double upMm = 0.0;    ///< Positive: toward the top.

    bool operator==(const Offset&) const = default;
};

/// √(right² + up²), mm.
double eccentricityMm(const Offset& offset);

/// Offsets below this point nowhere, mm: no feeler tells them from the middle.
inline constexpr double kLeastEccentricityMm = 0.0005;

/// Which way the rotor stands off, or nothing when it stands off less than kLeastEccentricityMm.
std::optional<Clock> directionOf(const Offset& offset, Side seenFrom);

/// The same in the datum axes: x is to the right of someone who looks from the compressor side only, so it
/// changes its sign for readings from the turbine side; y is up for both.
struct DatumOffset {
    double xMm = 0.0;
    double yMm = 0.0;

    bool operator==(const DatumOffset&) const = default;
};
DatumOffset inDatum(const Offset& offset, Side seenFrom);

/// What four gaps tell.
struct FourPoint {
    Side seenFrom = Side::Compressor;
    double meanMm = 0.0;
    Offset offset{};                  ///< Half the differences of opposite gaps: (9 − 3)/2, (6 − 12)/2.
    double eccentricityMm = 0.0;      ///< Opposite gaps along it differ by twice this.
    std::optional<Clock> direction{}; ///< Toward the smallest gap; see directionOf.
    double consistencyMm = 0.0;       ///< (12 + 6) − (3 + 9): 0 for a round casing read without a slip.
    double leastMm = 0.0;             ///< Mean − eccentricity: may lie between the four points.
};
FourPoint fourPointOf(const FourGaps& gaps, Side seenFrom);

/// `0.071 mm low, 8° past 6:00 seen from the compressor side`, or `centred` (see directionOf). Low, high,
/// left or right is what it is nearest to, as that side sees it.
std::string offsetWords(const Offset& offset, Side seenFrom);

/// How low a resting rotor lies in a plane `outboardMm` outboard of that side's bearing, mm, positive is
/// down. It lies at the bottom of both bearings, and the lever carries their difference outboard: D/2 + (D −
/// D′)/2·x/s. With equal bearings D/2 everywhere.
double restSagMm(const Lever& lever, const Plays& plays, Side side, double outboardMm);

/// What is left of an offset when the sag of the resting rotor is taken off it: the casing's own error.
Offset casingError(const Offset& read, double sagMm);

/// How far rocking by hand moves that plane either way of its centred place, mm:
/// [D(1 + x/s) + D′·x/s]/2, D of the bearing on that side.
double rockAmplitudeMm(const Lever& lever, const Plays& plays, Side side, double outboardMm);

/// What stays open at the tightest of the four points when the rotor is rocked toward it, mm; 0 or less
/// touches. The resting rotor has sunk by the sag already: g − (A − sag).
double leftWhenRockedMm(double leastOfFourMm, double amplitudeMm, double sagMm);

/// What a contact by hand means.
enum class Rocking {
    Clear,      ///< It cannot touch.
    Remark,     ///< It touches with plays that are inside their limit: to be remarked, not a rub.
    BeyondLimit ///< It touches, and a play is beyond its limit: the bearings are looked at first.
};

/// `playLimitMm` is the most that either bearing's play may be; the boundary holds. Without a limit every
/// contact is a remark.
Rocking rockingOutcome(double leftMm, const Plays& plays, std::optional<double> playLimitMm);

/// `0.17 mm is left when it is rocked by hand`, and so on for the others.
std::string rockingWords(Rocking outcome, double leftMm);

} // namespace gapwise
