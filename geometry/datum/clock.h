#pragma once

#include "geometry/base/result.h"
#include "geometry/datum/angle.h"
#include "geometry/datum/side.h"

#include <string>
#include <string_view>

namespace gapwise {

/// A direction around the shaft: degrees clockwise from 12 (the oil inlet), always as seen from a side.
/// Stored once, as seen from the compressor side with the inlet on top, and turned at the edges.
class Clock {
public:
    static Clock seenFrom(Side side, Degrees clockwise);

    /// As seen from `side` with the inlet on top, in [0, 360).
    Degrees from(Side side) const;

    /// The direction `offset` further on, clockwise as seen from `side`.
    Clock turned(Side side, Degrees offset) const;

private:
    explicit Clock(Degrees fromCompressor) : fromCompressor_{fromCompressor} {}
    Degrees fromCompressor_;
};

/// Smallest angle between two clocks, in [0, 180].
Degrees apart(const Clock& a, const Clock& b);

/// Degrees as `h:mm` with hours 1 to 12, to the nearest minute (half a degree): 0 is `12:00`, 122 is `4:04`.
std::string hoursAndMinutes(Degrees clockwise);

/// The nearest whole hour, 1 to 12; a half hour rounds up.
int nearestHour(Degrees clockwise);

/// Reads `h:mm` with hours 1 to 12, or degrees in [0, 360) as `90deg`. `where` names the option or file in an
/// error.
Result<Degrees> parseClockwise(std::string_view text, std::string_view where);

/// Reads `compressor` or `turbine`.
Result<Side> parseSide(std::string_view text, std::string_view where);

} // namespace gapwise
