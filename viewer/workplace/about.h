#pragma once

#include "geometry/datum/angle.h"
#include "models/frame/ids.h"

namespace gapwise {

/// The sheet about a part that lies before the person, and how he has turned its picture.
struct About {
    PartId part{};
    /// Of the eye: azimuth 0 is square to the part's axis, 90 from the compressor side.
    Degrees azimuth{38.0};   ///< In [-180, 180].
    Degrees elevation{20.0}; ///< In [-90, 90].

    bool operator==(const About&) const = default;
};

} // namespace gapwise
