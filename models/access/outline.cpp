#include "models/access/outline.h"

#include "geometry/base/overloaded.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gapwise {

double smallestRadiusOf(const Outline& outline) {
    return std::visit(
        Overloaded{[](const Diameter& d) { return std::min(d.atFrom, d.atTo) / 2.0; },
                   [](const QuarterEllipse& curve) { return std::min(curve.r0, curve.r0 + curve.r1); },
                   [](const AcrossFlats& hexagon) { return hexagon.widthMm / 2.0; }},
        outline);
}

double largestRadiusOf(const Outline& outline) {
    return std::visit(
        Overloaded{[](const Diameter& d) { return std::max(d.atFrom, d.atTo) / 2.0; },
                   [](const QuarterEllipse& curve) { return std::max(curve.r0, curve.r0 + curve.r1); },
                   [](const AcrossFlats& hexagon) { return hexagon.widthMm / std::numbers::sqrt3; }},
        outline);
}

std::vector<Slab> slabsOf(const PartType& type, const Seat& seat, Side referenceFaceLooks) {
    std::vector<Slab> slabs;
    for (const RingBody& ring : type.shape.rings) {
        const double a = seat.zMm + signOf(referenceFaceLooks) * ring.z.from;
        const double b = seat.zMm + signOf(referenceFaceLooks) * ring.z.to;
        slabs.push_back(
            {{smallestRadiusOf(ring.bore), largestRadiusOf(ring.outside)}, {std::min(a, b), std::max(a, b)}});
    }
    return slabs;
}

Side demandedFaceOf(const Frame& frame, const PartId& part) {
    const auto sideOf = [&](const FaceRule& rule) {
        if (const Side* side = std::get_if<Side>(&rule.toward))
            return *side;
        const Seat* own = frame.seat(seatOf(part));
        const Seat* toward = frame.seat(seatOf(std::get<PartId>(rule.toward)));
        return own && toward && toward->zMm < own->zMm ? Side::Turbine : Side::Compressor;
    };
    for (const Rule& rule : frame.rules)
        if (const auto* face = std::get_if<FaceRule>(&rule.demand); face && face->part == part)
            return sideOf(*face);
    return Side::Compressor;
}

} // namespace gapwise
