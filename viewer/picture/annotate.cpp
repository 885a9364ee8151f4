#include "viewer/picture/annotate.h"

#include "viewer/scene/label_layout.h"
#include "viewer/scene/outline.h"
#include "viewer/scene/visible.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// How texts of a kind look, in units.
struct Looks {
    double size = 14.0;
    bool bold = false;
    Colour colour = inks::kText;
    bool boxed = false; ///< In a box with a sign.
    bool leader = true;
};

Looks looksOf(SceneLabel::Kind kind) {
    switch (kind) {
    case SceneLabel::Kind::End: return {.size = 22.0, .bold = true, .leader = false};
    case SceneLabel::Kind::Port: return {.size = 18.0};
    case SceneLabel::Kind::Broken:
        return {.size = 17.0, .bold = true, .colour = inks::kBroken, .boxed = true};
    case SceneLabel::Kind::NotKnown: return {.size = 16.0, .colour = inks::kText, .boxed = true};
    case SceneLabel::Kind::Part: break;
    }
    return {.size = 17.0};
}

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

TextStyle styleOf(const Looks& looks, double unit) {
    return {.size = looks.size * unit, .bold = looks.bold, .colour = looks.colour, .halo = !looks.boxed};
}

/// Room for the sign before a boxed text, and around it.
struct BoxRoom {
    double before = 0.0;
    double around = 0.0;
};

BoxRoom boxRoomOf(const Looks& looks, double unit) {
    return looks.boxed ? BoxRoom{1.7 * looks.size * unit, 0.4 * looks.size * unit} : BoxRoom{};
}

/// A label on its way to its place.
struct Wish {
    const SceneLabel* label = nullptr;
    LabelRequest request{};
    Vec3 upperPoint{}; ///< Where leaders end, in the datum axes.
    Vec3 lowerPoint{};
};

class Labeller {
public:
    Labeller(const Scene& scene, const SceneCamera& camera, const PictureSize& size)
        : scene_{scene}, camera_{camera}, size_{size} {
        for (const SceneItem& item : scene.items)
            outlines_.push_back(outlineOf(item, camera, size));
    }

    std::vector<Wish> wishes(const Paper& paper, double unit) const {
        std::vector<Wish> wishes;
        for (const SceneLabel& label : scene_.labels) {
            if (label.kind == SceneLabel::Kind::End && !endsApart())
                continue;
            const Looks looks = looksOf(label.kind);
            const TextSize text = paper.measure(label.text, styleOf(looks, unit));
            const BoxRoom room = boxRoomOf(looks, unit);
            Wish wish = placeOf(label);
            wish.request.width = text.width + room.before + 2.0 * room.around;
            wish.request.height = text.height + room.around;
            wishes.push_back(wish);
        }
        // What matters most is placed first; the ids of the parts from left to right.
        std::ranges::stable_sort(wishes, [](const Wish& a, const Wish& b) {
            const auto rank = [](const Wish& wish) {
                const bool part = wish.label->kind == SceneLabel::Kind::Part;
                return std::pair{rankOf(wish.label->kind), part ? wish.request.upper.x : 0.0};
            };
            return rank(a) < rank(b);
        });
        return wishes;
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

    Wish placeOf(const SceneLabel& label) const {
        const PicturePoint seen = camera_.toPicture(label.anchor, size_);
        LabelRequest request{
            .about = {seen.x, seen.y, 0.0, 0.0}, .upper = {seen.x, seen.y}, .lower = {seen.x, seen.y}};
        using Prefers = LabelRequest::Prefers;
        if (label.kind == SceneLabel::Kind::End) {
            // Names of the ends move outward only, or they would seem to name another part.
            using Aside = LabelRequest::Aside;
            request.prefers = Prefers::Above;
            request.aside = seen.x < middleX() ? Aside::Left : Aside::Right;
        }
        if (label.kind == SceneLabel::Kind::Port)
            request.prefers = outward(label).y <= 0.0 ? Prefers::Above : Prefers::Below;
        Wish wish{&label, request, label.anchor, label.anchor};
        for (std::size_t i = 0; i < outlines_.size() && label.kind == SceneLabel::Kind::Part; ++i)
            if (scene_.items[i].part.text == label.text) {
                wish.request.about = outlines_[i].area;
                wish.request.upper = outlines_[i].upper;
                wish.request.lower = outlines_[i].lower;
                wish.upperPoint = outlines_[i].upperPoint;
                wish.lowerPoint = outlines_[i].lowerPoint;
            }
        return wish;
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

/// A thin line from a text to what it speaks of; dashed and with an open end where that is out of sight.
void drawLeader(Paper& paper, const PlacedLabel& placed, const Stroke& stroke, bool hidden) {
    const double unit = stroke.width;
    paper.line(placed.leaderStart, placed.leaderEnd,
               {stroke.colour, stroke.width, hidden ? 3.5 * unit : 0.0});
    if (hidden)
        paper.circle(placed.leaderEnd, 2.6 * unit, stroke);
    else
        paper.dot(placed.leaderEnd, 2.2 * unit, stroke.colour);
}

void drawBox(Paper& paper, const SceneLabel& label, const PictureArea& box, double unit) {
    const Looks looks = looksOf(label.kind);
    const BoxRoom room = boxRoomOf(looks, unit);
    paper.fill(box, inks::kWhite, 5.0 * unit);
    paper.frame(box, {looks.colour, 1.5 * unit}, 5.0 * unit);
    const double radius = 0.6 * looks.size * unit;
    paper.sign(label.kind == SceneLabel::Kind::Broken ? Sign::Cross : Sign::Question,
               {box.left + room.around + radius, box.top + box.height / 2.0}, radius);
}

} // namespace

void writeLabels(Paper& paper, const Shot& shot, const PictureLayout& layout) {
    const Labeller labeller{shot.scene, shot.camera, shot.size};
    const std::vector<Wish> wishes = labeller.wishes(paper, layout.unit);
    std::vector<LabelRequest> requests;
    requests.reserve(wishes.size());
    for (const Wish& wish : wishes)
        requests.push_back(wish.request);
    const auto placed = placeLabels(
        requests, {.inside = layout.labels, .obstacles = labeller.obstacles(), .unit = layout.unit});
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        if (placed[i].box.width <= 0.0)
            continue;
        const SceneLabel& label = *wishes[i].label;
        const Looks looks = looksOf(label.kind);
        const BoxRoom room = boxRoomOf(looks, layout.unit);
        if (looks.leader) {
            const bool above = placed[i].leaderEnd == wishes[i].request.upper;
            const Vec3& end = above ? wishes[i].upperPoint : wishes[i].lowerPoint;
            drawLeader(paper, placed[i], {looks.colour, (looks.boxed ? 1.6 : 1.0) * layout.unit},
                       isHidden(shot.scene, shot.camera, end));
        }
        if (looks.boxed)
            drawBox(paper, label, placed[i].box, layout.unit);
        paper.write(label.text, styleOf(looks, layout.unit),
                    {placed[i].box.left + room.around + room.before, placed[i].box.top + room.around / 2.0});
    }
}

} // namespace gapwise
