#include "geometry/datum/camera.h"

#include "geometry/datum/pose.h"

#include <cassert>
#include <cmath>

namespace gapwise {

Camera::Camera(const Vec3& eye, const Vec3& target, const Vec3& up) : eye_{eye}, target_{target}, up_{up} {
    assert(length(target - eye) > 0.0);
    assert(length(cross(target - eye, up)) > 0.0);
}

Vec3 Camera::forward() const {
    return normalized(target_ - eye_);
}

Vec3 Camera::right() const {
    return normalized(cross(forward(), up_));
}

Vec3 Camera::up() const {
    return cross(right(), forward());
}

Degrees Camera::seen(const Clock& clock) const {
    const Vec3 direction = directionOf(clock);
    return wrapped(degreesFromRadians(std::atan2(dot(direction, right()), dot(direction, up()))));
}

std::optional<View> Camera::view() const {
    if (offAxis() > kNoClock + kAngleRounding)
        return std::nullopt;
    const Side side = forward().z <= 0.0 ? Side::Compressor : Side::Turbine;
    return View{side, seen(Clock::seenFrom(Side::Compressor, Degrees{0.0}))};
}

Degrees Camera::offAxis() const {
    // Not acos(z): near the axis it loses half the digits.
    const Vec3 sight = forward();
    return degreesFromRadians(std::atan2(std::hypot(sight.x, sight.y), std::abs(sight.z)));
}

Degrees obliqueReadingError(Degrees offAxis) {
    assert(offAxis < Degrees{90.0});
    const double c = std::cos(radians(offAxis));
    return degreesFromRadians(std::atan((1.0 - c) / (2.0 * std::sqrt(c))));
}

} // namespace gapwise
