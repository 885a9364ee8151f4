#include "viewer/dial/end_dial.h"

#include "models/access/outline.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace gapwise {

namespace {

bool hasDialIndex(IndexKind index) {
    switch (index) {
    case IndexKind::Gap:
    case IndexKind::Notch:
    case IndexKind::TopMark:
    case IndexKind::Opening:
    case IndexKind::Arrow: return true;
    case IndexKind::MatchMark: // Speaks of the rotor's parts among themselves.
    case IndexKind::None: break;
    }
    return false;
}

/// A clock that nobody set, the same for the same part every time; away from the quarters that rules like.
Degrees seededAngle(const SeatId& seat) {
    std::size_t seed = 7;
    for (const char letter : seat.text)
        seed = seed * 31 + static_cast<unsigned char>(letter);
    return Degrees{20.0 + 90.0 * static_cast<double>(seed % 4) + static_cast<double>((seed / 4) % 50)};
}

Arc seenFrom(Side side, const Arc& arc) {
    if (side == Side::Compressor)
        return arc;
    return Arc{wrapped(Degrees{-(arc.start.value + arc.sweep.value)}), arc.sweep};
}

/// What `gaps_apart` leaves to one gap when the other is known.
Arcs apartFrom(const Frame& frame, const Build& build, const GapsApartRule& rule, const PartId& part) {
    const PartId& other = rule.first == part ? rule.second : rule.first;
    const HousingClock clock = housingClockOf(frame, build, seatOf(other));
    if (!clock.index)
        return Arcs::whole();
    const Degrees from = clock.index->from(Side::Compressor);
    return Arcs::around(from + rule.apart, rule.tolerance)
        .unitedWith(Arcs::around(from - rule.apart, rule.tolerance));
}

Arcs onItsPin(const Frame& frame, const Build& build, const EngagedRule& rule) {
    const auto* pin = std::get_if<PartId>(&rule.with);
    const HousingClock clock = pin ? housingClockOf(frame, build, seatOf(*pin)) : HousingClock{};
    return clock.index ? Arcs::around(clock.index->from(Side::Compressor), rule.engage) : Arcs::whole();
}

Arcs demandedOf(const Frame& frame, const Build& build, const PartId& part) {
    Arcs arcs = allowedIndexOf(frame, part);
    for (const Rule& rule : frame.rules) {
        if (const auto* apart = std::get_if<GapsApartRule>(&rule.demand))
            if (apart->first == part || apart->second == part)
                arcs = arcs.intersectedWith(apartFrom(frame, build, *apart, part));
        if (const auto* engaged = std::get_if<EngagedRule>(&rule.demand))
            if (engaged->part == part && !engaged->feature)
                arcs = arcs.intersectedWith(onItsPin(frame, build, *engaged));
    }
    return arcs;
}

std::vector<Arc> windowsOf(const Arcs& arcs, Side side) {
    std::vector<Arc> windows;
    for (const Arc& arc : arcs.arcs())
        if (arc.sweep.value < 360.0)
            windows.push_back(seenFrom(side, arc));
    return windows;
}

/// Half the gap as it is drawn: its own width on the groove's bore, but wide enough to be seen.
Degrees drawnHalfWidth(const PartType& type, const Seat& seat) {
    constexpr Degrees kLeast{5.0};
    if (!type.gapMm || !seat.groove || *type.gapMm >= seat.groove->boreMm)
        return kLeast;
    return std::max(kLeast, halfAngleOf(*type.gapMm, seat.groove->boreMm));
}

struct DialClock {
    std::optional<Clock> clock{};
    PartId readFrom{};
};

DialClock clockOn(const Job& job, const Build& build, const SeatId& seat) {
    const HousingClock clock = housingClockOf(job.frame, build, seat);
    if (clock.index)
        return {clock.index, clock.onCarrier ? clock.carrier : PartId{}};
    const Seating* seating = build.in(seat);
    return {seating ? seating->index : std::nullopt, clock.carrier};
}

DialRing ringOf(const Job& job, const Build& build, const Part& meant, Side side) {
    const SeatId seatId = seatOf(meant.id);
    const Seat& seat = *job.frame.seat(seatId);
    const Seating* seating = build.in(seatId);
    const PartId occupant = seating ? seating->part : meant.id;
    const PartType& type = *job.frame.typeOf(occupant);
    DialRing ring{.seat = seatId,
                  .part = occupant,
                  .index = type.index,
                  .filled = seating != nullptr,
                  .sight = sightOf(job.frame, build, seatId),
                  .drawnAt = seededAngle(seatId),
                  .halfWidth = drawnHalfWidth(type, seat),
                  .demandShown = demandShown(job, seatId),
                  .state = dialStateOf(job, seatId)};
    const DialClock clock = clockOn(job, build, seatId);
    ring.readFrom = clock.readFrom;
    if (clock.clock) {
        ring.at = clock.clock->from(side);
        ring.drawnAt = *ring.at;
    }
    if (ring.demandShown)
        ring.windows = windowsOf(demandedOf(job.frame, build, meant.id), side);
    return ring;
}

/// The parts whose places stand on the dial of an end.
std::vector<const Part*> partsOn(const Frame& frame, Side side) {
    std::vector<const Part*> parts;
    for (const Part& part : frame.parts) {
        const Seat* seat = frame.seat(seatOf(part.id));
        const PartType* type = frame.typeOf(part.id);
        if (seat && type && seat->entersFrom == side && !seat->fixedIndex && hasDialIndex(type->index))
            parts.push_back(&part);
    }
    return parts;
}

/// How far the part meant for a seat reaches toward the end, in mm.
double nearness(const Frame& frame, const PartId& part, Side side) {
    const Seat& seat = *frame.seat(seatOf(part));
    double nearest = signOf(side) * seat.zMm;
    for (const Slab& slab : slabsOf(*frame.typeOf(part), seat, Side::Compressor))
        nearest = std::max(nearest, side == Side::Compressor ? slab.z.to : -slab.z.from);
    return nearest;
}

} // namespace

DialSign signAtIndex(const DialRing& ring) {
    const bool guessed = ring.filled && !ring.at && ring.state.sign != DialSign::Turning;
    return guessed ? DialSign::NotSet : ring.state.sign;
}

EndDial endDialOf(const Job& job, Side side) {
    EndDial dial{.side = side, .arrowBelieved = !job.state.attitudeConfirmed};
    const Build build = shownBuildOf(job);
    std::vector<const Part*> parts = partsOn(job.frame, side);
    std::ranges::stable_sort(parts, std::greater{},
                             [&](const Part* part) { return nearness(job.frame, part->id, side); });
    for (const Part* part : parts)
        dial.rings.push_back(ringOf(job, build, *part, side));
    const bool level = job.attitude().up == EndUp::Level;
    dial.arrowWord = level ? "bench" : "you stand here";
    dial.arrowAt = clockSeenIn(job.standingView(), Degrees{180.0}).from(side);
    return dial;
}

std::size_t ringCountOf(const Frame& frame, Side side) {
    return partsOn(frame, side).size();
}

Clock indexFor(const Job& job, const SeatId& seat, const Clock& onDial) {
    Build build = shownBuildOf(job);
    for (Seating& seating : build.seatings)
        if (seating.seat == seat)
            seating.index = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    const HousingClock top = housingClockOf(job.frame, build, seat);
    if (!top.index)
        return onDial;
    return onDial.turned(Side::Compressor, -top.index->from(Side::Compressor));
}

} // namespace gapwise
