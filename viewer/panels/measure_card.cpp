#include "viewer/panels/card_frame.h"
#include "viewer/panels/parts.h"

#include <algorithm>

namespace gapwise {

std::optional<Wish> measureCard(const Job& job, const MeasurementId& id, const Area& area,
                                const Surface& surface) {
    const Measurement* measurement = job.frame.measurement(id);
    if (!measurement || area.empty())
        return std::nullopt;
    const Scope scope{surface, "measure"};
    const Area inner = drawCardFrame(area, surface);
    const double row = std::max(surface.target, surface.px(40.0));
    const double wide = surface.px(110.0);
    writeLine({inner.x, inner.y, inner.width - wide, row}, measurement->name, {surface.fonts().title});
    if (button(surface, {inner.right() - wide, inner.y, wide, row}, "Close"))
        return OpenMeasurement{};
    return std::nullopt;
}

} // namespace gapwise
