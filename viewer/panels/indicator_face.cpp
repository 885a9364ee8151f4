#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr int kNumbers = 10; ///< Around the face.
constexpr int kTicksEach = 5;

/// How much a turn of the needle is: everything that is expected fits on one.
double turnOf(const Indicator& indicator) {
    double most = indicator.division * 10.0;
    for (const std::optional<double>& value :
         {indicator.window.least, indicator.window.most, indicator.previous, indicator.value})
        most = std::max(most, std::abs(value.value_or(0.0)));
    return stepFor(most * 1.05 / kNumbers, 1) * kNumbers;
}

Degrees angleOf(double value, double turn) {
    return Degrees{value / turn * 360.0};
}

void drawTicks(const Round& face, double turn, const Indicator& indicator, const Surface& surface) {
    const bool room = face.radius > surface.px(52.0);
    const int digits = std::max(0, static_cast<int>(std::ceil(-std::log10(turn / kNumbers) - 1e-9)));
    for (int i = 0; i < kNumbers * kTicksEach; ++i) {
        const Degrees at{i * 360.0 / (kNumbers * kTicksEach)};
        const bool large = i % kTicksEach == 0;
        drawLine(face.at(at, large ? 0.88 : 0.93), face.at(at, 0.99),
                 {large ? palette::kInk : palette::kSteel, large ? 1.8 : 1.0});
        if (!large || !room)
            continue;
        const double value = turn * i / (kNumbers * kTicksEach);
        const ImVec2 middle = face.at(at, 0.73);
        const Area keep{face.x - face.radius, face.y - face.radius, face.radius * 2.0, face.radius * 2.0};
        writeAround(middle, i == 0 ? std::string{"0"} : numberWords(value, digits), {surface.fonts().small},
                    keep);
    }
    (void)indicator;
}

void drawWindow(const Round& face, double turn, const Indicator& indicator, const Surface& surface) {
    if (indicator.window.empty())
        return;
    const double least = std::clamp(indicator.window.least.value_or(0.0), 0.0, turn);
    const double most = std::clamp(indicator.window.most.value_or(turn), 0.0, turn);
    const Round rim = face.withRadius(face.radius + surface.px(4.0));
    drawArc(rim, {angleOf(least, turn), angleOf(most - least, turn)}, {palette::kHolds, surface.px(5.0)});
    for (const std::optional<double>& end : {indicator.window.least, indicator.window.most})
        if (end && *end >= 0.0 && *end <= turn)
            drawLine(face.at(angleOf(*end, turn), 0.86),
                     rim.withRadius(face.radius + surface.px(7.0)).at(angleOf(*end, turn)),
                     {palette::kHolds, 2.0});
}

void drawNeedle(const Round& face, Degrees at, ImU32 colour, const Surface& surface) {
    const ImVec2 tip = face.at(at, 0.94);
    const ImVec2 tail = face.at(at + Degrees{180.0}, 0.2);
    drawLine(tail, face.at(at, 0.7), {colour, surface.px(3.0)});
    drawLine(face.at(at, 0.7), tip, {colour, surface.px(1.5)});
    ink().AddCircleFilled(point(face.x, face.y), static_cast<float>(surface.px(5.0)), colour, 24);
}

} // namespace

void drawIndicatorFace(const Indicator& indicator, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    const double words = area.height > surface.px(120.0) ? 2.0 * line : line;
    const double size = std::min(area.width, area.height - words);
    const Round face{area.middleX(), area.y + size / 2.0, size / 2.0 - surface.px(10.0)};
    if (face.radius < surface.px(12.0))
        return;
    const double turn = turnOf(indicator);
    ink().AddCircleFilled(point(face.x, face.y), static_cast<float>(face.radius), palette::kSheet, 64);
    drawCircle(face, {palette::kInk, 1.5});
    drawWindow(face, turn, indicator, surface);
    drawTicks(face, turn, indicator, surface);
    if (indicator.previous && *indicator.previous >= 0.0)
        drawInwardPointer(face, angleOf(*indicator.previous, turn), surface.px(9.0), palette::kSoftInk);
    if (indicator.value)
        drawNeedle(face, angleOf(*indicator.value, turn), palette::kInk, surface);
    const int digits = std::max(0, static_cast<int>(std::ceil(-std::log10(turn) - 1e-9)));
    const Area below{area.x, area.y + size, area.width, line};
    writeLine(below,
              fmt::format("one turn {} {}, green: {}", numberWords(turn, digits), indicator.unit,
                          indicator.window.empty() ? "none" : "window"),
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
    if (words > line && indicator.previous)
        writeLine({area.x, below.bottom(), area.width, line},
                  fmt::format("grey tip: as received {} {}",
                              numberWords(*indicator.previous, indicator.decimals), indicator.unit),
                  {surface.fonts().small, palette::kSoftInk, Align::Middle});
}

} // namespace gapwise
