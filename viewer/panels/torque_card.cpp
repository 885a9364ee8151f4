#include "viewer/panels/parts.h"

#include "viewer/panels/card_frame.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

std::string planWords(const TorquePlan& plan) {
    std::string words = fmt::format("{:g} N·m, {}", plan.torqueNm, plan.lubrication);
    for (const double percent : plan.stagesPercent)
        words += fmt::format("\n{:g} %: {:.4g} N·m", percent, plan.torqueNm * percent / 100.0);
    return words;
}

} // namespace

std::optional<Wish> torqueCard(const Job& job, const FastenerId& id, const Area& area,
                               const Surface& surface) {
    const Fastener* fastener = job.frame.fastener(id);
    if (!fastener || area.empty())
        return std::nullopt;
    const Scope scope{surface, "torque"};
    const Area inner = drawCardFrame(area, surface);
    const double row = std::max(surface.target, surface.px(36.0));
    writeLine({inner.x, inner.y, inner.width - surface.px(120.0), surface.px(26.0)},
              fmt::format("{} {}, {}", id.text, fastener->name, fastener->size), {surface.fonts().title});
    const double top = inner.y + surface.px(32.0);
    writeLines({inner.x, top, inner.width, inner.bottom() - row - top},
               fastener->plan ? planWords(*fastener->plan) : "This frame names no torque for it.",
               {surface.fonts().body});
    if (button(surface, {inner.x, inner.bottom() - row, surface.px(110.0), row}, "Close"))
        return OpenFastener{};
    return std::nullopt;
}

} // namespace gapwise
