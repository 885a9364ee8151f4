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

/// True when `standing` reaches into the way of `moving`, which comes from the end `from`.
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

} // namespace

std::vector<Blocked> blockersOf(const Frame& frame, const Build& build, const PartId& part,
                                const SeatId& seatId) {
    std::vector<Blocked> blockers;
    const Seat* seat = frame.seat(seatId);
    const PartType* type = frame.typeOf(part);
    if (!seat || !type || !seat->entersFrom)
        return blockers;
    const std::vector<Slab> moving = coverOf(frame, *type, *seat);
    for (const Seating& standing : build.seatings) {
        const Seat* place = frame.seat(standing.seat);
        const PartType* other = frame.typeOf(standing.part);
        const bool together = standing.part == part || standing.part == frame.housing || !place || !other ||
                              carries(*seat, standing.part) || carries(*place, part);
        if (together)
            continue;
        if (const auto met = firstMet(coverOf(frame, *other, *place), moving, *seat->entersFrom))
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
