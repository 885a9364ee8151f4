#include "viewer/panels/card.h"
#include "viewer/panels/step_marks.h"

#include "models/access/access.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// Seats that the part could physically sit in, the seat meant for it among them wherever it stands.
std::vector<const Seat*> seatsFor(const Frame& frame, const PartId& part) {
    std::vector<const Seat*> seats;
    for (const Seat& seat : frame.seats)
        if (seat.id != seatOf(frame.housing) && misfitOf(frame, part, seat.id).empty())
            seats.push_back(&seat);
    return seats;
}

/// What the step that places the part would hide unfinished.
std::string warningBefore(const Job& job, const PartId& part) {
    const std::vector<StepMark> marks = stepMarksOf(job);
    for (std::size_t i = 0; i < marks.size(); ++i)
        if (std::ranges::find(job.frame.steps[i].places, part) != job.frame.steps[i].places.end())
            return hidesUnfinished(marks[i]);
    return {};
}

std::string seatLabel(const Job& job, const Seat& seat) {
    const PartId meant = meantFor(job.frame, seat.id);
    const Part* part = job.frame.part(meant);
    return fmt::format("Seat of {}: {}", meant.text, part ? part->name : std::string{});
}

} // namespace

std::optional<Wish> seatsColumn(const Job& job, const PartId& part, const Area& area,
                                const Surface& surface) {
    std::optional<Wish> wish;
    const double heading = surface.px(24.0);
    writeLine({area.x, area.y, area.width, heading}, "Where does it go? Tap a seat here or on a dial.",
              {surface.fonts().strong});
    const std::string warning = warningBefore(job, part);
    double top = area.y + heading + surface.px(4.0);
    if (!warning.empty()) {
        const Area notice{area.x, top, area.width, surface.px(26.0)};
        fillArea(notice, palette::kNotice, surface.px(4.0));
        writeLine(notice.inset(surface.px(4.0)), "! Last look before it goes in: " + warning,
                  {surface.fonts().body, palette::kNoticeInk});
        top = notice.bottom() + surface.px(6.0);
    }
    const std::vector<const Seat*> seats = seatsFor(job.frame, part);
    const double gap = surface.px(6.0);
    const int columns = seats.size() > 2 ? 2 : 1;
    const double height = std::max(surface.target, surface.px(40.0));
    for (std::size_t i = 0; i < seats.size(); ++i) {
        const auto row = static_cast<double>(i / static_cast<std::size_t>(columns));
        const Area line{area.x, top + row * (height + gap), area.width, height};
        const Area place = columnOf(line, columns, static_cast<int>(i) % columns, gap);
        const Seating* there = job.state.build.in(seats[i]->id);
        const std::string taken = there ? fmt::format("{} is in it", there->part.text) : std::string{};
        if (place.bottom() <= area.bottom() + 1.0 &&
            button(surface, place, seatLabel(job, *seats[i]), {.enabled = there == nullptr, .second = taken}))
            wish = Act{PartPlaced{.part = part, .seat = seats[i]->id}};
    }
    return wish;
}

} // namespace gapwise
