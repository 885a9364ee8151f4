#pragma once

#include "geometry/datum/datum.h"

#include <optional>

namespace gapwise {

/// From where the person looks at the picture.
enum class LookKind {
    WhereIStand,    ///< At the bench, in the attitude of the piece.
    FromCompressor, ///< Levelled, drain down.
    FromTurbine,    ///< Levelled, drain down.
    Beside,         ///< Square to the shaft.
    Free,           ///< Turned by hand.
    BothEnds        ///< Both ends side by side.
};

/// Everything about the look: none of it changes the cartridge.
struct Standpoint {
    LookKind kind = LookKind::Beside;
    Observer observer{}; ///< How far he walked round, and the end of a level piece he looks at.
    /// Of the free look, round the bench's upright from where the person stands. Of a level piece 0 is square
    /// to the shaft with the turbine on the left, 90 from the compressor side; of an upright one 0 is the
    /// front.
    Degrees freeAzimuth{-35.0};
    Degrees freeElevation{20.0};
    double pulledApart = 0.0; ///< 0 assembled … 1 wholly pulled apart.
    double zoom = 1.0;        ///< 0.5 … 8.
    bool section = false;

    bool operator==(const Standpoint&) const = default;
};

/// The view that the picture gives: side and φ. Nothing from beside, in the split look, or beyond 60° off the
/// axis.
std::optional<View> pictureViewOf(const Standpoint& standpoint, const Attitude& attitude);

/// Eye and up of the picture's camera in the datum axes, as a Camera at a distance of 1000 mm from the
/// origin. Not for BothEnds.
Camera pictureCameraOf(const Standpoint& standpoint, const Attitude& attitude);

} // namespace gapwise
