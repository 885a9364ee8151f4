#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// Pixels of the sketch: the turbine end left, the compressor end right.
struct Plan {
    double turbineEnd = 0.0;
    double turbineBearing = 0.0;
    double compressorBearing = 0.0;
    double nose = 0.0;
    double axis = 0.0;
    double play = 0.0;  ///< Half of what the bearing's play is drawn as.
    double shaft = 0.0; ///< Half the shaft's thickness.
    Area dims{};
    Area plays{};
    Area words{};
};

Plan planOf(const LeverSketch& sketch, const Area& area, const Surface& surface) {
    const double line = lineHeightOf(surface.fonts().small);
    const double margin = surface.px(26.0);
    const double total = sketch.turbineMm + sketch.spanMm + sketch.noseMm;
    const double perMm = (area.width - 2.0 * margin) / std::max(total, 1.0);
    Plan plan;
    plan.turbineEnd = area.x + margin;
    plan.turbineBearing = plan.turbineEnd + sketch.turbineMm * perMm;
    plan.compressorBearing = plan.turbineBearing + sketch.spanMm * perMm;
    plan.nose = plan.compressorBearing + sketch.noseMm * perMm;
    const double words = sketch.words.empty() ? 0.0 : 2.0 * line;
    const double plays = sketch.compressorBand || sketch.compressorParts ? 3.4 * line : 0.0;
    plan.words = {area.x, area.bottom() - words, area.width, words};
    plan.plays = {area.x, plan.words.y - plays, area.width, plays};
    plan.dims = {area.x, plan.plays.y - 1.2 * line, area.width, 1.2 * line};
    const double top = area.y + surface.px(38.0);
    plan.axis = (top + plan.dims.y) / 2.0;
    const double half = std::max((plan.dims.y - top) / 2.0, surface.px(14.0));
    plan.shaft = std::min(half * 0.20, surface.px(12.0));
    plan.play = std::min(half * 0.16, surface.px(13.0));
    return plan;
}

/// Where the shaft's middle lies at a pixel when it is tilted from one corner of the bearings to the other.
double tiltedAt(const Plan& plan, double x, double sense) {
    const double span = plan.compressorBearing - plan.turbineBearing;
    const double share = (x - plan.turbineBearing) / span * 2.0 - 1.0;
    return plan.axis - sense * plan.play * share;
}

void drawShaft(const Plan& plan, double sense, const Stroke& stroke, bool filled) {
    const double from = plan.turbineEnd;
    const double to = plan.nose;
    const double yFrom = tiltedAt(plan, from, sense);
    const double yTo = tiltedAt(plan, to, sense);
    const std::array<ImVec2, 4> corners{point(from, yFrom - plan.shaft), point(to, yTo - plan.shaft),
                                        point(to, yTo + plan.shaft), point(from, yFrom + plan.shaft)};
    if (filled)
        ink().AddConvexPolyFilled(corners.data(), 4, palette::kSteelLight);
    ink().AddPolyline(corners.data(), 4, stroke.colour, ImDrawFlags_Closed,
                      static_cast<float>(stroke.thickness));
}

void drawBearing(const Plan& plan, double at, const Surface& surface) {
    const double half = surface.px(15.0);
    const double thick = surface.px(10.0);
    for (const double side : {-1.0, 1.0}) {
        const double inner = plan.axis + side * (plan.shaft + plan.play);
        const Area block{at - half, side < 0.0 ? inner - thick : inner, 2.0 * half, thick};
        fillArea(block, palette::kSheet);
        drawHatching(block, {palette::kSteel, 4.0, false});
        frameArea(block, palette::kInk, 0.0, 1.5);
    }
}

/// A small dial over an end of the shaft, its reading beside it.
struct DialAt {
    double x = 0.0;
    std::string name{};
    std::optional<double> reading{};
    bool now = false;
};

void drawDial(const DialAt& dial, const Plan& plan, const Area& area, const Surface& surface) {
    const double radius = surface.px(13.0);
    const double y = area.y + radius + surface.px(2.0);
    const ImU32 colour = dial.now ? palette::kAccent : palette::kInk;
    const double foot = tiltedAt(plan, dial.x, dial.x < plan.turbineBearing ? -1.0 : 1.0) - plan.shaft;
    drawLine(point(dial.x, y + radius), point(dial.x, foot), {colour, surface.px(2.5)});
    ink().AddCircleFilled(point(dial.x, y), static_cast<float>(radius), palette::kSheet, 32);
    drawCircle({dial.x, y, radius}, {colour, dial.now ? 3.0 : 1.5});
    drawLine(point(dial.x, y), point(dial.x + radius * 0.5, y - radius * 0.55), {colour, 2.0});
    const std::string words =
        fmt::format("{} {}", dial.name, dial.reading ? numberWords(*dial.reading, 3) : std::string{"–"});
    const double width = static_cast<double>(sizeOf(surface.fonts().strong, words).x) + 2.0;
    const double line = lineHeightOf(surface.fonts().strong);
    const bool left = dial.x < plan.turbineBearing;
    const Area place{left ? dial.x + radius + surface.px(6.0) : dial.x - radius - surface.px(6.0) - width,
                     y - line / 2.0, width, line};
    writeLine(place, words, {surface.fonts().strong, colour});
    const double tip = surface.px(7.0);
    const double x = dial.x + (left ? -1.0 : 1.0) * surface.px(12.0);
    drawArrow(point(x, plan.axis), point(x, plan.axis - plan.play * 5.0), {palette::kSoftInk, 1.5}, tip);
    drawArrow(point(x, plan.axis), point(x, plan.axis + plan.play * 5.0), {palette::kSoftInk, 1.5}, tip);
}

