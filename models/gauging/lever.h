#pragma once

#include "geometry/base/result.h"
#include "geometry/datum/side.h"
#include "models/gauging/band.h"

#include <string>
#include <string_view>

namespace gapwise {

/// Radial play at the shaft's ends. A dial outboard of a bearing reads the play of both bearings through the
/// lever of the shaft, so a reading without its method says nothing. Rigid shaft, millimetres, plays
/// diametral; the source is geometry alone unless a function says otherwise.

/// Where the shaft is held and where the dials stand, mm.
struct Lever {
    double spanMm = 0.0;          ///< From one bearing's mid-plane to the other's, above 0.
    double noseMm = 0.0;          ///< Dial outboard of the compressor bearing's mid-plane, no less than ℓ/2.
    double turbineMm = 0.0;       ///< Dial outboard of the turbine bearing's mid-plane, no less than ℓ/2.
    double bearingLengthMm = 0.0; ///< ℓ, 0 or more: the bearings' length.

    bool operator==(const Lever&) const = default;
};

/// Errors of a lever that cannot be (a span of 0 or less, a dial within its bearing, no number); `where`
/// names the place of its lengths (`frame.json#/lever`). All other functions want a lever that has none.
Errors leverErrors(const Lever& lever, std::string_view where);

/// Diametral play at each bearing, mm.
struct Plays {
    double compressorMm = 0.0;
    double turbineMm = 0.0;

    bool operator==(const Plays&) const = default;
};

/// What the dials read when one end is pushed up and down, mm.
struct EndReadings {
    double noseMm = 0.0;
    double turbineMm = 0.0;

    bool operator==(const EndReadings&) const = default;
};

/// Rocking: one end is pushed up and down, the shaft tilts from one diagonal to the other. Each reading is
/// the total travel: R = D(1 + p) + D′p, p the dial's overhang over the span, D′ the play of the far bearing.
EndReadings rockingReadings(const Lever& lever, const Plays& plays);

/// The plays that give these readings: the exact inverse of rockingReadings. A play below 0 says that no
/// shaft in two bearings reads so.
Plays playsFrom(const Lever& lever, const EndReadings& readings);

/// The same shaft as it touches at the outer edges of the bearings (s + ℓ, a − ℓ/2, b − ℓ/2). Floating rings
/// tilt along with the shaft, so a healthy reading lies between this model and that of the mid-planes.
Lever atBearingEdges(const Lever& lever);

/// Total travel, mm, when both ends are pushed the same way together, `inboardMm` inboard of the compressor
/// bearing's mid-plane (0 to the span): the play there, without any lever.
double equalLiftReadingMm(const Lever& lever, const Plays& plays, double inboardMm);

struct EndBands {
    Band nose{};
    Band turbine{};
};

/// Between what the two models make of these plays: edges the least, mid-planes the most.
EndBands predictedBand(const Lever& lever, const Plays& plays);

struct PlayBands {
    Band compressor{};
    Band turbine{};
};

/// What the two models make of these readings. A band, never a number: it is compared with the band or the
/// play that the parts give.
PlayBands separatedBand(const Lever& lever, const EndReadings& readings);

/// True when a band lies below 0 as a whole: the two readings do not belong to one shaft and the same method.
bool contradicts(const PlayBands& separated);

/// `compressor bearing 0.13–0.16 mm, turbine bearing 0.13–0.16 mm`. To 0.01 mm and no finer: readings to 0.01
/// do not carry more (0.63 and 0.64 of 0.6261 and 0.6441 move a play of 0.140 to 0.144).
std::string playWords(const PlayBands& separated);

/// The band of play, the same at both bearings, that a reading at this end means: a limit on a reading is a
/// limit on a band of play.
Band equalPlayFor(const Lever& lever, Side end, double readingMm);

/// True when readings in two planes at right angles differ by more than a fifth of their mean: an oval bore
/// or a bush off its pin. Readings above 0. Common practice, no source.
bool planesDiffer(double verticalMm, double horizontalMm);

} // namespace gapwise
