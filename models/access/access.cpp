#include "models/access/access.h"

#include "models/access/outline.h"

#include "geometry/base/overloaded.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace gapwise {

namespace {

constexpr double kFitToleranceMm = 0.02;

/// True when `standing` reaches into the way of `moving`, which comes from the end `from`. Radii about one
/// axis.
bool inTheWay(const Slab& standing, const Slab& moving, Side from) {
    const bool ahead = from == Side::Compressor ? standing.z.to > moving.z.from + kFitToleranceMm
                                                : standing.z.from < moving.z.to - kFitToleranceMm;
    const double overlap =
        std::min(standing.radius.to, moving.radius.to) - std::max(standing.radius.from, moving.radius.from);
    return ahead && overlap > kFitToleranceMm;
}

bool carries(const Seat& seat, const PartId& part) {
    return std::ranges::any_of(seat.carriers, [&](const Carrier& carrier) { return carrier.part == part; });
}

/// What a part covers in a seat. The seat's place of the origin is that of the right way round, and turned
/// about a part covers the same length: else one that was put in the wrong way round could never come out
/// again.
std::vector<Slab> coverOf(const Frame& frame, const PartType& type, const Seat& seat) {
    return slabsOf(type, seat, demandedFaceOf(frame, partMeantFor(seat.id)));
}

/// How far the axes of two seats are apart, in mm.
double apartAcross(const Seat& a, const Seat& b) {
    return length(asideOf(a) - asideOf(b));
}

/// The ring about the shaft in which a part beside the shaft lies.
std::vector<Slab> sweptAround(std::vector<Slab> slabs, double asideMm) {
    for (Slab& slab : slabs)
        slab.radius = {std::max(0.0, asideMm - slab.radius.to), asideMm + slab.radius.to};
    return slabs;
}

/// What a fastener goes through: what it holds, and the plates of its own set.
bool goesThrough(const Frame& frame, const PartId& moving, const PartId& standing) {
    const Part* piece = frame.part(moving);
    const Part* other = frame.part(standing);
    if (!piece || !piece->fastener || !other)
        return false;
    const Fastener* fastener = frame.fastener(*piece->fastener);
    const bool holds = fastener && std::ranges::find(fastener->parts, standing) != fastener->parts.end();
    return holds || other->fastener == piece->fastener;
}

/// Radii where a part that goes in meets one that stands.
struct Met {
    double insideMm = 0.0;  ///< Of what stands.
    double outsideMm = 0.0; ///< Of what goes in.
};

std::optional<Met> firstMet(const std::vector<Slab>& standing, const std::vector<Slab>& moving, Side from) {
    for (const Slab& slab : standing) {
        const auto met =
            std::ranges::find_if(moving, [&](const Slab& own) { return inTheWay(slab, own, from); });
        if (met != moving.end())
            return Met{slab.radius.from, met->radius.to};
    }
    return std::nullopt;
}

/// A part in its seat, and what it covers about the axis of that seat.
struct Piece {
    const PartId& part;
    const Seat& seat;
    std::vector<Slab> cover;
};

/// Where a part on its way from an end meets one that stands, each about its own axis.
std::optional<Met> metOnTheWay(const Frame& frame, const Piece& standing, const Piece& moving, Side from) {
    const double apart = apartAcross(standing.seat, moving.seat);
    constexpr double kSameAxisMm = 1e-3;
    if (apart < kSameAxisMm)
        return firstMet(standing.cover, moving.cover, from);
    if (standing.seat.aside)
        return firstMet(sweptAround(standing.cover, apart), moving.cover, from);
    if (goesThrough(frame, moving.part, standing.part))
        return std::nullopt;
    return firstMet(standing.cover, sweptAround(moving.cover, apart), from);
}

} // namespace

std::vector<Blocked> blockersOf(const Frame& frame, const Build& build, const PartId& part,
                                const SeatId& seatId) {
    std::vector<Blocked> blockers;
    const Seat* seat = frame.seat(seatId);
    const PartType* type = frame.typeOf(part);
    if (!seat || !type || !seat->entersFrom)
        return blockers;
    const Piece moving{part, *seat, coverOf(frame, *type, *seat)};
    for (const Seating& standing : build.seatings) {
        const Seat* place = frame.seat(standing.seat);
        const PartType* other = frame.typeOf(standing.part);
        const bool together = standing.part == part || standing.part == frame.housing || !place || !other ||
                              carries(*seat, standing.part) || carries(*place, part);
        if (together)
            continue;
        const Piece stands{standing.part, *place, coverOf(frame, *other, *place)};
        if (const auto met = metOnTheWay(frame, stands, moving, *seat->entersFrom))
            blockers.push_back(
                {standing.part,
                 fmt::format("{} is in the way: it is Ø{:.4g} inside, and {} is Ø{:.4g} outside",
                             standing.part.text, 2.0 * met->insideMm, part.text, 2.0 * met->outsideMm)});
    }
    return blockers;
}

std::string misfitOf(const Frame& frame, const PartId& part, const SeatId& seatId) {
    constexpr double kAlikeShare = 0.02;
    const Seat* seat = frame.seat(seatId);
    const PartType* type = frame.typeOf(part);
    if (!seat || !type)
        return fmt::format("{} or {} is not of this frame", part.text, seatId.text);
    if (std::ranges::find(seat->types, type->id) != seat->types.end())
        return {};
    const PartType* meant = seat->types.empty() ? nullptr : frame.type(seat->types.front());
    if (!meant || meant->index != type->index || meant->face != type->face || type->shape.rings.empty() ||
        meant->shape.rings.empty())
        return fmt::format("{} is another kind of part than {} takes", part.text, seatId.text);
    const double own = 2.0 * largestRadiusOf(type->shape.rings.front().outside);
    const double wanted = 2.0 * largestRadiusOf(meant->shape.rings.front().outside);
    if (std::abs(own - wanted) > kAlikeShare * wanted)
        return fmt::format("{} is Ø{:.4g}, and {} takes Ø{:.4g}", part.text, own, seatId.text, wanted);
    return {};
}

} // namespace gapwise
