#include "viewer/scene/scene.h"

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
        for (const TriangleMesh* mesh : {&item.mesh->body.faces, &item.mesh->caps})
            for (const Vec3& p : mesh->positions)
                all.push_back(drawn.point(p));
    }
    return all;
}

} // namespace gapwise
