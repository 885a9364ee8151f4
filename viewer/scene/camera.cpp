#include "viewer/scene/camera.h"

#include "geometry/mesh/mesh.h"
#include "viewer/scene/projector.h"

#include <glm/gtc/matrix_transform.hpp>
#include <glm/gtc/type_ptr.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

namespace gapwise {

namespace {

/// The eye stands off by so many times the radius of what it looks at: a long lens, little distortion.
constexpr double kStandOff = 4.0;

glm::dvec3 toGlm(const Vec3& v) {
    return {v.x, v.y, v.z};
}

Matrix toMatrix(const glm::dmat4& m) {
    Matrix matrix{};
    const double* values = glm::value_ptr(m);
    std::transform(values, values + matrix.size(), matrix.begin(),
                   [](double value) { return static_cast<float>(value); });
    return matrix;
}

/// The rectangle at the target that a picture shows, in mm right of and above the line of sight.
struct Window {
    double left = 0.0, right = 0.0, bottom = 0.0, top = 0.0;
};

Window windowOf(const SceneCamera& camera, const PictureSize& size, const PictureArea& area) {
    const double mmPerPixel = camera.heightMm / size.height;
    return {(area.left - size.width / 2.0) * mmPerPixel, (area.right() - size.width / 2.0) * mmPerPixel,
            (size.height / 2.0 - area.bottom()) * mmPerPixel, (size.height / 2.0 - area.top) * mmPerPixel};
}

glm::dmat4 lensMatrix(const SceneCamera& camera, const Window& w) {
    if (camera.projection == Projection::Parallel)
        return glm::ortho(w.left, w.right, w.bottom, w.top, camera.nearMm, camera.farMm);
    const double toNear = camera.nearMm / length(camera.camera.target() - camera.camera.eye());
    return glm::frustum(w.left * toNear, w.right * toNear, w.bottom * toNear, w.top * toNear, camera.nearMm,
                        camera.farMm);
}

double largestDistance(std::span<const Vec3> points, const Vec3& centre) {
    double largest = 0.0;
    for (const Vec3& p : points)
        largest = std::max(largest, length(p - centre));
    return largest;
}

struct PixelBounds {
    double left = std::numeric_limits<double>::max(), right = std::numeric_limits<double>::lowest();
    double top = std::numeric_limits<double>::max(), bottom = std::numeric_limits<double>::lowest();
};

PixelBounds pixelBounds(std::span<const Vec3> points, const SceneCamera& camera, const PictureSize& size) {
    PixelBounds bounds;
    const Projector projector{camera, size};
    for (const Vec3& p : points) {
        const Spot seen = projector.spotOf(p);
        bounds = {std::min(bounds.left, seen.x), std::max(bounds.right, seen.x), std::min(bounds.top, seen.y),
                  std::max(bounds.bottom, seen.y)};
    }
    return bounds;
}

/// What is up in the picture: square to the line of sight even straight from above.
Vec3 uprightOf(const Look& look) {
    const double azimuth = radians(look.azimuth);
    const double elevation = radians(look.elevation);
    return {std::cos(azimuth) * std::sin(elevation), std::cos(elevation),
            -std::sin(azimuth) * std::sin(elevation)};
}

/// Scales the camera so that what is seen is as large as the area, and gives the shift of the target that
/// brings its middle to the middle of the area.
Vec3 fittingShift(SceneCamera& camera, const PixelBounds& seen, const FitInto& into) {
    const double mmPerPixel = camera.heightMm / into.size.height;
    const double seenRight = (seen.left + seen.right - into.size.width) / 2.0;
    const double seenDown = (seen.top + seen.bottom - into.size.height) / 2.0;
    const double areaRight = into.area.left + (into.area.width - into.size.width) / 2.0;
    const double areaDown = into.area.top + (into.area.height - into.size.height) / 2.0;
    const double grow =
        std::max((seen.right - seen.left) / into.area.width, (seen.bottom - seen.top) / into.area.height);
    camera.heightMm *= grow;
    return camera.camera.right() * ((seenRight - grow * areaRight) * mmPerPixel) -
           camera.camera.up() * ((seenDown - grow * areaDown) * mmPerPixel);
}

} // namespace

bool PictureArea::overlaps(const PictureArea& other) const {
    return left < other.right() && other.left < right() && top < other.bottom() && other.top < bottom();
}

bool PictureArea::contains(const PictureArea& other) const {
    return left <= other.left && other.right() <= right() && top <= other.top && other.bottom() <= bottom();
}

Matrix SceneCamera::viewMatrix() const {
    return toMatrix(glm::lookAt(toGlm(camera.eye()), toGlm(camera.target()), toGlm(camera.up())));
}

Matrix SceneCamera::projectionMatrix(double aspect) const {
    const double half = heightMm / 2.0;
    return toMatrix(lensMatrix(*this, {-half * aspect, half * aspect, -half, half}));
}

Matrix SceneCamera::projectionMatrix(const PictureSize& size, const PictureArea& area) const {
    return toMatrix(lensMatrix(*this, windowOf(*this, size, area)));
}

PicturePoint SceneCamera::toPicture(const Vec3& point, const PictureSize& size) const {
    const Vec3 fromEye = point - camera.eye();
    const double depth = dot(fromEye, camera.forward());
    const double atTarget =
        projection == Projection::Parallel ? 1.0 : length(camera.target() - camera.eye()) / depth;
    const double pixelsPerMm = size.height / heightMm * atTarget;
    return {size.width / 2.0 + dot(fromEye, camera.right()) * pixelsPerMm,
            size.height / 2.0 - dot(fromEye, camera.up()) * pixelsPerMm, depth};
}

Look lookFrom(Side side) {
    return {.azimuth = Degrees{90.0 * signOf(side)}, .elevation = Degrees{0.0}};
}

Vec3 towardEye(const Look& look) {
    const double azimuth = radians(look.azimuth);
    const double elevation = radians(look.elevation);
    return {-std::cos(azimuth) * std::cos(elevation), std::sin(elevation),
            std::sin(azimuth) * std::cos(elevation)};
}

SceneCamera fittedCamera(std::span<const Vec3> points, const Look& look, Projection projection,
                         const FitInto& into) {
    return fittedCamera(points, Camera{towardEye(look), Vec3{}, uprightOf(look)}, projection, into);
}

SceneCamera fittedCamera(std::span<const Vec3> points, const Camera& direction, Projection projection,
                         const FitInto& into) {
    assert(!points.empty() && into.area.width > 0.0 && into.area.height > 0.0);
    const Bounds bounds = boundsOf(points);
    Vec3 target = (bounds.low + bounds.high) * 0.5;
    const double radius = std::max(1e-3, largestDistance(points, target));
    const Vec3 standOff = direction.forward() * (-kStandOff * radius);
    const Vec3 up = direction.up();
    SceneCamera fitted{.projection = projection,
                       .heightMm = 2.0 * radius,
                       .nearMm = kStandOff * radius * 0.5,
                       .farMm = kStandOff * radius * 1.75};
    constexpr int kRounds = 12; // A parallel picture fits after one, a perspective one draws near quickly.
    for (int round = 0; round < kRounds; ++round) {
        fitted.camera = Camera{target + standOff, target, up};
        const double height = fitted.heightMm;
        const Vec3 shift = fittingShift(fitted, pixelBounds(points, fitted, into.size), into);
        target = target + shift;
        constexpr double kFits = 1e-12;
        if (length(shift) <= kFits * radius && std::abs(fitted.heightMm - height) <= kFits * height)
            break;
    }
    fitted.camera = Camera{target + standOff, target, up};
    return fitted;
}

} // namespace gapwise
