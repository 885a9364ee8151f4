#pragma once

#include "geometry/datum/datum.h"
#include "viewer/scene/section.h"

#include <optional>

namespace gapwise {

/// From where the person looks at the picture.
enum class LookKind {
    WhereIStand,    ///< At the bench, in the attitude of the piece; pulled apart from a little aside.
    FromCompressor, ///< Levelled, drain down.
    FromTurbine,    ///< Levelled, drain down.
    Beside,         ///< Square to the shaft, a little from above.
    Free,           ///< Turned by hand.
    BothEnds        ///< Both ends side by side.
};

inline constexpr double kLeastZoom = 0.5;
inline constexpr double kMostZoom = 8.0;

/// Everything about the look: none of it changes the cartridge.
struct Standpoint {
    LookKind kind = LookKind::WhereIStand;
    Observer observer{}; ///< How far he walked round, and the end of a level piece he looks at.
    /// Of the free look, round the bench's upright from where the person stands. Of a level piece 0 is square
    /// to the shaft with the turbine on the left, 90 from the compressor side; of an upright one 0 is the
    /// front.
    Degrees freeAzimuth{-35.0};
    Degrees freeElevation{20.0};
    double pulledApart = 0.0;         ///< 0 assembled … 1 wholly pulled apart.
    double zoom = 1.0;                ///< kLeastZoom … kMostZoom.
    std::optional<Section> section{}; ///< How the piece is cut open.
    bool casings = false; ///< The casings that are in place are shown; else they are out of sight.

    bool operator==(const Standpoint&) const = default;
};

/// The view that the picture gives: side and φ. Nothing from beside, in the split look, or beyond 60° off the
/// axis.
std::optional<View> pictureViewOf(const Standpoint& standpoint, const Attitude& attitude);

/// How the picture is held: the camera at a distance of 1000 mm from the origin, and the bench under the
/// piece.
struct Stance {
    Camera camera{{0.0, 0.0, 1000.0}, {}, {0.0, 1.0, 0.0}};
    Pose bench{};         ///< Columns right, up and toward whoever stands at the front, in the datum axes.
    bool onBench = false; ///< False where the piece is levelled for the picture: no bench is drawn then.
};

/// Of the look at both ends: the piece as it lies, from where the person stands.
///
/// An upright piece that is pulled apart would be a column too high for any screen: it is laid on its side
/// for the picture, the turbine on the left, what faces the person still toward him.
Stance stanceOf(const Standpoint& standpoint, const Attitude& attitude);

/// Whether the picture lays an upright piece on its side.
bool laidOnItsSide(const Standpoint& standpoint, const Attitude& attitude);

/// The camera of the stance.
Camera pictureCameraOf(const Standpoint& standpoint, const Attitude& attitude);

/// The free look that goes on from where `standpoint` looks now.
Standpoint freed(const Standpoint& standpoint, const Attitude& attitude);

/// On the way from one stance to another, `share` in [0, 1]. When the piece is turned the bench stands still
/// in the picture and the piece moves; when the person walks the eye moves round both.
Stance between(const Stance& from, const Stance& to, double share);

} // namespace gapwise
