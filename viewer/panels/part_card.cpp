#include "viewer/panels/card.h"
#include "viewer/panels/card_frame.h"
#include "viewer/panels/glyph.h"

#include "models/procedure/order.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

std::string whereWords(const Job& job, const PartId& part) {
    const Seating* seating = job.state.build.of(part);
    if (!seating)
        return "on the tray";
    const PartId meant = meantFor(job.frame, seating->seat);
    return meant == part ? "in its seat" : fmt::format("in the seat of {}", meant.text);
}

std::optional<Wish> identityButtons(const Job& job, const Area& area, const Surface& surface) {
    std::optional<Wish> wish;
    const Seating* seating = seatingInHand(job);
    const double gap = surface.px(6.0);
    if (button(surface, columnOf(area, 3, 0, gap), "Close", {.font = surface.fonts().small}))
        wish = TakeInHand{};
    if (button(surface, columnOf(area, 3, 1, gap), "About …", {.font = surface.fonts().small}))
        wish = ReadAbout{About{*job.inHand}};
    if (button(surface, columnOf(area, 3, 2, gap), "Take off",
               {.enabled = seating != nullptr, .font = surface.fonts().small}))
        wish = Act{PartTakenOff{seating->seat}};
    return wish;
}

/// Who it is: picture, name, what it is for, where it is now.
std::optional<Wish> identity(const Job& job, const PartId& id, const Area& area, const Surface& surface) {
    const Part* part = job.frame.part(id);
    const PartType* type = job.frame.typeOf(id);
    if (!part || !type)
        return std::nullopt;
    const double size = surface.px(52.0);
    drawGlyph(*type, {area.x, area.y, size, size});
    const double left = area.x + size + surface.px(10.0);
    writeLine({left, area.y, area.right() - left, surface.px(26.0)}, id.text, {surface.fonts().title});
    writeLine({left, area.y + surface.px(26.0), area.right() - left, surface.px(18.0)}, whereWords(job, id),
              {surface.fonts().small, palette::kSoftInk});
    const double buttons = std::max(surface.target, surface.px(34.0));
    const double top = area.y + size + surface.px(8.0);
    const Area words{area.x, top, area.width, area.bottom() - top - buttons - surface.px(6.0)};
    const double used = writeLines(words, part->name, {surface.fonts().strong});
    writeLines(
        {words.x, words.y + used + surface.px(3.0), words.width, words.height - used - surface.px(3.0)},
        type->function, {surface.fonts().small, palette::kSoftInk});
    return identityButtons(job, {area.x, area.bottom() - buttons, area.width, buttons}, surface);
}

void divide(const Area& column, const Surface& surface) {
    const double x = column.right() + surface.px(9.0);
    ink().AddLine(point(x, column.y), point(x, column.bottom()), palette::kHairline, 1.0F);
}

void keepLast(std::optional<Wish>& wish, std::optional<Wish> other) {
    if (other)
        wish = std::move(other);
}

struct Columns {
    Area identity{};
    Area clock{};
    Area face{};
    Area verdict{};
};

Columns columnsOf(const Area& inner, const Surface& surface) {
    const double gap = surface.px(18.0);
    const double free = inner.width - 3.0 * gap;
    Columns columns;
    columns.identity = {inner.x, inner.y, free * 0.17, inner.height};
    columns.clock = {columns.identity.right() + gap, inner.y, free * 0.285, inner.height};
    columns.face = {columns.clock.right() + gap, inner.y, free * 0.235, inner.height};
    columns.verdict = {columns.face.right() + gap, inner.y, inner.right() - columns.face.right() - gap,
                       inner.height};
    return columns;
}

std::optional<Wish> placedColumns(const Job& job, const SeatId& seat, const Columns& columns,
                                  const Surface& surface) {
    std::optional<Wish> wish;
    if (surface.bench) {
        const Area both{columns.clock.x, columns.clock.y, columns.face.right() - columns.clock.x,
                        columns.clock.height};
        keepLast(wish, sayingColumns(job, seat, both, surface));
    } else {
        keepLast(wish, clockColumn(job, seat, columns.clock, surface));
        divide(columns.clock, surface);
        keepLast(wish, faceColumn(job, seat, columns.face, surface));
    }
    divide(columns.face, surface);
    keepLast(wish, verdictColumn(job, seat, columns.verdict, surface));
    return wish;
}

} // namespace

std::optional<Wish> partCard(const Job& job, const Area& area, const Surface& surface) {
    if (area.empty() || !job.inHand)
        return std::nullopt;
    const Scope scope{surface, "card"};
    const Columns columns = columnsOf(drawCardFrame(area, surface), surface);
    std::optional<Wish> wish = identity(job, *job.inHand, columns.identity, surface);
    divide(columns.identity, surface);
    if (const Seating* seating = seatingInHand(job)) {
        keepLast(wish, placedColumns(job, seating->seat, columns, surface));
    } else {
        const Area rest{columns.clock.x, columns.clock.y, columns.verdict.right() - columns.clock.x,
                        columns.clock.height};
        keepLast(wish, seatsColumn(job, *job.inHand, rest, surface));
    }
    return wish;
}

} // namespace gapwise
