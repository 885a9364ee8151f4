#include "models/procedure/flange.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

namespace gapwise {

namespace {

bool isThreaded(const Frame& frame, const Part& part) {
    const PartType* type = frame.type(part.type);
    return type && !type->shape.threads.empty();
}

/// The pieces that are screwed: those with a thread, or all where none has one.
std::vector<const Part*> screwedPieces(const Frame& frame, const FastenerId& fastener) {
    std::vector<const Part*> pieces;
    for (const Part& part : frame.parts)
        if (part.fastener == fastener)
            pieces.push_back(&part);
    const auto threaded = [&](const Part* part) { return isThreaded(frame, *part); };
    if (std::ranges::any_of(pieces, threaded))
        std::erase_if(pieces, [&](const Part* part) { return !threaded(part); });
    return pieces;
}

/// The seats that are meant for the pieces, in the frame's order.
std::vector<FlangeScrew> seatsOf(const Frame& frame, const Fastener& fastener) {
    std::vector<FlangeScrew> screws;
    for (const Part* part : screwedPieces(frame, fastener.id)) {
        const Seat* seat = frame.seat(seatOf(part->id));
        if (!seat)
            continue;
        FlangeScrew screw{.seat = seat->id};
        if (seat->aside) {
            screw.at = seat->aside->clock.from(fastener.handSeenFrom);
            screw.radiusMm = seat->aside->radiusMm;
        }
        screws.push_back(screw);
    }
    return screws;
}

FlangeGroup evenRing(const ScrewGroup& group) {
    FlangeGroup ring{.name = group.name};
    for (int i = 0; i < group.count; ++i)
        ring.screws.push_back({.number = i + 1, .at = Degrees{360.0 * i / group.count}});
    return ring;
}

FlangeGroup drawnGroup(const ScrewGroup& group, std::span<const FlangeScrew> seats) {
    FlangeGroup drawn{.name = group.name, .drawn = true, .screws = {seats.begin(), seats.end()}};
    std::ranges::stable_sort(drawn.screws, {}, [](const FlangeScrew& screw) { return screw.at.value; });
    int number = 0;
    for (FlangeScrew& screw : drawn.screws)
        screw.number = ++number;
    return drawn;
}

} // namespace

std::vector<FlangeGroup> flangeOf(const Frame& frame, const Fastener& fastener) {
    if (!fastener.plan)
        return {};
    const std::vector<FlangeScrew> seats = seatsOf(frame, fastener);
    std::span<const FlangeScrew> left{seats};
    std::vector<FlangeGroup> groups;
    for (const ScrewGroup& group : fastener.plan->groups) {
        const auto count = static_cast<std::size_t>(std::max(0, group.count));
        if (left.size() < count) {
            groups.push_back(evenRing(group));
            continue;
        }
        groups.push_back(drawnGroup(group, left.first(count)));
        left = left.subspan(count);
    }
    return groups;
}

Degrees Facing::seen(const FlangeScrew& screw) const {
    return seenIn(view, Clock::seenFrom(view.side, screw.at));
}

Facing facingOf(const Fastener& fastener, const Attitude& attitude, const Observer& observer) {
    const Side side = fastener.handSeenFrom;
    const View standing = viewOf(attitude, observer);
    Facing facing{.view = standing, .fromBehind = standing.side != side, .up = attitude.up};
    if (!facing.fromBehind)
        return facing;
    facing.view = attitude.up == EndUp::Level
                      ? viewOf(attitude, Observer{.stand = observer.stand, .levelSide = side})
                      : afterMove(standing, TurningMove::TippedOver);
    return facing;
}

std::string facingWords(const Facing& facing) {
    const std::string side = fmt::format("seen from the {} side", nameOf(facing.view.side));
    if (facing.up == EndUp::Level)
        return side + (facing.fromBehind ? ": walk round" : ", as you stand");
    return side + (facing.fromBehind ? ", from below" : ", looking down on it");
}

} // namespace gapwise
