#include "viewer/panels/draw.h"

#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

float angleOf(Degrees clock) {
    return static_cast<float>(radians(clock) - std::numbers::pi / 2.0);
}

float pixels(double value) {
    return static_cast<float>(value);
}

void drawTriangle(const Round& round, Degrees clock, const Stroke& sizeAndColour) {
    const double size = sizeAndColour.thickness; // Negative: the tip looks inward.
    const ImVec2 tip = round.withRadius(round.radius + size).at(clock);
    const Degrees half{std::abs(size) / std::max(round.radius, 1.0) * 180.0 / std::numbers::pi * 0.8};
    ink().AddTriangleFilled(tip, round.at(clock - half), round.at(clock + half), sizeAndColour.colour);
}

void tick(ImVec2 c, float r, ImU32 colour) {
    ink().AddLine({c.x - 0.45F * r, c.y + 0.02F * r}, {c.x - 0.10F * r, c.y + 0.38F * r}, colour, r * 0.24F);
    ink().AddLine({c.x - 0.10F * r, c.y + 0.38F * r}, {c.x + 0.48F * r, c.y - 0.36F * r}, colour, r * 0.24F);
}

void cross(ImVec2 c, float r, ImU32 colour) {
    const float d = 0.38F * r;
    ink().AddLine({c.x - d, c.y - d}, {c.x + d, c.y + d}, colour, r * 0.26F);
    ink().AddLine({c.x - d, c.y + d}, {c.x + d, c.y - d}, colour, r * 0.26F);
}

void letter(ImVec2 c, float r, const char* text) {
    ImFont* font = ImGui::GetFont();
    const float size = r * 1.7F;
    const ImVec2 extent = font->CalcTextSizeA(size, 1e9F, 0.0F, text);
    ink().AddText(font, size, {c.x - extent.x / 2.0F, c.y - extent.y / 2.0F}, palette::kSheet, text);
}

void twoHeads(ImVec2 c, float r, ImU32 colour) {
    const float d = 0.55F * r;
    const float h = 0.34F * r;
    ink().AddTriangleFilled({c.x - d, c.y}, {c.x - 0.1F * r, c.y - h}, {c.x - 0.1F * r, c.y + h}, colour);
    ink().AddTriangleFilled({c.x + d, c.y}, {c.x + 0.1F * r, c.y + h}, {c.x + 0.1F * r, c.y - h}, colour);
}

} // namespace

ImVec2 Round::at(Degrees clock, double share) const {
    const double a = radians(clock);
    return point(x + std::sin(a) * radius * share, y - std::cos(a) * radius * share);
}

Degrees clockOf(const Round& round, double px, double py) {
    return wrapped(degreesFromRadians(std::atan2(px - round.x, round.y - py)));
}

void drawArc(const Round& round, const Arc& arc, const Stroke& stroke) {
    ink().PathArcTo(point(round.x, round.y), pixels(round.radius), angleOf(arc.start),
                    angleOf(arc.start + arc.sweep), std::max(8, static_cast<int>(arc.sweep.value / 4.0)));
    ink().PathStroke(stroke.colour, 0, pixels(stroke.thickness));
}

void drawCircle(const Round& round, const Stroke& stroke) {
    ink().AddCircle(point(round.x, round.y), pixels(round.radius), stroke.colour, 96,
                    pixels(stroke.thickness));
}

void drawDashedCircle(const Round& round, const Stroke& stroke) {
    constexpr int kDashes = 36;
    constexpr double kStep = 360.0 / kDashes;
    for (int i = 0; i < kDashes; ++i)
        drawArc(round, Arc{Degrees{i * kStep}, Degrees{kStep * 0.5}}, stroke);
}

void drawPointer(const Round& round, Degrees clock, double size, ImU32 colour) {
    drawTriangle(round, clock, {colour, size});
}

void drawInwardPointer(const Round& round, Degrees clock, double size, ImU32 colour) {
    drawTriangle(round, clock, {colour, -size});
}

ImU32 colourOf(DialSign sign) {
    switch (sign) {
    case DialSign::Holds: return palette::kHolds;
    case DialSign::Broken: return palette::kBroken;
    case DialSign::Turning: return palette::kAccent;
    case DialSign::NotSet:
    case DialSign::Open:
    case DialSign::Unsaid:
    case DialSign::Empty: break;
    }
    return palette::kUnknown;
}

void drawSign(DialSign sign, ImVec2 centre, double radius) {
    const float r = pixels(radius);
    const ImU32 colour = colourOf(sign);
    const bool disc = sign == DialSign::Holds || sign == DialSign::Broken || sign == DialSign::NotSet;
    ink().AddCircleFilled(centre, r, disc ? colour : palette::kSheet, 24);
    switch (sign) {
    case DialSign::Holds: tick(centre, r, palette::kSheet); break;
    case DialSign::Broken: cross(centre, r, palette::kSheet); break;
    case DialSign::NotSet: letter(centre, r, "?"); break;
    case DialSign::Open: ink().AddCircle(centre, r * 0.8F, colour, 24, r * 0.28F); break;
    case DialSign::Unsaid:
        drawDashedCircle({static_cast<double>(centre.x), static_cast<double>(centre.y), radius * 0.8},
                         {colour, radius * 0.28});
        break;
    case DialSign::Turning: twoHeads(centre, r, colour); break;
    case DialSign::Empty:
        ink().AddLine({centre.x - r * 0.5F, centre.y}, {centre.x + r * 0.5F, centre.y}, colour, r * 0.25F);
        break;
    }
}

} // namespace gapwise
