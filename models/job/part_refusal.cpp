#include "models/job/part_refusal.h"

#include "models/access/access.h"

#include <fmt/format.h>

namespace gapwise {

Error refusal(std::string what, std::string found, std::string allowed) {
    return Error{std::move(what), std::move(found), std::move(allowed)};
}

Errors refusalOfPlacing(const Frame& frame, const Build& build, const PartPlaced& event) {
    const std::string what = fmt::format("{} into {}", event.part.text, event.seat.text);
    if (!frame.part(event.part) || !frame.seat(event.seat))
        return {refusal(what, "no such part or seat", fmt::format("a part and a seat of {}", frame.id.text))};
    if (const Seating* there = build.in(event.seat))
        return {refusal(what, fmt::format("{} is in it", there->part.text), "an empty seat")};
    if (const Seating* elsewhere = build.of(event.part))
        return {refusal(what, fmt::format("{} sits in {}", event.part.text, elsewhere->seat.text),
                        "a part that lies on the tray")};
    if (const std::string misfit = misfitOf(frame, event.part, event.seat); !misfit.empty())
        return {refusal(what, misfit, "a part that can go in")};
    Errors errors;
    for (const Blocked& blocked : blockersOf(frame, build, event.part, event.seat))
        errors.push_back(refusal(what, blocked.words, fmt::format("take {} off first", blocked.by.text)));
    return errors;
}

/// Parts that only this part carries: they would be left in the air.
Errors refusalOfTakingOff(const Frame& frame, const Build& build, const PartTakenOff& event) {
    const Seating* there = build.in(event.seat);
    if (!there)
        return {refusal(event.seat.text, "it is empty", "a seat with a part in it")};
    const std::string what = fmt::format("{} out of {}", there->part.text, event.seat.text);
    Errors errors;
    for (const Seating& rider : build.seatings) {
        const Seat* seat = frame.seat(rider.seat);
        const bool only = seat && seat->carriers.size() == 1 && seat->carriers.front().part == there->part;
        if (only)
            errors.push_back(refusal(what, fmt::format("{} rides on it", rider.part.text),
                                     fmt::format("take {} off first", rider.part.text)));
    }
    for (const Blocked& blocked : blockersOf(frame, build, there->part, event.seat))
        errors.push_back(refusal(what, blocked.words, fmt::format("take {} off first", blocked.by.text)));
    return errors;
}

Errors refusalOfEmptySeat(const Build& build, const SeatId& seat) {
    if (build.in(seat))
        return {};
    return {refusal(seat.text, "it is empty", "a seat with a part in it")};
}

} // namespace gapwise
