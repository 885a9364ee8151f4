#include "viewer/scene/part_alone.h"

#include "viewer/scene/assembled_build.h"

namespace gapwise {

Scene aloneIn(const Scene& scene, const PartId& part) {
    Scene alone{.section = scene.section, .ground = scene.ground};
    if (const SceneItem* item = scene.item(part))
        alone.items.push_back(*item);
    for (const SceneLabel& label : scene.labels)
        if (label.kind == SceneLabel::Kind::Part && label.text == part.text)
            alone.labels.push_back(label);
    return alone;
}

Scene partAlone(const Frame& frame, const PartId& part, const Meshes& meshes, AloneAs as) {
    const Part* known = frame.part(part);
    const auto mesh = known ? meshes.find(known->type) : meshes.end();
    if (mesh == meshes.end())
        return {};
    Scene alone = aloneIn(sceneOf(frame, assembledBuild(frame), meshes, {.casings = true}), part);
    alone.labels.clear();
    for (SceneItem& item : alone.items) {
        if (as == AloneAs::ItIsMade)
            item.pose = Pose{};
        item.pose.shift = {};
        item.state = ItemState::Plain;
    }
    return alone;
}

} // namespace gapwise
