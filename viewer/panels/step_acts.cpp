#include "viewer/panels/card.h"
#include "viewer/panels/draw.h"
#include "viewer/panels/step_page.h"
#include "viewer/panels/telling.h"

#include "models/frame/sets.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

/// The pieces that a step places, of a set of screws its first one.
std::vector<PartId> piecesPlaced(const Frame& frame, const Step& step) {
    std::vector<PartId> parts;
    for (const PartId& part : step.places)
        if (part != frame.housing && piecesOf(frame, part).front() == part)
            parts.push_back(part);
    return parts;
}

/// One part to take in hand, ticked once it is in its seat.
void partButton(const StepPage& page, const PartId& part, const Area& area) {
    const bool placed = page.job.state.build.of(part) != nullptr;
    const std::string name = setNameOf(page.job.frame, part);
    if (button(page.surface, area, name,
               {.font = page.surface.fonts().strong, .second = placed ? "in its seat" : "take in hand"}))
        page.wish = TakeInHand{part};
    if (placed)
        drawSign(DialSign::Holds, point(area.x + page.surface.px(14.0), area.middleY()),
                 page.surface.px(8.0));
}

void addParts(StepPage& page) {
    const std::vector<PartId> parts = piecesPlaced(page.job.frame, page.step);
    if (parts.empty())
        return;
    page.flow.text(Kind::Heading, "Parts");
    const double least = std::max(page.rowHeight(), page.surface.px(118.0));
    const double gap = page.surface.px(6.0);
    const auto each = static_cast<std::size_t>(std::max(1.0, (page.flow.width() + gap) / (least + gap)));
    for (std::size_t first = 0; first < parts.size(); first += each)
        page.flow.row(std::max(page.rowHeight(), page.surface.px(46.0)),
                      [p = page, parts, first, each, gap](const Area& area) {
                          for (std::size_t i = 0; i < each && first + i < parts.size(); ++i)
                              partButton(p, parts[first + i],
                                         columnOf(area, static_cast<int>(each), static_cast<int>(i), gap));
                      });
}

/// The demand of a seat in words, only where it may be shown.
void addSeen(StepPage& page) {
    bool heading = false;
    for (const PartId& part : piecesPlaced(page.job.frame, page.step)) {
        const SeatId seat = seatOf(part);
        const bool shown = demandShown(page.job, seat);
        const auto demand = demandWordsOf(page.job, seat);
        const auto faces = facesOf(page.job, seat);
        const bool told = shown && (demand || (faces && !faces->must.empty()));
        const PartType* type = page.job.frame.typeOf(part);
        const bool turns = type && type->index != IndexKind::None;
        if (!told && !(turns && !shown))
            continue;
        if (!std::exchange(heading, true))
            page.flow.text(Kind::Heading, "You must see");
        if (!told) {
            page.flow.text(Kind::Soft,
                           fmt::format("{}: told once {}.", part.text,
                                       page.job.use == Use::Bench ? "you said what you see"
                                                                  : "it was set as you think right"));
            continue;
        }
        if (demand)
            page.flow.text(Kind::Body, fmt::format("{}: the {} at {}, {} ({})", part.text,
                                                   type ? wordOf(type->index) : "index", demand->clock,
                                                   demand->stands, demand->printed));
        if (faces && !faces->must.empty())
            page.flow.text(Kind::Body, fmt::format("{}: {}", part.text, faces->must));
    }
}

void addFasteners(StepPage& page) {
    bool heading = false;
    for (const Fastener& fastener : page.job.frame.fasteners) {
        if (fastener.step != page.step.id)
            continue;
        if (!std::exchange(heading, true))
            page.flow.text(Kind::Heading, "Tighten");
        addButton(page, fastener.id.text + " " + fastener.name, {.second = fastener.size},
                  [p = page, id = fastener.id] { p.wish = OpenFastener{id}; });
    }
}

void addList(StepPage& page, const char* heading, const std::vector<std::string>& items) {
    if (items.empty())
        return;
    page.flow.text(Kind::Heading, heading);
    for (const std::string& item : items)
        page.flow.text(Kind::Body, "· " + item);
}

void addLubricants(StepPage& page) {
    if (page.step.lubricants.empty())
        return;
    page.flow.text(Kind::Heading, "Lubricant");
    for (const LubricantPoint& each : page.step.lubricants) {
        page.flow.text(Kind::Body, fmt::format("{}: {}", each.where, each.use));
        if (!each.never.empty())
            page.flow.text(Kind::Strong, "Never: " + each.never);
    }
}

void addConsumables(StepPage& page) {
    std::vector<std::string> items;
    for (const Consumable& each : page.step.consumables)
        items.push_back(fmt::format("{} × {}", each.quantity, each.name));
    addList(page, "New", items);
}

} // namespace

void addActs(StepPage& page) {
    if (page.step.closesRecord && page.job.frame.purpose == Purpose::Practice)
        page.flow.text(Kind::Strong, "This frame is for practice: the job ends as a practice record, never "
                                     "as a release.");
    if (!page.step.acts.empty())
        page.flow.text(Kind::Heading, "Do");
    for (std::size_t i = 0; i < page.step.acts.size(); ++i)
        page.flow.text(Kind::Body, fmt::format("{}  {}", i + 1, page.step.acts[i]));
    addParts(page);
    addSeen(page);
    addFasteners(page);
    addLubricants(page);
    addList(page, "Tools", page.step.tools);
    addConsumables(page);
    addList(page, "Written down", page.step.records);
}

} // namespace gapwise
