#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"
#include "viewer/scene/scene.h"

#include <optional>
#include <vector>

namespace gapwise {

/// An empty seat as it lies in a scene: a circle square to the shaft, as wide as the part that may go in.
struct SeatPlace {
    SeatId seat{};
    double zMm = 0.0; ///< Of the middle of the part once it sits there, with what carries it pulled apart.
    double radiusMm = 0.0;

    /// The point of the circle at a clock, in the datum axes.
    Vec3 at(const Clock& clock) const;
};

/// The empty seats that could take a part, the wrong ones among them.
std::vector<SeatPlace> seatPlacesFor(const Frame& frame, const Build& build, const Scene& scene,
                                     const PartId& part);

/// A place in the picture on the circle of a seat.
struct SeatHit {
    SeatId seat{};
    Clock clock =
        Clock::seenFrom(Side::Compressor, Degrees{0.0}); ///< Where on the circle, in the housing's clock.
    double pixels = 0.0;                                 ///< How far from it.
};

/// The seat whose circle passes nearest to a place in the picture; nothing when none passes within 14 pixels.
std::optional<SeatHit> seatAt(const std::vector<SeatPlace>& places, const SceneCamera& camera,
                              const PictureSize& size, const Spot& spot);

} // namespace gapwise
