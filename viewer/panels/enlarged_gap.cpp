#include "viewer/panels/plot_parts.h"
#include "viewer/panels/stack_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

Scale scaleFor(const EnlargedGap& gap, const Area& field) {
    double least = 0.0;
    double most = std::max(0.0, gap.predicted + gap.spread);
    for (const std::optional<double>& value : {gap.window.least, gap.window.most, gap.measured})
        if (value) {
            least = std::min(least, *value);
            most = std::max(most, *value);
        }
    // Long gaps (a nose depth) are shown from near their window on, not from the face.
    const double wide = 6.0 * std::max(gap.spread, 0.02);
    if (gap.predicted > 2.0 * wide)
        least = std::min(gap.predicted, gap.window.least.value_or(gap.predicted)) - wide;
    const double room = std::max((most - least) * 0.22, 0.005);
    return {std::max(least, 0.0), most + room, field.x, field.right()};
}

void drawFace(const Area& box, std::string_view name, bool falling, const Surface& surface) {
    fillArea(box, palette::kSteelLight);
    drawHatching(box, {palette::kSteel, surface.px(7.0), falling});
    const double line = lineHeightOf(surface.fonts().small);
    const double width =
        std::min(static_cast<double>(sizeOf(surface.fonts().small, name).x) + 6.0, box.width);
    if (width < surface.px(30.0) || box.height < line)
        return;
    const Area label{falling ? box.right() - width - 2.0 : box.x + 2.0, box.y + 2.0, width, line};
    fillArea(label, palette::kSheet, 2.0);
    writeLine(label, name, {surface.fonts().small, palette::kInk, Align::Middle});
}

} // namespace

EnlargedGap enlargedGap(const StackDrawing& drawing, const Window& window, const QuantityResult* result) {
    EnlargedGap gap{.fromName = partNameOf(drawing.chain.from),
                    .toName = partNameOf(drawing.chain.to),
                    .predicted = drawing.prediction.valueMm,
                    .spread = drawing.prediction.rssMm,
                    .window = window};
    if (result && result->after) {
        gap.measured = result->after->value;
        gap.expanded = result->after->expanded;
    }
    return gap;
}

void drawEnlargedGap(const EnlargedGap& gap, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    const Area field{area.x, area.y + 1.3 * line, area.width, area.height - 3.7 * line};
    if (field.height < line)
        return;
    const double face = surface.px(66.0);
    const Scale scale = scaleFor(gap, {field.x + face, field.y, field.width - face, field.height});
    frameArea(field, palette::kInk);
    const double left = field.x + face;
    const double right = scale.held(gap.predicted);
    drawFace({field.x, field.y, left - field.x, field.height}, gap.fromName, false, surface);
    drawFace({right, field.y, field.right() - right, field.height}, gap.toName, true, surface);
    drawLine(point(left, field.y), point(left, field.bottom()), {palette::kInk, 2.0});
    if (scale.least > 0.0) // Broken off: the face lies much farther away.
        for (const double x : {left + surface.px(10.0), left + surface.px(16.0)})
            drawLine(point(x + surface.px(4.0), field.y), point(x - surface.px(4.0), field.bottom()),
                     {palette::kSteel, 1.5});
    const double from = scale.held(gap.predicted - gap.spread);
    const double to = scale.held(gap.predicted + gap.spread);
    fillArea({from, field.y, std::max(to - from, 2.0), surface.px(7.0)}, palette::kAccent);
    for (const double x : {from, to})
        drawDashedLine(point(x, field.y), point(x, field.bottom()), {palette::kAccent, 1.5}, 4.0);
    drawLine(point(right, field.y), point(right, field.bottom()), {palette::kInk, 2.0});
    writeRow({{right,
               fmt::format("predicted {} ± {}", numberWords(gap.predicted, 3), numberWords(gap.spread, 3)),
               {surface.fonts().small, palette::kAccent}}},
             {area.x, area.y, area.width, 1.3 * line}, 0.0);
    if (!gap.window.empty()) {
        const double low = scale.held(gap.window.least.value_or(scale.least));
        const double high = scale.held(gap.window.most.value_or(scale.most));
        const double y = field.bottom() + surface.px(4.0);
        fillArea({low, y, high - low, surface.px(5.0)}, palette::kHolds);
        writeRow({{(low + high) / 2.0,
                   "window " + windowWords(gap.window, 3),
                   {surface.fonts().small, palette::kHolds}}},
                 {area.x, y + surface.px(5.0), area.width, line}, 0.0);
    }
    if (!gap.measured)
        return;
    const double at = scale.held(*gap.measured);
    const double y = field.middleY();
    drawArrow(point(left, y), point(at, y), {palette::kBroken, surface.px(2.5)}, surface.px(9.0));
    drawLine(point(at, field.y), point(at, field.bottom()), {palette::kBroken, 2.0});
    writeRow({{at,
               fmt::format("measured {} ± {}", numberWords(*gap.measured, 3), numberWords(gap.expanded, 3)),
               {surface.fonts().small, palette::kBroken}}},
             {area.x, area.bottom() - 1.2 * line, area.width, 1.2 * line}, 0.0);
}

} // namespace gapwise
