#include "viewer/panels/parts.h"

#include <algorithm>

namespace gapwise {

std::optional<Wish> measuringSheet(const Job& job, const Area& area, const Surface& surface) {
    if (!job.measures || area.empty())
        return std::nullopt;
    const Scope scope{surface, "measures"};
    fillArea(area, palette::kSheet);
    frameArea(area, palette::kAccent, 0.0, 1.5);
    const Area inner = area.inset(surface.px(14.0));
    const double row = std::max(surface.target, surface.px(40.0));
    writeLine({inner.x, inner.y, inner.width * 0.6, row}, "Measurements", {surface.fonts().title});
    const double wide = surface.px(110.0);
    if (button(surface, {inner.right() - wide, inner.y, wide, row}, "Close", {.second = "Escape"}))
        return ReadMeasures{};
    return std::nullopt;
}

} // namespace gapwise
