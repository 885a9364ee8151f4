#include "viewer/dial/dial.h"
#include "viewer/panels/draw.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/telling.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

std::optional<Wish> notePanel(const Note& note, const Area& area, const Surface& surface) {
    const double button_ = surface.px(72.0);
    const double width = area.width - button_ - surface.px(52.0);
    const double height =
        std::max(area.height, heightOf(width, note.words, surface.fonts().body) + surface.px(12.0));
    // A long reason grows upward.
    const Area box{area.x, area.bottom() - height, area.width, height};
    fillArea(box, note.refused ? palette::kBrokenLight : palette::kAccentLight, surface.px(6.0));
    frameArea(box, note.refused ? palette::kBroken : palette::kAccent, surface.px(6.0), 1.5);
    drawSign(note.refused ? DialSign::Broken : DialSign::Holds,
             point(box.x + surface.px(20.0), box.y + surface.px(20.0)), surface.px(10.0));
    writeLines({box.x + surface.px(40.0), box.y + surface.px(6.0), width, box.height - surface.px(8.0)},
               note.refused ? "Not done. " + note.words : note.words, {surface.fonts().body});
    const Area ok{box.right() - button_ - surface.px(6.0), box.bottom() - area.height + surface.px(5.0),
                  button_, area.height - surface.px(10.0)};
    if (button(surface, ok, "Seen"))
        return DismissNote{};
    return std::nullopt;
}

/// A sign with a number and a word; returns its right end.
double chip(const Surface& surface, const Area& area, DialSign sign, const std::string& words) {
    drawSign(sign, point(area.x + surface.px(9.0), area.middleY()), surface.px(8.0));
    const double width = static_cast<double>(sizeOf(surface.fonts().strong, words).x);
    writeLine({area.x + surface.px(21.0), area.y, width + 2.0, area.height}, words,
              {surface.fonts().strong, colourOf(sign)});
    return area.x + surface.px(21.0) + width + surface.px(14.0);
}

/// The part of the outermost ring of which nobody said what he sees: rings on a dial lie too close for
/// gloves.
std::optional<PartId> firstUnsaid(const Job& job) {
    for (const Side side : {Side::Turbine, Side::Compressor})
        for (const DialRing& ring : endDialOf(job, side).rings)
            if (ring.filled && ring.state.sign == DialSign::Unsaid && ring.sight != Sight::Hidden)
                return ring.part;
    return std::nullopt;
}

void drawCounts(const Counts& counts, Area area, const Surface& surface) {
    const auto next = [&](double right) { area = {right, area.y, area.right() - right, area.height}; };
    if (counts.broken > 0)
        next(chip(surface, area, DialSign::Broken,
                  fmt::format("{} {} broken", counts.broken, counts.broken == 1 ? "rule" : "rules")));
    if (counts.open > 0)
        next(chip(surface, area, DialSign::Open, fmt::format("{} open", counts.open)));
    if (counts.untold > 0)
        next(chip(surface, area, DialSign::NotSet, fmt::format("{} to be set or said", counts.untold)));
    if (counts.held > 0)
        next(chip(surface, area, DialSign::Holds, fmt::format("{} hold", counts.held)));
    if (counts.notDue > 0)
        writeLine(area, fmt::format("{} not due yet", counts.notDue),
                  {surface.fonts().small, palette::kSoftInk});
}

} // namespace

std::optional<Wish> noticesPanel(const Workplace& workplace, const Area& area, const Surface& surface) {
    if (area.empty())
        return std::nullopt;
    const Scope scope{surface, "notices"};
    std::optional<Wish> wish;
    if (workplace.note) {
        wish = notePanel(*workplace.note, area, surface);
    } else if (workplace.job) {
        fillArea(area, palette::kSheet, surface.px(6.0));
        frameArea(area, palette::kHairline, surface.px(6.0));
        Area inner = area.inset(surface.bench ? 0.0 : surface.px(5.0));
        if (const auto unsaid = surface.bench ? firstUnsaid(*workplace.job) : std::nullopt) {
            const double wide = surface.px(150.0);
            if (button(surface, {inner.right() - wide, inner.y, wide, inner.height}, "Say " + unsaid->text,
                       {.leading = true, .font = surface.fonts().strong, .second = "what you see"}))
                wish = TakeInHand{*unsaid};
            inner.width -= wide + surface.px(6.0);
        }
        const double width = surface.px(116.0);
        const bool open = surface.drafts().box == Drafts::Box::Findings;
        drawCounts(countsOf(*workplace.job),
                   {inner.x + surface.px(5.0), inner.y, inner.width - width - surface.px(10.0), inner.height},
                   surface);
        if (button(surface, {inner.right() - width, inner.y, width, inner.height},
                   open ? "Close" : "All findings", {.chosen = open, .font = surface.fonts().small}))
            surface.drafts().box = open ? Drafts::Box::None : Drafts::Box::Findings;
    }
    return wish;
}

} // namespace gapwise
