#include "viewer/panels/plot_parts.h"

#include "geometry/datum/datum.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr std::array<const char*, 4> kPlaces{"12", "3", "6", "9"};
constexpr double kDrawnGap = 0.32; ///< Of the casing's radius.
constexpr double kOffsets = 3.0;   ///< By how much more than the gaps an offset is enlarged.

struct Plan {
    Area picture{};
    Area words{};
    Round casing{};
    double perMm = 1.0; ///< Pixels for a millimetre of gap.
};

double meanOf(const FourPointSketch& sketch) {
    if (sketch.result)
        return sketch.result->mean;
    double sum = 0.0;
    int count = 0;
    for (const std::optional<double>& gap : sketch.gaps)
        if (gap) {
            sum += *gap;
            ++count;
        }
    return count > 0 && sum > 0.0 ? sum / count : 0.5;
}

/// The words beside the picture where the area is wide, else under it.
Plan planOf(const FourPointSketch& sketch, const Area& area, const Surface& surface) {
    Plan plan;
    const bool wide = area.width > area.height * 1.35;
    const double words = wide ? std::min(area.width * 0.44, area.width - area.height) : 0.0;
    const double below = wide ? 0.0 : std::min(area.height * 0.34, surface.px(110.0));
    plan.picture = {area.x, area.y, area.width - words, area.height - below};
    plan.words = wide ? Area{plan.picture.right(), area.y, words, area.height}
                      : Area{area.x, plan.picture.bottom(), area.width, below};
    const double line = lineHeightOf(surface.fonts().strong);
    const double title = lineHeightOf(surface.fonts().small);
    const double radius = std::min((plan.picture.height - title) / 2.0 - line * 1.1,
                                   plan.picture.width / 2.0 - surface.px(62.0));
    plan.casing = {plan.picture.middleX(), plan.picture.y + title + (plan.picture.height - title) / 2.0,
                   std::max(radius, surface.px(20.0))};
    plan.perMm = plan.casing.radius * kDrawnGap / meanOf(sketch);
    return plan;
}

/// Wall of the casing with short strokes outside, as material is drawn.
void drawCasing(const Plan& plan, const Surface& surface) {
    const Round outside = plan.casing.withRadius(plan.casing.radius + surface.px(9.0));
    for (int i = 0; i < 72; ++i) {
        const Degrees at{i * 5.0};
        drawLine(plan.casing.at(at), outside.at(at + Degrees{4.0}), {palette::kSteelLight, 1.5});
    }
    drawCircle(plan.casing, {palette::kInk, surface.px(2.0)});
}

/// How far the wheel's middle is drawn off the casing's: no farther than the gap allows.
ImVec2 wheelMiddle(const FourPointSketch& sketch, const Plan& plan) {
    if (!sketch.result)
        return point(plan.casing.x, plan.casing.y);
    const double perMm = plan.perMm * kOffsets;
    const double off = std::hypot(sketch.result->right, sketch.result->up) * perMm;
    const double most = plan.casing.radius * kDrawnGap * 0.95;
    const double held = off > most ? most / off : 1.0;
    return point(plan.casing.x + sketch.result->right * perMm * held,
                 plan.casing.y - sketch.result->up * perMm * held);
}

void drawWheel(ImVec2 middle, double radius, const Surface& surface) {
    const Round wheel{static_cast<double>(middle.x), static_cast<double>(middle.y), radius};
    ink().AddCircleFilled(middle, static_cast<float>(radius), palette::kSteelLight, 64);
    drawCircle(wheel, {palette::kInk, surface.px(1.5)});
    for (int i = 0; i < 6; ++i)
        drawLine(wheel.at(Degrees{i * 60.0 + 15.0}, 0.25), wheel.at(Degrees{i * 60.0 + 35.0}, 0.97),
                 {palette::kSteel, surface.px(1.5)});
    drawCircle(wheel.withRadius(radius * 0.22), {palette::kSteel, 1.0});
}

/// From the casing's middle to the wheel's; a short level stroke where the sag alone would put it.
void drawOffset(const FourPointSketch& sketch, const Plan& plan, ImVec2 middle, const Surface& surface) {
    const ImVec2 centre = point(plan.casing.x, plan.casing.y);
    const double cross = surface.px(5.0);
    for (const double turned : {0.0, 1.0})
        drawLine(point(plan.casing.x - cross * (1.0 - turned), plan.casing.y - cross * turned),
                 point(plan.casing.x + cross * (1.0 - turned), plan.casing.y + cross * turned),
                 {palette::kInk, 1.5});
    if (!sketch.result)
        return;
    const double most = plan.casing.radius * kDrawnGap * 0.95;
    const double sag = plan.casing.y + std::min(sketch.result->sag * plan.perMm * kOffsets, most);
    const double half = surface.px(12.0);
    drawLine(point(plan.casing.x - half, sag), point(plan.casing.x + half, sag), {palette::kAccent, 2.5});
    writeLine(
        {plan.casing.x + half + surface.px(3.0), sag - surface.px(8.0), surface.px(40.0), surface.px(16.0)},
        "sag", {surface.fonts().small, palette::kAccent});
    drawArrow(centre, middle, {palette::kBroken, surface.px(2.5)}, surface.px(8.0));
}

