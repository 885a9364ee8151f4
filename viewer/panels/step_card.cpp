#include "viewer/panels/card_frame.h"
#include "viewer/panels/parts.h"

#include <algorithm>

namespace gapwise {

namespace {

/// The fasteners that are tightened at a step, as buttons.
std::optional<Wish> fastenerRow(const Job& job, const StepId& step, const Area& area,
                                const Surface& surface) {
    std::optional<Wish> wish;
    const auto at = [&](const Fastener& fastener) { return fastener.step == step; };
    const auto count = static_cast<int>(std::ranges::count_if(job.frame.fasteners, at));
    int index = 0;
    for (const Fastener& fastener : job.frame.fasteners)
        if (at(fastener) && button(surface, columnOf(area, std::max(count, 4), index++, surface.px(6.0)),
                                   fastener.id.text, {.second = fastener.name}))
            wish = OpenFastener{fastener.id};
    return wish;
}

} // namespace

std::optional<Wish> stepCard(const Job& job, const Area& area, const Surface& surface) {
    const Step* step = job.step ? job.frame.step(*job.step) : nullptr;
    if (!step || area.empty())
        return std::nullopt;
    const Scope scope{surface, "step"};
    const Area inner = drawCardFrame(area, surface);
    const double row = std::max(surface.target, surface.px(36.0));
    writeLine({inner.x, inner.y, inner.width, surface.px(26.0)}, step->id.text + " " + step->title,
              {surface.fonts().title});
    std::optional<Wish> wish =
        fastenerRow(job, step->id, {inner.x, inner.y + surface.px(34.0), inner.width, row}, surface);
    if (button(surface, {inner.x, inner.bottom() - row, surface.px(110.0), row}, "Close"))
        wish = OpenStep{};
    return wish;
}

} // namespace gapwise
