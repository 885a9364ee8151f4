#include "viewer/scene/scene.h"

#include "geometry/mesh/mesh.h"

#include <algorithm>

namespace gapwise {

Pose SceneItem::drawnPose() const {
    Pose drawn = pose;
    drawn.shift.z += pulledMm;
    return drawn;
}

const SceneItem* Scene::item(const PartId& part) const {
    const auto found =
        std::ranges::find_if(items, [&](const SceneItem& candidate) { return candidate.part == part; });
    return found == items.end() ? nullptr : &*found;
}

std::vector<Vec3> Scene::points() const {
    std::vector<Vec3> all;
    for (const SceneItem& item : items) {
        const Pose drawn = item.drawnPose();
        for (const Vec3& p : item.uncut().body.faces.positions)
            all.push_back(drawn.point(p));
    }
    return all;
}

Pose inGroundAxes(const Ground& ground, const Pose& pose) {
    const Pose& axes = ground.axes;
    const auto told = [&](const Vec3& v) {
        return Vec3{dot(v, axes.xAxis), dot(v, axes.yAxis), dot(v, axes.zAxis)};
    };
    return {told(pose.xAxis), told(pose.yAxis), told(pose.zAxis), told(pose.shift)};
}

std::optional<BenchTop> benchTopOf(const Scene& scene) {
    std::vector<Vec3> points = scene.points();
    if (points.empty())
        return std::nullopt;
    const Pose back = inGroundAxes(scene.ground, Pose{});
    for (Vec3& point : points)
        point = back.point(point);
    const Bounds bounds = boundsOf(points);
    const Vec3 size = bounds.high - bounds.low;
    constexpr double kRoomShare = 0.34;
    const double room = kRoomShare * std::max({size.x, size.y, size.z});
    const Vec3 middle = (bounds.high + bounds.low) * 0.5;
    return BenchTop{.middle = scene.ground.axes.direction({middle.x, bounds.low.y, middle.z}),
                    .halfWidth = size.x / 2.0 + room,
                    .halfDepth = size.z / 2.0 + room};
}

} // namespace gapwise
