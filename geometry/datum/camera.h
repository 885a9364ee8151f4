#pragma once

#include "geometry/datum/vector.h"
#include "geometry/datum/view.h"

#include <optional>

namespace gapwise {

/// A camera in the datum axes: where the eye is, where it looks, and what it holds upright.
class Camera {
public:
    /// `eye` and `target` in mm; `up` need not be square to the line of sight, but not along it.
    Camera(const Vec3& eye, const Vec3& target, const Vec3& up);

    const Vec3& eye() const { return eye_; }
    const Vec3& target() const { return target_; }
    Vec3 forward() const;
    Vec3 right() const; ///< forward × up.
    Vec3 up() const;    ///< Square to the line of sight.

    /// θ_seen = atan2(P·R, P·U) of a clock's direction P, in [0, 360): exact for any free look.
    Degrees seen(const Clock& clock) const;

    /// The side on which the eye lies along Z, seen from the target (a part pulled out past the eye is looked
    /// at from its inner end), and φ from the picture. Nothing beyond kNoClock off the axis; exactly there it
    /// holds.
    std::optional<View> view() const;

    /// Angle between the line of sight and the shaft, in [0, 90].
    Degrees offAxis() const;

private:
    Vec3 eye_;
    Vec3 target_;
    Vec3 up_;
};

/// More than this off the axis, a clock is read *obliquely*: say so.
inline constexpr Degrees kOblique{15.0};
/// Beyond this off the axis no clock is offered.
inline constexpr Degrees kNoClock{60.0};

/// Largest error of a clock read without undoing a tilt t about the picture's horizontal or vertical:
/// atan((1 - cos t) / (2 √cos t)). 1.0° at 15°, 1.1° at 16°, 4.1° at 30°, 12.6° at 50°. About a slanting line
/// the top itself is drawn askew, and a clock read from it may be off by up to twice as much. `offAxis` is
/// below 90.
Degrees obliqueReadingError(Degrees offAxis);

} // namespace gapwise
