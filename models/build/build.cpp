#include "models/build/build.h"

#include <algorithm>

namespace gapwise {

const Seating* Build::in(const SeatId& seat) const {
    const auto found = std::ranges::find(seatings, seat, &Seating::seat);
    return found == seatings.end() ? nullptr : &*found;
}

const Seating* Build::of(const PartId& part) const {
    const auto found = std::ranges::find(seatings, part, &Seating::part);
    return found == seatings.end() ? nullptr : &*found;
}

bool Build::done(const StepId& step) const {
    return std::ranges::find(stepsDone, step) != stepsDone.end();
}

} // namespace gapwise
