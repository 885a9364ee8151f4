#include "viewer/scene/seat_places.h"

#include "models/access/access.h"
#include "models/access/outline.h"
#include "models/frame/sets.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// How far what carries a seat is pulled apart.
double pulledWith(const Scene& scene, const Seat& seat) {
    for (const Carrier& carrier : seat.carriers)
        if (const SceneItem* item = scene.item(carrier.part))
            return item->pulledMm;
    return 0.0;
}

} // namespace

Vec3 SeatPlace::at(const Clock& clock) const {
    return directionOf(clock) * radiusMm + Vec3{0.0, 0.0, zMm};
}

std::vector<SeatPlace> seatPlacesFor(const Frame& frame, const Build& build, const Scene& scene,
                                     const PartId& part) {
    std::vector<SeatPlace> places;
    const PartType* type = frame.typeOf(part);
    if (!type)
        return places;
    const bool inSet = piecesOf(frame, part).size() > 1;
    for (const Seat& seat : frame.seats) {
        if (inSet && seat.id != seatOf(part)) // the pieces of a set go in together, each into its own
            continue;
        if (seat.id == seatOf(frame.housing) || build.in(seat.id) || !misfitOf(frame, part, seat.id).empty())
            continue;
        const std::vector<Slab> slabs = slabsOf(*type, seat, demandedFaceOf(frame, part));
        if (slabs.empty())
            continue;
        Span z = slabs.front().z;
        double radius = 0.0;
        for (const Slab& slab : slabs) {
            z = {std::min(z.from, slab.z.from), std::max(z.to, slab.z.to)};
            radius = std::max(radius, slab.radius.to);
        }
        places.push_back({seat.id, z.middle() + pulledWith(scene, seat), radius});
    }
    return places;
}

std::optional<SeatHit> seatAt(const std::vector<SeatPlace>& places, const SceneCamera& camera,
                              const PictureSize& size, const Spot& spot) {
    constexpr double kWithinPixels = 14.0;
    std::optional<SeatHit> nearest;
    for (const SeatPlace& place : places)
        for (int degree = 0; degree < 360; ++degree) {
            const Clock clock = Clock::seenFrom(Side::Compressor, Degrees{degree * 1.0});
            const PicturePoint seen = camera.toPicture(place.at(clock), size);
            const double away = std::hypot(seen.x - spot.x, seen.y - spot.y);
            if (away <= kWithinPixels && (!nearest || away < nearest->pixels))
                nearest = SeatHit{place.seat, clock, away};
        }
    return nearest;
}

} // namespace gapwise
