#pragma once

#include "geometry/datum/camera.h"

#include <array>
#include <cstdint>
#include <span>

namespace gapwise {

/// Width and height of a picture in pixels.
struct PictureSize {
    int width = 1600;
    int height = 900;
    double aspect() const { return static_cast<double>(width) / height; }
    bool operator==(const PictureSize&) const = default;
};

/// A rectangle in a picture, in pixels from its upper left corner.
struct PictureArea {
    double left = 0.0;
    double top = 0.0;
    double width = 0.0;
    double height = 0.0;

    double right() const { return left + width; }
    double bottom() const { return top + height; }
    bool overlaps(const PictureArea& other) const;
    bool contains(const PictureArea& other) const;
};

/// A place in a picture, in pixels.
struct Spot {
    double x = 0.0;
    double y = 0.0;
    bool operator==(const Spot&) const = default;
};

/// A point in a picture, in pixels from its upper left corner, and its distance from the eye along the line
/// of sight in mm.
struct PicturePoint {
    double x = 0.0;
    double y = 0.0;
    double depthMm = 0.0;
};

/// Columns of a 4 × 4 matrix, as graphics libraries want it.
using Matrix = std::array<float, 16>;

enum class Projection { Parallel, Perspective };

/// A camera with a lens.
struct SceneCamera {
    Camera camera{{0.0, 0.0, 1000.0}, {0.0, 0.0, 0.0}, {0.0, 1.0, 0.0}};
    Projection projection = Projection::Parallel;
    double heightMm = 100.0; ///< What the picture's height spans at the target.
    double nearMm = 1.0;     ///< Nothing nearer to the eye than this is seen,
    double farMm = 2000.0;   ///< nothing farther.

    Matrix viewMatrix() const;
    /// For the whole picture.
    Matrix projectionMatrix(double aspect) const;
    /// For a piece of the picture: `area` fills the viewport.
    Matrix projectionMatrix(const PictureSize& size, const PictureArea& area) const;

    PicturePoint toPicture(const Vec3& point, const PictureSize& size) const;
};

/// From where one looks. Azimuth 0 is square to the shaft with the turbine on the left, 90 from the
/// compressor side, -90 from the turbine side; elevation is the height of the eye above the shaft's level,
/// inlet on top.
struct Look {
    Degrees azimuth{0.0};   ///< In [-180, 180].
    Degrees elevation{0.0}; ///< In [-90, 90].
    bool operator==(const Look&) const = default;
};

/// The levelled look at an end, inlet on top.
Look lookFrom(Side side);

/// Unit vector from the target to the eye.
Vec3 towardEye(const Look& look);

/// A picture, and the part of it that is meant for what is looked at.
struct FitInto {
    PictureSize size{};
    PictureArea area{}; ///< Not empty.
};

/// A camera that looks so and holds every one of `points` inside the area, as large as it goes. `points` must
/// not be empty.
SceneCamera fittedCamera(std::span<const Vec3> points, const Look& look, Projection projection,
                         const FitInto& into);

/// The same with the direction and the upright of `direction`, whose distance does not matter.
SceneCamera fittedCamera(std::span<const Vec3> points, const Camera& direction, Projection projection,
                         const FitInto& into);

} // namespace gapwise
