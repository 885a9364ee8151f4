#include "models/check/carrier.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

bool hasBegun(const Carrier& carrier, const Build& build) {
    if (!carrier.onceStep && carrier.onceSeated.empty())
        return true;
    if (carrier.onceStep && build.done(*carrier.onceStep))
        return true;
    const auto seated = [&](const PartId& part) { return build.in(seatOf(part)) != nullptr; };
    return !carrier.onceSeated.empty() && std::ranges::all_of(carrier.onceSeated, seated);
}

/// Follows the carriers up to the housing, adding clocks. `depth` bounds a chain that a faulty frame made
/// endless.
HousingClock throughCarriers(const Frame& frame, const Build& build, const SeatId& seatId, int depth) {
    constexpr int kDeepestChain = 8;
    const Seat* seat = frame.seat(seatId);
    if (!seat || depth > kDeepestChain)
        return {.notKnown = fmt::format("nothing is known of {}", seatId.text)};
    if (seat->fixedIndex)
        return {.index = seat->fixedIndex, .carrier = frame.housing};
    if (seatId == seatOf(frame.housing))
        return {.index = Clock::seenFrom(Side::Compressor, Degrees{0.0}), .carrier = frame.housing};
    if (seatId == seatOf(frame.rotor))
        return {.index = Clock::seenFrom(Side::Compressor, build.rotor), .carrier = frame.housing};

    const Seating* seating = build.in(seatId);
    if (!seating)
        return {.notKnown = fmt::format("{} is empty", seatId.text)};
    if (!seating->index)
        return {.notKnown = fmt::format("the clock of {} is not known", seating->part.text)};
    const Carrier* carrier = currentCarrierOf(frame, build, seatId);
    if (!carrier || carrier->part == frame.housing)
        return {.index = seating->index, .carrier = frame.housing};
    if (carrier != &seat->carriers.back())
        return {.index = seating->index, .onCarrier = true, .carrier = carrier->part};

    const HousingClock below = throughCarriers(frame, build, seatOf(carrier->part), depth + 1);
    if (!below.index)
        return {.carrier = carrier->part,
                .notKnown = fmt::format("{} rides on {}, and {}", seating->part.text, carrier->part.text,
                                        below.notKnown)};
    return {.index = below.index->turned(Side::Compressor, seating->index->from(Side::Compressor)),
            .onCarrier = below.onCarrier,
            .carrier = carrier->part};
}

} // namespace

const Carrier* currentCarrierOf(const Frame& frame, const Build& build, const SeatId& seatId) {
    const Seat* seat = frame.seat(seatId);
    const Carrier* current = nullptr;
    if (seat)
        for (const Carrier& carrier : seat->carriers)
            if (hasBegun(carrier, build))
                current = &carrier;
    return current;
}

PartId occupantOf(const Build& build, const PartId& meantPart) {
    const Seating* seating = build.in(seatOf(meantPart));
    return seating ? seating->part : meantPart;
}

bool isFilled(const Frame& frame, const Build& build, const SeatId& seatId) {
    return build.in(seatId) != nullptr || seatId == seatOf(frame.housing);
}

HousingClock housingClockOf(const Frame& frame, const Build& build, const SeatId& seat) {
    return throughCarriers(frame, build, seat, 0);
}

} // namespace gapwise
