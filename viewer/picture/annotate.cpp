#include "viewer/picture/annotate.h"

#include "viewer/scene/placed_labels.h"

namespace gapwise {

namespace {

/// How texts of a kind look, in units.
struct Looks {
    double size = 14.0;
    bool bold = false;
    Colour colour = inks::kText;
    bool boxed = false; ///< In a box with a sign.
};

Looks looksOf(SceneLabel::Kind kind) {
    switch (kind) {
    case SceneLabel::Kind::End: return {.size = 22.0, .bold = true};
    case SceneLabel::Kind::Port: return {.size = 18.0};
    case SceneLabel::Kind::Broken:
        return {.size = 17.0, .bold = true, .colour = inks::kBroken, .boxed = true};
    case SceneLabel::Kind::NotKnown: return {.size = 16.0, .colour = inks::kText, .boxed = true};
    case SceneLabel::Kind::Part: break;
    }
    return {.size = 17.0};
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

/// A thin line from a text to what it speaks of; dashed and with an open end where that is out of sight.
void drawLeader(Paper& paper, const LabelInPlace& placed, const Stroke& stroke, bool hidden) {
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
    const auto measure = [&](const SceneLabel& label) {
        const Looks looks = looksOf(label.kind);
        const TextSize text = paper.measure(label.text, styleOf(looks, layout.unit));
        const BoxRoom room = boxRoomOf(looks, layout.unit);
        return LabelSize{text.width + room.before + 2.0 * room.around, text.height + room.around};
    };
    const auto placed = labelsInPlace({shot.scene, shot.camera, shot.size}, measure,
                                      {.inside = layout.labels, .unit = layout.unit});
    for (const LabelInPlace& each : placed) {
        const SceneLabel& label = *each.label;
        const Looks looks = looksOf(label.kind);
        const BoxRoom room = boxRoomOf(looks, layout.unit);
        if (each.leader)
            drawLeader(paper, each, {looks.colour, (looks.boxed ? 1.6 : 1.0) * layout.unit}, each.hidden);
        if (looks.boxed)
            drawBox(paper, label, each.box, layout.unit);
        paper.write(label.text, styleOf(looks, layout.unit),
                    {each.box.left + room.around + room.before, each.box.top + room.around / 2.0});
    }
}

} // namespace gapwise
