#include "viewer/panels/picture_overlay.h"

#include "viewer/panels/draw.h"
#include "viewer/panels/parts.h"

#include <algorithm>

namespace gapwise {

namespace {

/// How labels of a kind are written.
struct LabelLook {
    ImFont* font = nullptr;
    ImU32 colour = palette::kInk;
    bool boxed = false;
    DialSign sign = DialSign::Broken;
};

LabelLook lookOf(PictureWord kind, const Fonts& fonts) {
    switch (kind) {
    case PictureWord::End: return {.font = fonts.title};
    case PictureWord::Port: return {.font = fonts.strong};
    case PictureWord::Broken:
        return {.font = fonts.strong, .colour = palette::kBroken, .boxed = true, .sign = DialSign::Broken};
    case PictureWord::NotKnown:
        return {.font = fonts.body, .colour = palette::kInk, .boxed = true, .sign = DialSign::NotSet};
    case PictureWord::Bench: return {.font = fonts.small, .colour = palette::kSoftInk};
    case PictureWord::Seat: return {.font = fonts.strong, .colour = palette::kAccent};
    case PictureWord::Hour: return {.font = fonts.strong, .colour = palette::kAccent};
    case PictureWord::Part: break;
    }
    return {.font = fonts.body};
}

constexpr double kAround = 6.0;
constexpr double kSignRadius = 8.0;

/// Words with a pale rim, so that they can be read over edges and faces.
void writeWithRim(const ImVec2& at, const LabelLook& look, const std::string& words, double rim) {
    const float size = look.font ? look.font->FontSize : ImGui::GetFontSize();
    constexpr ImU32 kRim = IM_COL32(0xf7, 0xf7, 0xf3, 0xd8);
    const auto r = static_cast<float>(rim);
    for (const ImVec2 shift : {ImVec2{-r, 0.0F}, ImVec2{r, 0.0F}, ImVec2{0.0F, -r}, ImVec2{0.0F, r}})
        ink().AddText(look.font, size, {at.x + shift.x, at.y + shift.y}, kRim, words.c_str());
    ink().AddText(look.font, size, at, look.colour, words.c_str());
}

void drawLeader(const PictureLabel& label, ImU32 colour, double unit) {
    const ImVec2 from = point(label.from.x, label.from.y);
    const ImVec2 to = point(label.to.x, label.to.y);
    const auto thickness = static_cast<float>(1.2 * unit);
    if (!label.dashed) {
        ink().AddLine(from, to, colour, thickness);
        ink().AddCircleFilled(to, static_cast<float>(2.6 * unit), colour);
        return;
    }
    const ImVec2 along{to.x - from.x, to.y - from.y};
    const float length = std::max(1.0F, std::hypot(along.x, along.y));
    const auto dash = static_cast<float>(4.0 * unit);
    for (float done = 0.0F; done < length; done += 2.0F * dash) {
        const float end = std::min(done + dash, length);
        ink().AddLine({from.x + along.x * done / length, from.y + along.y * done / length},
                      {from.x + along.x * end / length, from.y + along.y * end / length}, colour, thickness);
    }
    ink().AddCircle(to, static_cast<float>(3.0 * unit), colour, 0, thickness);
}

void drawLabel(const PictureLabel& label, const Surface& surface) {
    const LabelLook look = lookOf(label.kind, surface.fonts());
    if (label.leader)
        drawLeader(label, look.boxed ? look.colour : palette::kSoftInk, surface.px(1.0));
    if (!look.boxed) {
        writeWithRim(point(label.box.x, label.box.y), look, label.words, surface.px(1.5));
        return;
    }
    fillArea(label.box, palette::kSheet, surface.px(5.0));
    frameArea(label.box, look.colour, surface.px(5.0), surface.px(1.5));
    const double sign = surface.px(kSignRadius);
    drawSign(look.sign, point(label.box.x + surface.px(kAround) + sign, label.box.middleY()), sign);
    const double left = label.box.x + surface.px(2.0 * kAround) + 2.0 * sign;
    writeLine({left, label.box.y, label.box.right() - left, label.box.height}, label.words,
              {look.font, look.colour});
}

void drawLine(const PictureLine& line, const Surface& surface) {
    std::vector<ImVec2> points;
    points.reserve(line.points.size());
    for (const PicturePlace& place : line.points)
        points.push_back(point(place.x, place.y));
    const auto count = static_cast<int>(points.size());
    const auto stroke = [&](ImU32 colour, double width) {
        ink().AddPolyline(points.data(), count, colour, ImDrawFlags_None,
                          static_cast<float>(surface.px(width)));
    };
    switch (line.kind) {
    case PictureLine::Kind::Dial: return stroke(palette::kAccent, 1.2);
    case PictureLine::Kind::Seat: stroke(palette::kSheet, 6.0); return stroke(palette::kAccent, 3.0);
    case PictureLine::Kind::Window: return stroke(palette::kAccent, 4.5);
    case PictureLine::Kind::Turn: stroke(palette::kSheet, 9.0); return stroke(palette::kAccent, 5.0);
    case PictureLine::Kind::Gap: stroke(palette::kSheet, 5.0); return stroke(palette::kInk, 2.5);
    }
}

} // namespace

LabelExtent extentOf(PictureWord kind, std::string_view words, const Fonts& fonts, double uiScale) {
    const LabelLook look = lookOf(kind, fonts);
    const ImVec2 size = sizeOf(look.font, words);
    const double beside = look.boxed ? (3.0 * kAround + 2.0 * kSignRadius) * uiScale : 0.0;
    const double above = look.boxed ? 2.0 * kAround * uiScale : 0.0;
    return {static_cast<double>(size.x) + beside, static_cast<double>(size.y) + above};
}

void drawOverlay(const Surface& surface) {
    const Area& picture = surface.frame.picture;
    ink().PushClipRect(point(picture.x, picture.y), point(picture.right(), picture.bottom()), true);
    for (const PictureLine& line : surface.frame.overlay.lines)
        drawLine(line, surface);
    for (const PictureLabel& label : surface.frame.overlay.labels)
        drawLabel(label, surface);
    ink().PopClipRect();
}

} // namespace gapwise
