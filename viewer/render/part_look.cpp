#include "viewer/render/part_look.h"

#include <cmath>

namespace gapwise {

namespace {

constexpr double kEdgeWidth = 1.0; ///< Of true edges, in pixels of a picture 900 high, as all that follows.
constexpr double kOutlineWidth = 1.3;
constexpr double kCutWidth = 1.9;
constexpr double kHatchSpacing = 8.5;
constexpr double kStripeSpacing = 9.0;

float f(double value) {
    return static_cast<float>(value);
}

Colour mixed(const Colour& a, const Colour& b, double share) {
    return {a.red + (b.red - a.red) * share, a.green + (b.green - a.green) * share,
            a.blue + (b.blue - a.blue) * share};
}

} // namespace

std::array<float, 3> rgb(const Colour& colour) {
    return {f(colour.red), f(colour.green), f(colour.blue)};
}

std::array<float, 4> rgba(const Colour& colour, double alpha) {
    return {f(colour.red), f(colour.green), f(colour.blue), f(alpha)};
}

Colour tintOf(const SceneItem& item) {
    constexpr Colour kBroken{0.95, 0.66, 0.48};
    constexpr double kAccentShare = 0.5;
    const Colour tint = item.state == ItemState::Broken ? kBroken : item.tint;
    return item.inHand ? mixed(tint, kAccent, kAccentShare) : tint;
}

std::array<float, 3> hatchAcross(const Shot& shot, const SceneItem& item) {
    // The plane of a section contains the shaft; the direction in it square to the shaft is called outward.
    // Of a quarter's two planes each lies square to the other's outward direction, so that the sum of both
    // hatches either plane as if it were alone, and the lines meet at the shaft.
    const double spacing = kHatchSpacing * item.hatch.spacing * shot.style.lineScale * mmPerPixel(shot);
    const std::vector<Vec3>& normals = item.mesh->caps.normals;
    const auto outwardOf = [&](const Vec3& normal) {
        return cross(Vec3{0.0, 0.0, 1.0}, item.pose.direction(normal));
    };
    Vec3 outward = normals.empty() ? Vec3{0.0, 1.0, 0.0} : outwardOf(normals.front());
    if (!normals.empty() && !(normals.front() == normals.back()))
        outward = outward - outwardOf(normals.back());
    const double angle = radians(item.hatch.angle);
    const Vec3 across = (Vec3{0.0, 0.0, -std::sin(angle)} + outward * std::cos(angle)) * (1.0 / spacing);
    return {f(across.x), f(across.y), f(across.z)};
}

double mmPerPixel(const Shot& shot) {
    return shot.camera.heightMm / shot.size.height;
}

double edgeWidth(const DrawStyle& style) {
    return kEdgeWidth * style.lineScale;
}

double outlineWidth(const DrawStyle& style) {
    return kOutlineWidth * style.lineScale;
}

double cutWidth(const DrawStyle& style) {
    return kCutWidth * style.lineScale;
}

double stripeSpacing(const DrawStyle& style) {
    return kStripeSpacing * style.lineScale;
}

} // namespace gapwise
