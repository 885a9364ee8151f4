#include "viewer/scene/scene_labels.h"

#include "geometry/datum/datum.h"
#include "models/frame/sets.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

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
    for (const Vec3& own : item.uncut().body.faces.positions)
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

/// The middle of an item, and its outermost point along its index: where a remark on its gap or mark belongs.
Vec3 middleOf(const SceneItem& item) {
    const Pose drawn = item.drawnPose();
    std::vector<Vec3> points;
    for (const Vec3& p : item.uncut().body.faces.positions)
        points.push_back(drawn.point(p));
    if (points.empty())
        return drawn.shift;
    const Bounds bounds = boundsOf(points);
    return (bounds.low + bounds.high) * 0.5;
}

/// The corner nearest to a point given in the part's axes, and how far away it is.
struct NearestCorner {
    Vec3 at{};
    double distanceMm = std::numeric_limits<double>::infinity();
};

NearestCorner nearestCorner(const DrawnMesh& mesh, const Vec3& point) {
    NearestCorner nearest;
    for (const std::vector<Vec3>* positions : {&mesh.body.faces.positions, &mesh.caps.positions})
        for (const Vec3& p : *positions)
            if (const double distance = length(p - point); distance < nearest.distanceMm)
                nearest = {p, distance};
    return nearest;
}

/// What is left nearest to a point of an item, where a section took the point itself away; nothing where it
/// did not, or nothing is left.
std::optional<Vec3> insteadOf(const Vec3& point, const SceneItem& item) {
    constexpr double kTakenAwayMm = 0.5;
    if (!item.whole)
        return std::nullopt;
    const Pose drawn = item.drawnPose();
    const Vec3 from = point - drawn.shift;
    const Vec3 own{dot(drawn.xAxis, from), dot(drawn.yAxis, from), dot(drawn.zAxis, from)};
    const NearestCorner left = nearestCorner(*item.mesh, own);
    if (!std::isfinite(left.distanceMm) ||
        left.distanceMm <= nearestCorner(*item.whole, own).distanceMm + kTakenAwayMm)
        return std::nullopt;
    return drawn.point(left.at);
}

Vec3 indexPointOf(const SceneItem& item) {
    double radius = 0.0;
    for (const Vec3& p : item.uncut().body.faces.positions)
        radius = std::max(radius, std::hypot(p.x, p.y));
    const Vec3 point = Vec3{0.0, 0.0, middleOf(item).z} + item.pose.yAxis * radius;
    return insteadOf(point, item).value_or(point);
}

bool somethingIsLeft(const SceneItem& item) {
    return !item.mesh->body.faces.triangles.empty() || !item.mesh->caps.triangles.empty();
}

/// Of alike pieces the first carries the label that a section does not take away whole.
bool standsForItsSet(const Frame& frame, const Scene& scene, const SceneItem& item) {
    const std::vector<PartId> pieces = piecesOf(frame, item.part);
    const auto first = std::ranges::find_if(scene.items, [&](const SceneItem& other) {
        return (&other == &item || std::ranges::find(pieces, other.part) != pieces.end()) &&
               somethingIsLeft(other);
    });
    return first != scene.items.end() && &*first == &item;
}

/// What is wrong with a part, in one word of its rule's kind.
std::string_view wordFor(const Frame& frame, const Rule& rule) {
    const std::string_view kind = kindOf(rule);
    if (kind == "face")
        return "face";
    if (kind == "seat" || kind == "joint")
        return "wrong part";
    if (kind == "match_marks")
        return "match mark";
    if (const PartType* type = frame.typeOf(partsOf(rule).front()); type && kind == "mark")
        return wordOf(type->index);
    return kind == "engaged" ? "not engaged" : "gap";
}

/// `SR-CO: gap, face`: each broken rule's word once.
std::string brokenText(const Frame& frame, const PartId& part, const Checked& checked) {
    std::string words;
    for (const Finding& finding : checked.findings) {
        const Verdict& verdict = finding.verdict;
        const std::string word{wordFor(frame, *verdict.rule)};
        if (verdict.state != RuleState::Broken || words.find(word) != std::string::npos ||
            std::ranges::find(verdict.parts, part) == verdict.parts.end())
            continue;
        words += (words.empty() ? "" : ", ") + word;
    }
    return part.text + ": " + words;
}

/// Screws that a section of the assembled cartridge does not meet: nobody sees them, and their label would
/// lead to nothing.
bool shutInBySection(const Frame& frame, const Scene& scene, const SceneItem& item) {
    const Part* part = frame.part(item.part);
    const bool apart = item.pulledMm != 0.0;
    return scene.section && !apart && part && part->fastener && item.mesh->caps.triangles.empty();
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
        for (const bool top : {true, false})
            if (const Vec3 port = portOf(frame, *housing, top); !insteadOf(port, *housing))
                labels.push_back({SceneLabel::Kind::Port, top ? "inlet" : "drain", port});
    }
    for (const SceneItem& item : scene.items) {
        if (item.state == ItemState::Broken && wishes.checked)
            labels.push_back({SceneLabel::Kind::Broken, brokenText(frame, item.part, *wishes.checked),
                              indexPointOf(item)});
        else if (item.state == ItemState::NotKnown)
            labels.push_back(
                {SceneLabel::Kind::NotKnown, item.part.text + ": not known", indexPointOf(item)});
        else if (wishes.partIds && standsForItsSet(frame, scene, item) &&
                 !shutInBySection(frame, scene, item)) {
            const Vec3 middle = middleOf(item);
            labels.push_back({SceneLabel::Kind::Part, setNameOf(frame, item.part),
                              insteadOf(middle, item).value_or(middle)});
        }
    }
    return labels;
}

} // namespace gapwise
