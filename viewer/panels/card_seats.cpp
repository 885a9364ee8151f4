#include "viewer/panels/card.h"
#include "viewer/panels/step_marks.h"

#include "models/access/access.h"
#include "models/frame/sets.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// Seats that the part could physically sit in, the seat meant for it among them wherever it stands. The
/// pieces of a set go in together, each into its own.
std::vector<const Seat*> seatsFor(const Frame& frame, const PartId& part) {
    if (piecesOf(frame, part).size() > 1)
        return {frame.seat(seatOf(part))};
    std::vector<const Seat*> seats;
    for (const Seat& seat : frame.seats)
        if (seat.id != seatOf(frame.housing) && misfitOf(frame, part, seat.id).empty())
            seats.push_back(&seat);
    return seats;
}

std::string named(const std::vector<PartId>& parts) {
    std::string words;
    for (const PartId& part : parts)
        words += (words.empty() ? "" : ", ") + part.text;
    return words;
}

/// What speaks against placing the part now: parts that come before it, and what its step would hide
/// unfinished.
std::vector<std::string> warningsBefore(const Job& job, const PartId& part) {
    std::vector<std::string> warnings;
    const std::vector<PartId> before = partsBefore(job, part);
    if (!before.empty())
        warnings.push_back("! Out of order: " + named(before) + (before.size() == 1 ? " comes" : " come") +
                           " before it");
    for (const StepMark& mark : stepMarksOf(job)) {
        const Step* step = job.frame.step(mark.id);
        if (!step || std::ranges::find(step->places, part) == step->places.end())
            continue;
        const std::string hidden = hidesUnfinished(mark);
        if (!hidden.empty())
            warnings.push_back("! Last look before it goes in: " + hidden);
    }
    return warnings;
}

/// The second tap on a part of the tray falls on the seat that has just appeared under the finger.
bool endsDoubleClick() {
    return ImGui::IsMouseReleased(ImGuiMouseButton_Left) &&
           ImGui::GetIO().MouseClickedLastCount[ImGuiMouseButton_Left] > 1;
}

std::string seatLabel(const Job& job, const Seat& seat) {
    const PartId meant = meantFor(job.frame, seat.id);
    const Part* part = job.frame.part(meant);
    if (const auto pieces = piecesOf(job.frame, meant).size(); pieces > 1)
        return fmt::format("All {} of {}", pieces, setNameOf(job.frame, meant));
    return fmt::format("Seat of {}: {}", meant.text, part ? part->name : std::string{});
}

} // namespace

std::optional<Wish> seatsColumn(const Job& job, const PartId& part, const Area& area,
                                const Surface& surface) {
    std::optional<Wish> wish;
    const double heading = surface.px(24.0);
    writeLine({area.x, area.y, area.width, heading},
              "Where does it go? Tap a seat here, on a dial or in the picture.", {surface.fonts().strong});
    double top = area.y + heading + surface.px(2.0);
    for (const std::string& warning : warningsBefore(job, part)) {
        const Area notice{area.x, top, area.width, surface.px(24.0)};
        fillArea(notice, palette::kNotice, surface.px(4.0));
        writeLine(notice.inset(surface.px(3.0)), warning, {surface.fonts().body, palette::kNoticeInk});
        top = notice.bottom() + surface.px(4.0);
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
            button(surface, place, seatLabel(job, *seats[i]),
                   {.enabled = there == nullptr, .second = taken}) &&
            !endsDoubleClick())
            wish = Act{PartPlaced{.part = part, .seat = seats[i]->id}};
    }
    return wish;
}

} // namespace gapwise
