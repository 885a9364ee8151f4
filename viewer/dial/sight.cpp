#include "viewer/dial/sight.h"

#include "models/access/outline.h"
#include "models/check/carrier.h"

#include <algorithm>
#include <limits>

namespace gapwise {

namespace {

/// What there is to see of a ring: the part of its face that stands out of its groove.
struct Exposed {
    Span radius{};
    double zMm = 0.0;
};

std::optional<Exposed> exposedIn(const Frame& frame, const Build& build, const Seat& seat) {
    const Seating* seating = build.in(seat.id);
    const PartType* type = seating ? frame.typeOf(seating->part) : frame.type(seat.types.front());
    if (!type || type->shape.rings.empty())
        return std::nullopt;
    Span radius{std::numeric_limits<double>::max(), 0.0};
    for (const Slab& slab : slabsOf(*type, seat, Side::Compressor)) {
        radius.from = std::min(radius.from, slab.radius.from);
        radius.to = std::max(radius.to, slab.radius.to);
    }
    if (seat.groove)
        radius.to = std::min(radius.to, seat.groove->boreMm / 2.0);
    return Exposed{radius, seat.zMm};
}

enum class Cover { None, Ring, Closed };

/// What one part does to the sight of `exposed` from the end `eye`: a ring of its own width leaves it visible
/// past its bore, a part with a narrower bore closes it.
Cover coverBy(const std::vector<Slab>& slabs, const Exposed& exposed, Side eye) {
    constexpr double kMostOfIt = 0.9;
    constexpr double kNarrowerMm = 1.0;
    Cover cover = Cover::None;
    for (const Slab& slab : slabs) {
        const double ahead = (slab.z.middle() - exposed.zMm) * signOf(eye);
        const double overlap =
            std::min(slab.radius.to, exposed.radius.to) - std::max(slab.radius.from, exposed.radius.from);
        if (ahead <= 0.0 || overlap < kMostOfIt * exposed.radius.length())
            continue;
        if (slab.radius.from < exposed.radius.from - kNarrowerMm)
            return Cover::Closed;
        cover = Cover::Ring;
    }
    return cover;
}

Cover coverFrom(const Frame& frame, const Build& build, const Seat& seat, Side eye) {
    const std::optional<Exposed> exposed = exposedIn(frame, build, seat);
    Cover cover = Cover::None;
    if (!exposed)
        return cover;
    for (const Seating& standing : build.seatings) {
        const Seat* place = frame.seat(standing.seat);
        const PartType* type = frame.typeOf(standing.part);
        const bool other = place && type && standing.seat != seat.id && standing.part != frame.housing;
        if (!other)
            continue;
        const Side looks =
            standing.referenceFaceLooks.value_or(demandedFaceOf(frame, partMeantFor(standing.seat)));
        cover = std::max(cover, coverBy(slabsOf(*type, *place, looks), *exposed, eye));
    }
    return cover;
}

/// A ring that went into a bore with what carried it before: nobody sees its gap again.
bool enteredItsBore(const Frame& frame, const Build& build, const Seat& seat) {
    const Carrier* carrier = currentCarrierOf(frame, build, seat.id);
    return carrier && seat.carriers.size() > 1 && carrier == &seat.carriers.back();
}

bool carriedOutside(const Frame& frame, const Build& build, const Seat& seat) {
    const Carrier* carrier = currentCarrierOf(frame, build, seat.id);
    if (!carrier || carrier->part == frame.housing)
        return false;
    return carrier != &seat.carriers.back() || !isFilled(frame, build, seatOf(carrier->part));
}

} // namespace

std::string_view wordOf(Sight sight) {
    switch (sight) {
    case Sight::Plain: return "in sight";
    case Sight::ThroughTheBore: return "through the bore";
    case Sight::FromBeside: return "from beside";
    case Sight::Hidden: break;
    }
    return "hidden";
}

Sight sightOf(const Frame& frame, const Build& build, const SeatId& seatId) {
    const Seat* seat = frame.seat(seatId);
    if (!seat)
        return Sight::Hidden;
    if (carriedOutside(frame, build, *seat))
        return Sight::FromBeside;
    if (enteredItsBore(frame, build, *seat))
        return Sight::Hidden;
    const Side own = seat->entersFrom.value_or(Side::Compressor);
    switch (coverFrom(frame, build, *seat, own)) {
    case Cover::None: return Sight::Plain;
    case Cover::Ring: return Sight::ThroughTheBore;
    case Cover::Closed: break;
    }
    // Only a ring in a groove of the bore shows its back to the other end.
    const bool back = seat->groove && coverFrom(frame, build, *seat, opposite(own)) != Cover::Closed;
    return back ? Sight::ThroughTheBore : Sight::Hidden;
}

bool inSightFrom(const Frame& frame, const Build& build, const SeatId& seatId, Side eye) {
    const Seat* seat = frame.seat(seatId);
    if (!seat || carriedOutside(frame, build, *seat) || enteredItsBore(frame, build, *seat))
        return false;
    if (eye != seat->entersFrom.value_or(eye) && !seat->groove)
        return false;
    return coverFrom(frame, build, *seat, eye) != Cover::Closed;
}

} // namespace gapwise
