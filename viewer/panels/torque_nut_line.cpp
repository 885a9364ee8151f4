#include "viewer/panels/torque_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

std::string stackWords(const NutLineLimits& limits) {
    std::string parts;
    for (const PartId& part : limits.stack)
        parts += (parts.empty() ? "" : ", ") + part.text;
    return "Line across shaft end, nut and wheel. It clamps " + parts +
           ": a longer stack stops the nut short of its line.";
}

/// What was recorded last.
std::string recordedWords(const TorqueWork& work) {
    const std::optional<NutLineRead>& read = work.job.state.nutLine;
    if (!read || read->fastener != work.fastener.id)
        return "not recorded yet";
    const Result<NutLineShift> shift = nutLineOf(work.fastener, read->read, read->stackNewMinusOldMm);
    return shift ? fmt::format("recorded: read {:+.1f}°, corrected {:+.1f}°, {}", shift->read.value,
                               shift->corrected.value, nameOf(shift->outcome))
                 : std::string{"recorded"};
}

void drawOutcome(const TorqueWork& work, const Result<NutLineShift>& shift, const Area& area,
                 const Surface& surface) {
    if (!shift) {
        writeLines(area, faultWords(shift.errors().front()), {wordFont(surface), palette::kBroken});
        return;
    }
    const double used = drawFacts(area, nutLineLines(*shift, *work.plan.nutLine), surface);
    const bool agrees = shift->outcome == NutLineOutcome::Agrees;
    const double y = area.y + used + surface.px(4.0);
    drawSign(agrees ? DialSign::Holds : DialSign::Broken,
             point(area.x + surface.px(12.0), y + surface.px(14.0)), surface.px(10.0));
    writeLine({area.x + surface.px(30.0), y, area.width - surface.px(30.0), surface.px(28.0)},
              agrees ? "the line agrees" : "the line does not agree",
              {surface.fonts().title, agrees ? palette::kHolds : palette::kBroken});
}

} // namespace

std::optional<Wish> nutLinePage(const TorqueWork& work, const Area& area, const Surface& surface) {
    if (!work.plan.nutLine)
        return std::nullopt;
    TorqueDrafts& drafts = surface.drafts().torque;
    const double gap = surface.px(10.0);
    const double target = std::max(surface.bench ? surface.target : 0.0, surface.px(44.0));
    const TypedAmount read = amountIn(drafts.nutRead, "degrees");
    const TypedAmount stack = amountIn(drafts.nutStack, "mm");
    const Area left{area.x, area.y, area.width * 0.5, area.height};
    const Area row{left.x, left.y, left.width, target + surface.px(18.0)};
    typeField(surface, columnOf(row, 2, 0, gap),
              {.id = "nut-read", .label = "read, degrees, tightening +", .fault = read.fault},
              drafts.nutRead);
    typeField(surface, columnOf(row, 2, 1, gap),
              {.id = "nut-stack", .label = "stack, new less old, mm (same: 0)", .fault = stack.fault},
              drafts.nutStack);
    const bool typed = read.value && read.fault.empty() && stack.fault.empty();
    const Result<NutLineShift> shift =
        nutLineOf(work.fastener, Degrees{read.value.value_or(0.0)}, stack.value.value_or(0.0));
    const Area press{left.x, row.bottom() + gap, left.width * 0.5 - gap / 2.0, target};
    std::optional<Wish> wish;
    if (button(surface, press, "Record the line", {.enabled = typed && shift, .leading = typed && shift}))
        wish = byWhoWorks(work.job,
                          NutLineRead{.fastener = work.fastener.id,
                                      .read = Degrees{*read.value},
                                      .stackNewMinusOldMm = stack.value.value_or(0.0),
                                      .by = whoWorks(work.job)},
                          surface.drafts());
    writeLines({press.right() + gap, press.y, left.right() - press.right() - gap, target},
               recordedWords(work), {surface.fonts().body, palette::kSoftInk});
    writeLines({left.x, press.bottom() + gap, left.width, left.bottom() - press.bottom() - gap},
               stackWords(*work.plan.nutLine), {surface.fonts().small, palette::kSoftInk});
    const double right = left.right() + surface.px(24.0);
    if (typed)
        drawOutcome(work, shift, {right, area.y, area.right() - right, area.height}, surface);
    return wish;
}

} // namespace gapwise
