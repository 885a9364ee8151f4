#include "viewer/panels/card.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

/// The enlarged section of a ring's bar, its seen face up. `share` of the height is rounded on the rounded
/// face; the sharp face keeps its corners and the burr of the die.
void drawRingSection(const Area& bar, bool roundedUp, const Surface& surface) {
    const auto radius = static_cast<float>(std::min(bar.height, bar.width) * 0.36);
    const ImDrawFlags rounded = roundedUp ? ImDrawFlags_RoundCornersTop : ImDrawFlags_RoundCornersBottom;
    const ImVec2 from = point(bar.x, bar.y);
    const ImVec2 to = point(bar.right(), bar.bottom());
    ink().AddRectFilled(from, to, palette::kSteelLight, radius, rounded);
    ink().AddRect(from, to, palette::kInk, radius, rounded, static_cast<float>(surface.px(1.5)));
    const double burr = surface.px(4.0);
    const double y = roundedUp ? bar.bottom() : bar.y;
    const double tip = roundedUp ? y + burr : y - burr;
    for (const double x : {bar.x, bar.right()}) {
        const double inward = x == bar.x ? burr : -burr;
        ink().AddTriangleFilled(point(x, y), point(x + inward, y), point(x, tip), palette::kInk);
    }
}

/// Any other part: the reference face carries a strip that is named.
void drawPlainSection(const Area& bar, bool referenceUp) {
    fillArea(bar, palette::kSteelLight);
    frameArea(bar, palette::kInk, 0.0, 1.5);
    const double strip = bar.height * 0.26;
    const double y = referenceUp ? bar.y : bar.bottom() - strip;
    fillArea({bar.x, y, bar.width, strip}, palette::kSoftInk);
}

void drawEye(const Area& area, const Surface& surface) {
    const double w = surface.px(11.0);
    const double h = surface.px(5.5);
    const ImVec2 c = point(area.middleX(), area.y + h);
    ink().AddBezierQuadratic(point(area.middleX() - w, area.y + h), point(area.middleX(), area.y - h * 0.9),
                             point(area.middleX() + w, area.y + h), palette::kInk, 1.6F);
    ink().AddBezierQuadratic(point(area.middleX() - w, area.y + h), point(area.middleX(), area.y + h * 2.9),
                             point(area.middleX() + w, area.y + h), palette::kInk, 1.6F);
    ink().AddCircleFilled(c, static_cast<float>(surface.px(2.6)), palette::kInk, 16);
}

struct PictureOf {
    bool reference = true;
    bool chosen = false;
    DialSign sign = DialSign::Empty; ///< Beside the chosen one, once it may be told.
};

bool picture(const Faces& faces, const PictureOf& shown, const Area& area, const Surface& surface) {
    const std::string label{shown.reference ? faces.reference : faces.other};
    const Pressed pressed = pressable(surface, label.c_str(), area);
    fillArea(area,
             shown.chosen ? palette::kAccentLight : (pressed.hovered ? palette::kShade : palette::kSheet),
             surface.px(6.0));
    frameArea(area, shown.chosen ? palette::kAccent : palette::kHairline, surface.px(6.0),
              shown.chosen ? 2.0 : 1.0);
    const Area inner = area.inset(surface.px(8.0));
    drawEye(inner, surface);
    const double words = surface.px(20.0);
    const double top = inner.y + surface.px(17.0);
    const double height =
        std::min(inner.bottom() - words - top - surface.px(6.0), surface.px(surface.bench ? 84.0 : 44.0));
    const double width = std::min(inner.width * 0.8, height * 2.2);
    const Area bar{inner.middleX() - width / 2.0, top, width, height};
    if (faces.kind == FaceKind::Rounded)
        drawRingSection(bar, shown.reference, surface);
    else
        drawPlainSection(bar, shown.reference);
    writeLine({inner.x, inner.bottom() - words, inner.width, words}, label,
              {surface.fonts().strong, palette::kInk, Align::Middle});
    if (shown.sign != DialSign::Empty)
        drawSign(shown.sign, point(area.right() - surface.px(13.0), area.y + surface.px(13.0)),
                 surface.px(8.0));
    return pressed.done;
}

} // namespace

std::optional<bool> facePictures(const Faces& faces, std::optional<bool> chosen, const Area& area,
                                 const Surface& surface) {
    std::optional<bool> tapped;
    const double gap = surface.px(6.0);
    for (int i = 0; i < 2; ++i) {
        PictureOf shown{.reference = i == 0, .chosen = chosen == (i == 0)};
        if (shown.chosen && faces.mustBeReference)
            shown.sign = *faces.mustBeReference == shown.reference ? DialSign::Holds : DialSign::Broken;
        if (picture(faces, shown, columnOf(area, 2, i, gap), surface))
            tapped = shown.reference;
    }
    return tapped;
}

std::optional<Wish> faceColumn(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    const std::optional<Faces> faces = facesOf(job, seat);
    if (!faces) {
        writeLines(area, "Both faces are alike: either way round is right.",
                   {surface.fonts().body, palette::kSoftInk});
        return std::nullopt;
    }
    const double words = surface.px(40.0);
    writeLine({area.x, area.y, area.width, words * 0.52},
              faces->referenceVisible ? "The face you see" : "Face not set: which do you see?",
              {surface.fonts().strong, faces->referenceVisible ? palette::kInk : palette::kUnknown});
    writeLine(
        {area.x, area.y + words * 0.52, area.width, words * 0.48},
        fmt::format("from the {} side, {}", nameOf(faces->eye),
                    job.lookingView() == job.standingView() ? "where you stand" : "as the picture shows it"),
        {surface.fonts().small, palette::kSoftInk});
    const double below = surface.px(50.0);
    const Area pictures{area.x, area.y + words + surface.px(4.0), area.width,
                        area.height - words - below - surface.px(8.0)};
    const std::optional<bool> tapped = facePictures(*faces, faces->referenceVisible, pictures, surface);
    const std::string sentence =
        faces->must.empty() ? std::string{faces->test} : faces->must + " " + std::string{faces->test};
    writeLines({area.x, pictures.bottom() + surface.px(5.0), area.width, below}, sentence,
               {surface.fonts().small, palette::kSoftInk});
    if (!tapped)
        return std::nullopt;
    return Act{FaceTurned{seat, *tapped ? faces->eye : opposite(faces->eye), job.lookingView()}};
}

} // namespace gapwise