bool small(const FourPointSketch& sketch, double gap) {
    return sketch.pointLeast && gap < *sketch.pointLeast;
}

/// The four numbers outside the casing, each with its place.
void writeGaps(const FourPointSketch& sketch, const Plan& plan, const Surface& surface) {
    const double line = lineHeightOf(surface.fonts().strong);
    const Round around = plan.casing.withRadius(plan.casing.radius + surface.px(11.0));
    for (std::size_t i = 0; i < kPlaces.size(); ++i) {
        const Degrees at{static_cast<double>(i) * 90.0};
        const std::optional<double>& gap = sketch.gaps[i];
        const bool low = gap && small(sketch, *gap);
        const std::string words =
            fmt::format("{}: {}{}", kPlaces[i], gap ? numberWords(*gap, 2) : "–", low ? " small" : "");
        const double width = static_cast<double>(sizeOf(surface.fonts().strong, words).x) + 2.0;
        const ImVec2 rim = around.at(at);
        const double dx = i == 1 ? width / 2.0 : i == 3 ? -width / 2.0 : 0.0;
        const double dy = i == 0 ? -line / 2.0 : i == 2 ? line / 2.0 : 0.0;
        const bool now = sketch.readNow == i;
        const ImVec2 middle = point(static_cast<double>(rim.x) + dx, static_cast<double>(rim.y) + dy);
        const Area place = writeAround(
            middle, words,
            {surface.fonts().strong, low ? palette::kBroken : (now ? palette::kAccent : palette::kInk)},
            plan.picture);
        if (now) {
            frameArea(place.inset(-surface.px(2.0)), palette::kAccent, 3.0, 2.0);
            drawInwardPointer(plan.casing, at, -surface.px(1.0), palette::kAccent);
        }
    }
}

std::vector<std::string> linesFor(const FourPointSketch& sketch) {
    if (!sketch.result)
        return {"gaps in mm, drawn far too large"};
    const FourPointResult& result = *sketch.result;
    std::vector<std::string> lines;
    std::string mean = "mean " + numberWords(result.mean, 3) + " mm";
    if (!sketch.mean.empty())
        mean += sketch.mean.holds(result.mean) ? ", in " + windowWords(sketch.mean, 2)
                                               : ", not in " + windowWords(sketch.mean, 2);
    lines.push_back(mean);
    lines.push_back(fmt::format("rotor off the middle {}, toward {}", numberWords(result.eccentricity, 3),
                                hoursAndMinutes(Degrees{result.directionDeg})));
    lines.push_back(fmt::format("sag at rest {}", numberWords(result.sag, 3)));
    std::string casing = "casing, sag taken off: " + numberWords(result.casing, 3);
    if (sketch.eccentricityMost)
        casing += fmt::format(", {} {}", result.casing <= *sketch.eccentricityMost ? "at most" : "more than",
                              numberWords(*sketch.eccentricityMost, 2));
    lines.push_back(casing);
    lines.push_back(fmt::format("12 + 6 less 3 + 9: {}", signedWords(result.consistency, 2)));
    lines.push_back(fmt::format("rocked by hand ± {}: {}", numberWords(result.rock, 2),
                                result.leftWhenRocked > 0.0 ? numberWords(result.leftWhenRocked, 2) + " left"
                                                            : std::string{"touches"}));
    return lines;
}

} // namespace

void drawFourPoints(const FourPointSketch& sketch, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const Plan plan = planOf(sketch, area, surface);
    writeLine({plan.picture.x, plan.picture.y, plan.picture.width, lineHeightOf(surface.fonts().small)},
              fmt::format("seen from the {} side, inlet on top", nameOf(sketch.seenFrom)),
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
    drawCasing(plan, surface);
    const ImVec2 middle = wheelMiddle(sketch, plan);
    drawWheel(middle, plan.casing.radius * (1.0 - kDrawnGap), surface);
    drawOffset(sketch, plan, middle, surface);
    writeGaps(sketch, plan, surface);
    double y = plan.words.y + surface.px(4.0);
    for (const std::string& line : linesFor(sketch)) {
        const Area rest{plan.words.x, y, plan.words.width, plan.words.bottom() - y};
        y += writeLines(rest, line, {surface.fonts().small}) + surface.px(2.0);
    }
}

} // namespace gapwise
