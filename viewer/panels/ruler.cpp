#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

Scale scaleFor(const Indicator& indicator, RulerKind kind, const Area& line) {
    std::vector<double> shown;
    for (const std::optional<double>& value :
         {indicator.window.least, indicator.window.most, indicator.previous, indicator.value})
        if (value)
            shown.push_back(*value);
    if (kind == RulerKind::Feelers || shown.empty())
        shown.push_back(0.0);
    const auto [least, most] = std::ranges::minmax(shown);
    const double room = std::max((most - least) * 0.2, indicator.division * 10.0);
    return {kind == RulerKind::Feelers ? -room * 0.4 : least - room, most + room, line.x, line.right()};
}

void drawTicks(const Scale& scale, const Area& row, const Surface& surface) {
    const double step = stepFor(scale.most - scale.least, std::max(3, static_cast<int>(row.width / 70.0)));
    const int digits = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    const double line = lineHeightOf(surface.fonts().small);
    drawLine(point(row.x, row.y), point(row.right(), row.y), {palette::kInk, 1.5});
    std::vector<RowLabel> labels;
    for (double at = std::ceil(scale.least / (step / 5.0)); at * step / 5.0 <= scale.most; at += 1.0) {
        const double value = at * step / 5.0;
        const bool large = std::fmod(std::abs(at), 5.0) < 0.5;
        drawLine(point(scale.at(value), row.y),
                 point(scale.at(value), row.y + surface.px(large ? 10.0 : 5.0)),
                 {large ? palette::kInk : palette::kSteel, large ? 1.5 : 1.0});
        if (large)
            labels.push_back({scale.at(value), numberWords(value, digits), {surface.fonts().small}});
    }
    writeRow(labels, {row.x, row.y + surface.px(10.0), row.width, line}, surface.px(6.0));
}

/// Steel to both sides of the gap, two leaves in it.
void drawFeelers(const Indicator& indicator, const Scale& scale, const Area& jaws, const Surface& surface) {
    const double zero = scale.at(0.0);
    const Area casing{jaws.x, jaws.y, zero - jaws.x, jaws.height};
    fillArea(casing, palette::kSteelLight);
    drawHatching(casing, {palette::kSteel, 5.0, false});
    if (!indicator.value)
        return;
    const double end = scale.held(*indicator.value);
    const Area wheel{end, jaws.y, jaws.right() - end, jaws.height};
    fillArea(wheel, palette::kSteelLight);
    drawHatching(wheel, {palette::kSteel, 5.0, true});
    const double middle = (zero + end) / 2.0;
    const double gap = surface.px(1.0);
    for (const auto& [left, right] : {std::pair{zero + gap, middle - gap}, {middle + gap, end - gap}})
        if (right > left)
            fillArea({left, jaws.y + jaws.height * 0.15, right - left, jaws.height * 0.7}, palette::kAccent);
}

/// The thimble's edge at the value.
void drawThimble(const Indicator& indicator, const Scale& scale, const Area& jaws, const Surface& surface) {
    if (!indicator.value)
        return;
    const double edge = scale.held(*indicator.value);
    const Area thimble{edge, jaws.y, jaws.right() - edge, jaws.height};
    fillArea(thimble, palette::kSteelLight, surface.px(2.0));
    frameArea(thimble, palette::kInk, surface.px(2.0), 1.5);
    for (double y = jaws.y + surface.px(5.0); y < jaws.bottom(); y += surface.px(5.0))
        drawLine(point(edge + surface.px(14.0), y), point(jaws.right() - 2.0, y), {palette::kSteel, 1.0});
    drawLine(point(edge, jaws.y), point(edge, jaws.bottom() + surface.px(10.0)),
             {palette::kInk, surface.px(2.0)});
}

} // namespace

void drawRuler(const Indicator& indicator, RulerKind kind, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    const double ticks = surface.px(12.0) + line;
    const double height = std::min(surface.px(54.0), area.height - ticks - 2.0 * line);
    if (height <= 0.0)
        return;
    const double top = area.y + line + (area.height - ticks - 2.0 * line - height) / 2.0;
    const Area jaws{area.x + surface.px(6.0), top, area.width - surface.px(12.0), height};
    const Scale scale = scaleFor(indicator, kind, jaws);
    if (!indicator.window.empty()) {
        const double least = scale.held(indicator.window.least.value_or(scale.least));
        const double most = scale.held(indicator.window.most.value_or(scale.most));
        fillArea({least, jaws.y - surface.px(7.0), most - least, surface.px(5.0)}, palette::kHolds);
        writeRow({{(least + most) / 2.0,
                   "window " + windowWords(indicator.window, indicator.decimals),
                   {surface.fonts().small, palette::kHolds}}},
                 {area.x, jaws.y - surface.px(8.0) - line, area.width, line}, 0.0);
    }
    if (kind == RulerKind::Feelers)
        drawFeelers(indicator, scale, jaws, surface);
    else
        drawThimble(indicator, scale, jaws, surface);
    drawTicks(scale, {jaws.x, jaws.bottom(), jaws.width, ticks}, surface);
    if (indicator.previous) {
        const double at = scale.held(*indicator.previous);
        drawDashedLine(point(at, jaws.y), point(at, jaws.bottom()), {palette::kInk, 1.5}, 3.0);
        writeRow({{at,
                   "as received " + numberWords(*indicator.previous, indicator.decimals),
                   {surface.fonts().small}}},
                 {area.x, jaws.bottom() + ticks, area.width, line}, 0.0);
    }
}

} // namespace gapwise
