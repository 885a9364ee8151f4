#include "viewer/panels/opening.h"

#include "viewer/panels/draw.h"
#include "viewer/panels/opening_words.h"

#include <array>
#include <string>

namespace gapwise {

namespace {

/// A ring with its gap at `at`.
void drawOpenRing(const Round& round, Degrees at, const Stroke& stroke) {
    constexpr double kHalf = 20.0;
    drawArc(round, Arc{at + Degrees{kHalf}, Degrees{360.0 - 2.0 * kHalf}}, stroke);
}

void drawEyeOver(const Round& round, ImU32 colour) {
    const double w = round.radius * 1.3;
    for (const double lid : {-1.0, 1.0})
        ink().AddBezierQuadratic(point(round.x - w, round.y),
                                 point(round.x, round.y + lid * round.radius * 1.6),
                                 point(round.x + w, round.y), colour, 2.2F);
    ink().AddCircleFilled(point(round.x, round.y), static_cast<float>(round.radius * 0.36), colour, 24);
}

/// What a use is about, as a small drawing: a ring that is turned and judged, an eye, both ends.
void drawUse(Use use, const Area& area, ImU32 colour) {
    const Round round{area.middleX(), area.middleY(), area.height * 0.40};
    const double thick = area.height * 0.09;
    switch (use) {
    case Use::Practise:
        drawOpenRing(round, Degrees{60.0}, {colour, thick});
        drawSign(DialSign::Holds, round.at(Degrees{60.0}), area.height * 0.17);
        break;
    case Use::Bench: drawEyeOver(round.withRadius(round.radius * 0.85), colour); break;
    case Use::Show:
        for (const double side : {-1.0, 1.0}) {
            const Round half{round.x + side * round.radius * 0.72, round.y, round.radius * 0.6};
            drawOpenRing(half, Degrees{side * 90.0}, {colour, thick * 0.8});
        }
        break;
    }
}

/// The first things to do, numbered, each in its own lines.
void drawFirst(const UseWords& words, const Area& area, const Surface& surface) {
    writeLine({area.x, area.y, area.width, surface.px(22.0)}, "What to do first",
              {surface.fonts().strong, palette::kAccent});
    double y = area.y + surface.px(30.0);
    const double disc = surface.px(11.0);
    for (std::size_t i = 0; i < words.first.size(); ++i) {
        ink().AddCircleFilled(point(area.x + disc, y + disc), static_cast<float>(disc), palette::kAccent, 32);
        writeLine({area.x, y, 2.0 * disc, 2.0 * disc}, std::to_string(i + 1),
                  {surface.fonts().strong, palette::kSheet, Align::Middle});
        const double left = area.x + 2.0 * disc + surface.px(10.0);
        const Area lines{left, y + surface.px(2.0), area.right() - left, area.bottom() - y};
        const double used = writeLines(lines, words.first.at(i), {surface.fonts().body});
        y += std::max(used, 2.0 * disc) + surface.px(12.0);
    }
}

void useCard(const UseWords& words, const Area& place, const Surface& surface) {
    const bool chosen = surface.drafts().use == words.use;
    const Pressed pressed = pressable(surface, words.label.data(), place);
    if (pressed.done)
        surface.drafts().use = words.use;
    const ImU32 ground = pressed.hovered && !chosen ? palette::kShade : palette::kSheet;
    fillArea(place, ground, surface.px(8.0));
    frameArea(place, chosen ? palette::kAccent : palette::kHairline, surface.px(8.0), chosen ? 2.0 : 1.0);
    const Area inner = place.inset(surface.px(16.0));
    const double picture = surface.px(46.0);
    drawUse(words.use, {inner.x, inner.y, picture, picture}, chosen ? palette::kAccent : palette::kSoftInk);
    const double left = inner.x + picture + surface.px(16.0);
    writeLine({left, inner.y, inner.right() - left, surface.px(24.0)}, words.label, {surface.fonts().title});
    if (chosen)
        writeLine({left, inner.y, inner.right() - left, surface.px(24.0)}, "chosen",
                  {surface.fonts().small, palette::kAccent, Align::Right});
    const double top = inner.y + surface.px(28.0);
    const double used = writeLines({left, top, inner.right() - left, inner.bottom() - top}, words.what,
                                   {surface.fonts().body, palette::kSoftInk});
    if (!chosen)
        return;
    const double first = std::max(inner.y + picture, top + used) + surface.px(16.0);
    ink().AddLine(point(inner.x, first), point(inner.right(), first), palette::kHairline, 1.0F);
    const double below = first + surface.px(14.0);
    drawFirst(words, {inner.x, below, inner.width, inner.bottom() - below}, surface);
}

} // namespace

void useCards(const Area& area, const Surface& surface) {
    const Use chosen = surface.drafts().use;
    const double gap = surface.px(12.0);
    const double small = surface.px(112.0);
    const double large = std::min(area.height - 2.0 * (small + gap), surface.px(340.0));
    double y = area.y;
    for (const UseWords& words : useWords()) {
        const double height = words.use == chosen ? large : small;
        useCard(words, {area.x, y, area.width, height}, surface);
        y += height + gap;
    }
}

} // namespace gapwise
