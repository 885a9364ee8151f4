#include "viewer/panels/glyph.h"
#include "viewer/panels/pager.h"
#include "viewer/panels/parts.h"

#include "models/frame/sets.h"

namespace gapwise {

namespace {

void drawTray(const Area& area, const Surface& surface) {
    fillArea(area, palette::kSheet, surface.px(8.0));
    frameArea(area, palette::kHairline, surface.px(8.0), 1.5);
    frameArea(area.inset(surface.px(3.0)), palette::kShade, surface.px(6.0));
}

bool tile(const Job& job, const PartId& part, const Area& area, const Surface& surface) {
    const Pressed pressed = pressable(surface, part.text.c_str(), area);
    if (pressed.hovered) {
        fillArea(area, palette::kShade, surface.px(5.0));
        surface.frame.pointedAt = part;
    }
    const double words = surface.px(17.0);
    const Area glyph = Area{area.x, area.y, area.width, area.height - words}.inset(surface.px(4.0));
    if (const PartType* type = job.frame.typeOf(part))
        drawGlyph(*type, glyph);
    writeLine({area.x, area.bottom() - words, area.width, words}, setNameOf(job.frame, part),
              {surface.fonts().small, palette::kInk, Align::Middle});
    return pressed.done;
}

} // namespace

std::optional<Wish> trayPanel(const Job& job, const Area& area, const Surface& surface) {
    if (area.empty())
        return std::nullopt;
    const Scope scope{surface, "tray"};
    drawTray(area, surface);
    const std::vector<PartId> parts = partsOnTray(job);
    const double label = surface.px(74.0);
    writeLines({area.x + surface.px(12.0), area.y + surface.px(12.0), label, area.height},
               "Tray, in\norder of\nassembly", {surface.fonts().small, palette::kSoftInk});
    const Area row{area.x + label + surface.px(14.0), area.y + surface.px(5.0),
                   area.width - label - surface.px(22.0), area.height - surface.px(10.0)};
    const RowOf wanted{.count = parts.size(),
                       .leastWidth = surface.bench ? surface.target + surface.px(2.0) : surface.px(60.0),
                       .mostWidth = surface.px(92.0),
                       .scroll = surface.drafts().trayScroll};
    const Page page = pageOf(wanted, row, surface);
    surface.drafts().trayScroll = static_cast<double>(page.first) + pageButtons(page, wanted, row, surface);
    std::optional<Wish> wish;
    for (std::size_t i = page.first; i < page.first + page.count && i < parts.size(); ++i)
        if (tile(job, parts[i], page.place(i, surface.px(2.0)), surface))
            wish = TakeInHand{parts[i]};
    if (parts.empty())
        writeLine(row, "The tray is empty: everything is in its place.",
                  {surface.fonts().body, palette::kSoftInk});
    return wish;
}

} // namespace gapwise
