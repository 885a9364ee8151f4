#include "viewer/panels/glyph.h"

#include "models/access/outline.h"
#include "viewer/panels/draw.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Reach of a whole shape, in mm.
struct Reach {
    double bore = 0.0; ///< Radius.
    double outside = 0.0;
    Span z{};
};

Reach reachOf(const Shape& shape) {
    Reach reach{.bore = 1e9, .z = {1e9, -1e9}};
    for (const RingBody& ring : shape.rings) {
        reach.bore = std::min(reach.bore, smallestRadiusOf(ring.bore));
        reach.outside = std::max(reach.outside, largestRadiusOf(ring.outside));
        reach.z = {std::min(reach.z.from, ring.z.from), std::max(reach.z.to, ring.z.to)};
    }
    return reach;
}

/// Ø8 fills half of the area, Ø160 all of it.
double shareOf(double diameter) {
    return std::clamp(0.5 + 0.5 * std::log(diameter / 8.0) / std::log(20.0), 0.4, 1.0);
}

ImU32 colourOf(const PartType& type) {
    if (type.tint == "bronze")
        return IM_COL32(0xb0, 0x8a, 0x4e, 0xff);
    if (type.tint == "aluminium")
        return IM_COL32(0xa9, 0xb4, 0xba, 0xff);
    if (type.tint == "hot")
        return IM_COL32(0x9b, 0x84, 0x78, 0xff);
    return palette::kSoftInk;
}

void drawSteppedJoint(const Round& middle, double thickness, ImU32 colour) {
    const double half = thickness / 2.0;
    for (const double side : {-1.0, 1.0}) {
        const Round round = middle.withRadius(middle.radius + side * half / 2.0);
        const Degrees joint{side * 12.0};
        drawArc(round, Arc{joint + Degrees{7.0}, Degrees{346.0}}, {colour, half});
    }
}

void drawMark(const PartType& type, const Round& outside, double thickness) {
    const double size = std::max(3.0, thickness * 0.6);
    switch (type.index) {
    case IndexKind::Notch: drawInwardPointer(outside, Degrees{0.0}, size, palette::kSheet); break;
    case IndexKind::TopMark:
    case IndexKind::MatchMark:
        ink().AddLine(outside.at(Degrees{0.0}),
                      outside.withRadius(outside.radius - thickness).at(Degrees{0.0}), palette::kSheet, 2.5F);
        break;
    case IndexKind::Arrow:
        drawPointer(outside.withRadius(outside.radius - size * 1.3), Degrees{0.0}, size, palette::kSheet);
        break;
    case IndexKind::Gap:
    case IndexKind::Opening:
    case IndexKind::None: break;
    }
}

void drawFaceOn(const PartType& type, const Reach& reach, const Area& area) {
    const double radius = std::min(area.width, area.height) / 2.0 * shareOf(2.0 * reach.outside);
    const double thickness = std::max(3.0, radius * (1.0 - reach.bore / reach.outside));
    const Round middle{area.middleX(), area.middleY(), radius - thickness / 2.0};
    const ImU32 colour = colourOf(type);
    if (type.joint == Joint::Stepped)
        return drawSteppedJoint(middle, thickness, colour);
    const bool open = type.index == IndexKind::Gap || type.index == IndexKind::Opening;
    const Degrees half{open ? 14.0 : 0.0};
    drawArc(middle, Arc{half, Degrees{360.0 - 2.0 * half.value}}, {colour, thickness});
    drawMark(type, middle.withRadius(radius), thickness);
}

void drawFromBeside(const PartType& type, const Reach& reach, const Area& area) {
    const double largest = std::max(reach.z.length(), 2.0 * reach.outside);
    const double scale = std::min(area.width, area.height) * shareOf(largest) / largest;
    const double left = area.middleX() - reach.z.middle() * scale;
    for (const RingBody& ring : type.shape.rings) {
        const double half = largestRadiusOf(ring.outside) * scale;
        fillArea({left + ring.z.from * scale, area.middleY() - half, std::max(1.0, ring.z.length() * scale),
                  2.0 * half},
                 colourOf(type), 1.0);
    }
}

/// A part with no body of revolution about the shaft: a pin, upright.
void drawPin(const PartType& type, const Area& area) {
    const double height = std::min(area.width, area.height) * 0.56;
    const double width = height * 0.36;
    fillArea({area.middleX() - width / 2.0, area.middleY() - height / 2.0, width, height}, colourOf(type),
             width * 0.3);
}

} // namespace

void drawGlyph(const PartType& type, const Area& area) {
    const Reach reach = reachOf(type.shape);
    if (type.shape.rings.empty() || reach.outside <= 0.0)
        return drawPin(type, area);
    const bool longPart = reach.z.length() > 1.2 * 2.0 * reach.outside || reach.bore <= 0.0;
    if (longPart)
        drawFromBeside(type, reach, area);
    else
        drawFaceOn(type, reach, area);
}

} // namespace gapwise
