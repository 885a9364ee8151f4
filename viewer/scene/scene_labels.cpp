#include "viewer/scene/scene_labels.h"

#include "geometry/datum/datum.h"
#include "models/frame/sets.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// The outer face of the pad that is added to the housing at this clock, if it has one.
const Slot* padAt(const PartType& type, Degrees offset) {
    const Slot* pad = nullptr;
    for (const Feature& feature : type.shape.features) {
        const Slot* slot = std::get_if<Slot>(&feature.form);
        if (slot && feature.does == Feature::Does::Add && within(feature.offset, offset, Degrees{0.5}) &&
            (!pad || slot->r.to > pad->r.to))
            pad = slot;
    }
    return pad;
}

Vec3 outermost(const SceneItem& item, const Vec3& direction) {
    Vec3 best = item.pose.shift;
    for (const Vec3& own : item.mesh->body.faces.positions)
        if (const Vec3 p = item.pose.point(own); dot(p, direction) > dot(best, direction))
            best = p;
    return best;
}

void addEnds(std::vector<SceneLabel>& labels, const std::vector<Vec3>& points) {
    if (points.empty())
        return;
    const Bounds bounds = boundsOf(points);
    labels.push_back({SceneLabel::Kind::End, "TURBINE", {0.0, 0.0, bounds.low.z}});
    labels.push_back({SceneLabel::Kind::End, "COMPRESSOR", {0.0, 0.0, bounds.high.z}});
}

/// The middle of an item and its outermost point along its index: where a remark on its gap or mark belongs.
Vec3 middleOf(const SceneItem& item) {
    const Pose drawn = item.drawnPose();
    std::vector<Vec3> points;
    for (const Vec3& p : item.mesh->body.faces.positions)
        points.push_back(drawn.point(p));
    if (points.empty())
        return drawn.shift;
    const Bounds bounds = boundsOf(points);
    return (bounds.low + bounds.high) * 0.5;
}

Vec3 indexPointOf(const SceneItem& item) {
    double radius = 0.0;
    for (const Vec3& p : item.mesh->body.faces.positions)
        radius = std::max(radius, std::hypot(p.x, p.y));
    const Vec3 middle = middleOf(item);
    return Vec3{0.0, 0.0, middle.z} + item.pose.yAxis * radius;
}

/// What is wrong with a part, in one word of its rule's kind.
std::string_view wordFor(const Rule& rule) {
    const std::string_view kind = kindOf(rule);
    if (kind == "face")
        return "face";
    if (kind == "seat" || kind == "joint")
        return "wrong part";
    if (kind == "mark" || kind == "match_marks")
        return "mark";
    return kind == "engaged" ? "not engaged" : "gap";
}

/// `SR-CO: gap, face`: each broken rule's word once.
std::string brokenText(const PartId& part, const Checked& checked) {
    std::string words;
    for (const Finding& finding : checked.findings) {
        const Verdict& verdict = finding.verdict;
        const std::string word{wordFor(*verdict.rule)};
        if (verdict.state != RuleState::Broken || words.find(word) != std::string::npos ||
            std::ranges::find(verdict.parts, part) == verdict.parts.end())
            continue;
        words += (words.empty() ? "" : ", ") + word;
    }
    return part.text + ": " + words;
}

} // namespace

const SceneItem* firstOfItsSet(const Frame& frame, const Scene& scene, const SceneItem& item) {
    const std::vector<PartId> pieces = piecesOf(frame, item.part);
    const auto first = std::ranges::find_if(scene.items, [&](const SceneItem& other) {
        return std::ranges::find(pieces, other.part) != pieces.end();
    });
    return first == scene.items.end() ? &item : &*first;
}

Vec3 portOf(const Frame& frame, const SceneItem& housing, bool top) {
    const PartType* type = frame.typeOf(housing.part);
    const Degrees clock{top ? 0.0 : 180.0};
    if (const Slot* pad = type ? padAt(*type, clock) : nullptr)
        return housing.drawnPose().point({0.0, top ? pad->r.to : -pad->r.to, pad->z.middle()});
    return outermost(housing, {0.0, top ? 1.0 : -1.0, 0.0});
}

std::vector<SceneLabel> labelsOf(const Frame& frame, const Scene& scene, const LabelWishes& wishes) {
    std::vector<SceneLabel> labels;
    addEnds(labels, scene.points());
    if (const SceneItem* housing = scene.item(frame.housing)) {
        labels.push_back({SceneLabel::Kind::Port, "inlet", portOf(frame, *housing, true)});
        labels.push_back({SceneLabel::Kind::Port, "drain", portOf(frame, *housing, false)});
    }
    for (const SceneItem& item : scene.items) {
        if (item.state == ItemState::Broken && wishes.checked)
            labels.push_back(
                {SceneLabel::Kind::Broken, brokenText(item.part, *wishes.checked), indexPointOf(item)});
        else if (item.state == ItemState::NotKnown)
            labels.push_back(
                {SceneLabel::Kind::NotKnown, item.part.text + ": not known", indexPointOf(item)});
        else if (wishes.partIds && firstOfItsSet(frame, scene, item) == &item)
            labels.push_back({SceneLabel::Kind::Part, setNameOf(frame, item.part), middleOf(item)});
    }
    return labels;
}

} // namespace gapwise
