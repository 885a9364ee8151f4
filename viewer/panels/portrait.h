#pragma once

#include "geometry/datum/angle.h"
#include "models/frame/ids.h"
#include "viewer/panels/area.h"

namespace gapwise {

/// In a look at an end, how far the part reaches from the middle: a share of half the smaller side. The rest
/// is for the dial around it.
inline constexpr double kPortraitReach = 0.70;

/// A place on the screen for the picture of one part alone.
struct Portrait {
    enum class Look { FromCompressor, FromTurbine, Turned };

    Look look = Look::Turned;
    PartId part{};
    bool asTheRulesWant = false; ///< It lies as it must sit; else its index is at the top and its reference
                                 ///< face looks to the compressor.
    bool onItsAxis = true;       ///< Its axis is in the middle; else the picture is filled with it.
    Degrees azimuth{0.0};        ///< Of a turned look, as in About.
    Degrees elevation{0.0};
    Area area{};
};

} // namespace gapwise
