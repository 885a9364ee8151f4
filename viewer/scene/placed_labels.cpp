#include "viewer/scene/placed_labels.h"

#include "viewer/scene/outline.h"
#include "viewer/scene/visible.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace gapwise {

namespace {

int rankOf(SceneLabel::Kind kind) {
    switch (kind) {
    case SceneLabel::Kind::Broken: return 0;
    case SceneLabel::Kind::NotKnown: return 1;
    case SceneLabel::Kind::End: return 2;
    case SceneLabel::Kind::Port: return 3;
    case SceneLabel::Kind::Part: break;
    }
    return 4;
}

/// A label on its way to its place.
struct Wanted {
    const SceneLabel* label = nullptr;
    LabelRequest request{};
    Vec3 upperPoint{}; ///< Where leaders end, in the datum axes.
    Vec3 lowerPoint{};
};

class Labeller {
public:
    explicit Labeller(const SceneView& view) : scene_{view.scene}, camera_{view.camera}, size_{view.size} {
        for (const SceneItem& item : scene_.items)
            outlines_.push_back(outlineOf(item, camera_, size_));
    }

    std::vector<Wanted> requests(const MeasureLabel& measure, bool moving) const {
        std::vector<Wanted> wanted;
        for (const SceneLabel& label : scene_.labels) {
            const bool leftOut = (label.kind == SceneLabel::Kind::End && !endsApart()) ||
                                 (label.kind == SceneLabel::Kind::Part && (moving || cutFacesAreEdgeOn()));
            if (leftOut || !inThePicture(label.anchor))
                continue;
            const LabelSize size = measure(label);
            Wanted want = placeOf(label);
            want.request.width = size.width;
            want.request.height = size.height;
            wanted.push_back(want);
        }
        // What matters most is placed first; the ids of the parts from left to right.
        std::ranges::stable_sort(wanted, [](const Wanted& a, const Wanted& b) {
            const auto rank = [](const Wanted& want) {
                const bool part = want.label->kind == SceneLabel::Kind::Part;
                return std::pair{rankOf(want.label->kind), part ? want.request.upper.x : 0.0};
            };
            return rank(a) < rank(b);
        });
        return wanted;
    }

    std::vector<PictureArea> obstacles() const {
        std::vector<PictureArea> areas;
        areas.reserve(outlines_.size());
        for (const Outlined& outline : outlines_)
            areas.push_back(outline.area);
        return areas;
    }

private:
    /// Seen along the shaft both ends lie in one place: the banner names the nearer one.
    bool endsApart() const {
        constexpr Degrees kAlong{12.0};
        return camera_.camera.offAxis() > kAlong;
    }

    /// Along the shaft a section shows nothing of its parts that an id could be put to.
    bool cutFacesAreEdgeOn() const { return scene_.section && !endsApart(); }

    /// A picture that is held close to one part does not speak of what lies outside it.
    bool inThePicture(const Vec3& anchor) const {
        const PicturePoint seen = camera_.toPicture(anchor, size_);
        return seen.x >= 0.0 && seen.x <= size_.width && seen.y >= 0.0 && seen.y <= size_.height;
    }

    double middleX() const {
        const Vec3& target = camera_.camera.target();
        double left = camera_.toPicture(target, size_).x;
        double right = left;
        for (const Outlined& outline : outlines_) {
            left = std::min(left, outline.area.left);
            right = std::max(right, outline.area.right());
        }
        return (left + right) / 2.0;
    }

    Wanted placeOf(const SceneLabel& label) const {
        const PicturePoint seen = camera_.toPicture(label.anchor, size_);
        LabelRequest request{
            .about = {seen.x, seen.y, 0.0, 0.0}, .upper = {seen.x, seen.y}, .lower = {seen.x, seen.y}};
        using Prefers = LabelRequest::Prefers;
        if (label.kind == SceneLabel::Kind::End) {
            // Names of the ends move outward only, or they would seem to name another part.
            using Aside = LabelRequest::Aside;
            const Spot out = outwardOfEnd(label);
            const bool upright = std::abs(out.y) > std::abs(out.x);
            request.prefers = upright && out.y > 0.0 ? Prefers::Below : Prefers::Above;
            if (!upright)
                request.aside = seen.x < middleX() ? Aside::Left : Aside::Right;
        }
        if (label.kind == SceneLabel::Kind::Port) {
            // A word is read by its place: it stands on the side that its port points to.
            const Spot out = outward(label);
            using Aside = LabelRequest::Aside;
            request.prefers = out.y <= 0.0 ? Prefers::Above : Prefers::Below;
            if (std::abs(out.x) > std::abs(out.y))
                request.aside = out.x < 0.0 ? Aside::Left : Aside::Right;
        }
        Wanted want{&label, request, label.anchor, label.anchor};
        for (std::size_t i = 0; i < outlines_.size() && label.kind == SceneLabel::Kind::Part; ++i)
            if (scene_.items[i].part.text == label.text) {
                want.request.about = outlines_[i].area;
                want.request.upper = outlines_[i].upper;
                want.request.lower = outlines_[i].lower;
                want.upperPoint = outlines_[i].upperPoint;
                want.lowerPoint = outlines_[i].lowerPoint;
            }
        return want;
    }

    /// Which way the shaft points in the picture at the end that a label names.
    Spot outwardOfEnd(const SceneLabel& label) const {
        const double step = label.anchor.z < camera_.camera.target().z ? -1.0 : 1.0;
        const PicturePoint end = camera_.toPicture(label.anchor, size_);
        const PicturePoint beyond = camera_.toPicture(label.anchor + Vec3{0.0, 0.0, step}, size_);
        return {beyond.x - end.x, beyond.y - end.y};
    }

    /// Which way off the shaft a port lies in the picture.
    Spot outward(const SceneLabel& label) const {
        const PicturePoint port = camera_.toPicture(label.anchor, size_);
        const PicturePoint shaft = camera_.toPicture({0.0, 0.0, label.anchor.z}, size_);
        return {port.x - shaft.x, port.y - shaft.y};
    }

    const Scene& scene_;
    const SceneCamera& camera_;
    const PictureSize& size_;
    std::vector<Outlined> outlines_{};
};

} // namespace

std::vector<LabelInPlace> labelsInPlace(const SceneView& view, const MeasureLabel& measure,
                                        const LabelSheet& sheet) {
    const Labeller labeller{view};
    const std::vector<Wanted> wanted = labeller.requests(measure, sheet.moving);
    std::vector<LabelRequest> requests;
    requests.reserve(wanted.size());
    for (const Wanted& want : wanted)
        requests.push_back(want.request);
    const auto placed = placeLabels(
        requests, {.inside = sheet.inside, .obstacles = labeller.obstacles(), .unit = sheet.unit});
    std::vector<LabelInPlace> labels;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (placed[i].box.width <= 0.0)
            continue;
        const bool above = placed[i].leaderEnd == wanted[i].request.upper;
        const Vec3& end = above ? wanted[i].upperPoint : wanted[i].lowerPoint;
        const bool leader = wanted[i].label->kind != SceneLabel::Kind::End;
        labels.push_back({.label = wanted[i].label,
                          .box = placed[i].box,
                          .leader = leader,
                          .leaderStart = placed[i].leaderStart,
                          .leaderEnd = placed[i].leaderEnd,
                          .hidden = leader && !sheet.moving && isHidden(view.scene, view.camera, end)});
    }
    return labels;
}

} // namespace gapwise