void drawDimensions(const LeverSketch& sketch, const Plan& plan, const Surface& surface) {
    const double y = plan.dims.y + surface.px(3.0);
    std::vector<RowLabel> labels;
    const auto between = [&](double from, double to, const std::string& words) {
        drawLine(point(from, y), point(to, y), {palette::kSoftInk, 1.0});
        for (const double end : {from, to})
            drawLine(point(end, y - surface.px(3.0)), point(end, y + surface.px(3.0)),
                     {palette::kSoftInk, 1.0});
        labels.push_back({(from + to) / 2.0, words, {surface.fonts().small, palette::kSoftInk}});
    };
    between(plan.turbineEnd, plan.turbineBearing, numberWords(sketch.turbineMm, 0) + " mm");
    between(plan.turbineBearing, plan.compressorBearing, numberWords(sketch.spanMm, 0) + " mm");
    between(plan.compressorBearing, plan.nose, numberWords(sketch.noseMm, 0) + " mm");
    writeRow(labels, {plan.dims.x, y + surface.px(2.0), plan.dims.width, lineHeightOf(surface.fonts().small)},
             surface.px(6.0));
}

/// The play at one bearing: a band from the readings, a tip where the parts put it, the limit.
struct PlayBar {
    std::string name{};
    std::optional<Window> band{};
    std::optional<double> parts{};
    std::optional<double> most{};
};

void drawPlay(const PlayBar& play, double least, double most, const Area& area, const Surface& surface) {
    const double line = lineHeightOf(surface.fonts().small);
    const Area row{area.x, area.y + line + surface.px(3.0), area.width, line * 0.7};
    const Scale scale{least, most, row.x, row.right()};
    const bool worn = play.band && play.most && play.band->least.value_or(0.0) > *play.most;
    const bool touching = play.band && play.most && !worn && play.band->most.value_or(0.0) > *play.most;
    fillArea(row, palette::kSheet);
    if (play.most)
        fillArea({scale.held(*play.most), row.y, row.right() - scale.held(*play.most), row.height},
                 palette::kBrokenLight);
    frameArea(row, palette::kHairline);
    std::string words = play.name + ": ";
    if (play.band) {
        const double from = scale.held(play.band->least.value_or(least));
        const double to = scale.held(play.band->most.value_or(most));
        fillArea({from, row.y, std::max(to - from, 3.0), row.height}, palette::kAccent);
        words += windowWords(*play.band, 2);
    } else {
        words += "no readings";
    }
    if (worn)
        words += ", worn";
    if (touching)
        words += ", may be worn";
    writeLine({area.x, area.y, area.width, line}, words,
              {surface.fonts().small, worn ? palette::kBroken : palette::kInk, Align::Middle});
    std::vector<RowLabel> below;
    if (play.parts) {
        const double at = scale.held(*play.parts);
        drawLine(point(at, row.y - 3.0), point(at, row.bottom() + 3.0), {palette::kInk, 2.5});
        below.push_back({at, "parts " + numberWords(*play.parts, 3), {surface.fonts().small}});
    }
    if (play.most) {
        drawLine(point(scale.held(*play.most), row.y - 3.0),
                 point(scale.held(*play.most), row.bottom() + 3.0), {palette::kBroken, 1.5});
        below.push_back({scale.held(*play.most),
                         "limit " + numberWords(*play.most, 3),
                         {surface.fonts().small, palette::kBroken}});
    }
    writeRow(below, {area.x, row.bottom() + 2.0, area.width, line}, surface.px(6.0));
}

void drawPlays(const LeverSketch& sketch, const Plan& plan, const Surface& surface) {
    double most = 0.0;
    for (const std::optional<Window>& band : {sketch.compressorBand, sketch.turbineBand})
        most = std::max(most, band ? band->most.value_or(0.0) : 0.0);
    for (const std::optional<double>& value : {sketch.compressorParts, sketch.turbineParts, sketch.playMost})
        most = std::max(most, value.value_or(0.0));
    const Area left = columnOf(plan.plays, 2, 0, surface.px(24.0));
    const Area right = columnOf(plan.plays, 2, 1, surface.px(24.0));
    drawPlay({"turbine bearing", sketch.turbineBand, sketch.turbineParts, sketch.playMost}, 0.0, most * 1.2,
             left, surface);
    drawPlay({"compressor bearing", sketch.compressorBand, sketch.compressorParts, sketch.playMost}, 0.0,
             most * 1.2, right, surface);
}

} // namespace

void drawLever(const LeverSketch& sketch, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const Plan plan = planOf(sketch, area, surface);
    drawDashedLine(point(area.x, plan.axis), point(area.right(), plan.axis), {palette::kSteel, 1.0},
                   surface.px(8.0));
    drawShaft(plan, -1.0, {palette::kSteel, 1.0}, false);
    drawShaft(plan, 1.0, {palette::kInk, 1.5}, true);
    drawBearing(plan, plan.turbineBearing, surface);
    drawBearing(plan, plan.compressorBearing, surface);
    drawDial({plan.turbineEnd, "turbine end", sketch.turbineReading, sketch.readNow == Side::Turbine}, plan,
             area, surface);
    drawDial({plan.nose, "nose", sketch.noseReading, sketch.readNow == Side::Compressor}, plan, area,
             surface);
    drawDimensions(sketch, plan, surface);
    if (!plan.plays.empty())
        drawPlays(sketch, plan, surface);
    if (!plan.words.empty())
        writeLines(plan.words, sketch.words, {surface.fonts().small});
}

} // namespace gapwise
