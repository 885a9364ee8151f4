#include "viewer/scene/outline.h"

#include "viewer/scene/projector.h"

#include <algorithm>
#include <optional>

namespace gapwise {

namespace {

/// Gathers the bounds of what is seen, and its highest and lowest point.
class OutlineFinder {
public:
    void add(const Spot& spot, const Vec3& point) {
        if (first_ || spot.y < outlined_.upper.y) {
            outlined_.upper = spot;
            outlined_.upperPoint = point;
        }
        if (first_ || spot.y > outlined_.lower.y) {
            outlined_.lower = spot;
            outlined_.lowerPoint = point;
        }
        left_ = first_ ? spot.x : std::min(left_, spot.x);
        right_ = first_ ? spot.x : std::max(right_, spot.x);
        first_ = false;
    }

    Outlined found() const {
        Outlined outlined = outlined_;
        outlined.area = {left_, outlined.upper.y, right_ - left_, outlined.lower.y - outlined.upper.y};
        return outlined;
    }

private:
    Outlined outlined_{};
    double left_ = 0.0;
    double right_ = 0.0;
    bool first_ = true;
};

/// The middle of the widest piece of a cut face above (`sense` 1) or below (-1) the shaft; of a piece across
/// the shaft its middle, whatever the sense. Nothing where nothing is cut there.
std::optional<Vec3> cutPoint(const SceneItem& item, double sense) {
    const TriangleMesh& caps = item.mesh->caps;
    const Pose drawn = item.drawnPose();
    std::optional<Vec3> best;
    double widest = 0.0;
    for (const auto& [a, b, c] : caps.triangles) {
        const Vec3 p = caps.positions[a];
        const Vec3 q = caps.positions[b];
        const Vec3 r = caps.positions[c];
        // How round it is counts, not only how large: a leader to the middle of a sliver seems to point
        // beside.
        const double longest = std::max({length(q - p), length(r - q), length(p - r)});
        const double width = longest > 0.0 ? length(cross(q - p, r - p)) / longest : 0.0;
        const Vec3 middle = drawn.point((p + q + r) * (1.0 / 3.0));
        if (middle.y * sense >= 0.0 && width > widest) {
            widest = width;
            best = middle;
        }
    }
    return best;
}

} // namespace

Outlined outlineOf(const SceneItem& item, const SceneCamera& camera, const PictureSize& size) {
    const Pose drawn = item.drawnPose();
    const Projector projector{camera, size};
    OutlineFinder finder;
    for (const Vec3& own : item.mesh->body.faces.positions) {
        const Vec3 point = drawn.point(own);
        finder.add(projector.spotOf(point), point);
    }
    Outlined outlined = finder.found();
    const auto pointAt = [&](const Vec3& point, Spot& spot, Vec3& kept) {
        const PicturePoint seen = camera.toPicture(point, size);
        spot = {seen.x, seen.y};
        kept = point;
    };
    const auto above = cutPoint(item, 1.0);
    const auto below = cutPoint(item, -1.0);
    // What is cut on one side only (a ring through its gap) is pointed at there from both.
    if (above || below) {
        pointAt(above ? *above : *below, outlined.upper, outlined.upperPoint);
        pointAt(below ? *below : *above, outlined.lower, outlined.lowerPoint);
    }
    return outlined;
}

} // namespace gapwise
