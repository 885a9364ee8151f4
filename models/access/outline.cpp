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

namespace {

/// So thin that a slice's middle radius is off by less than any gap beside a curve.
constexpr int kSlices = 96;

const QuarterEllipse* curveOf(const RingBody& ring) {
    const auto* bore = std::get_if<QuarterEllipse>(&ring.bore);
    return bore ? bore : std::get_if<QuarterEllipse>(&ring.outside);
}

/// Cuts `z` where the curve has even steps of its parameter, so that its steep end is followed.
std::vector<double> cutsAlong(const QuarterEllipse& curve, const Span& z) {
    std::vector<double> cuts{z.from, z.to};
    for (int i = 0; i <= kSlices; ++i) {
        const double at = curve.z0 + curve.z1 * std::sin(std::numbers::pi / 2.0 * i / kSlices);
        if (at > z.from && at < z.to)
            cuts.push_back(at);
    }
    std::ranges::sort(cuts);
    return cuts;
}

/// In the part's own axes.
void addRing(std::vector<Slab>& slabs, const RingBody& ring) {
    const QuarterEllipse* curve = curveOf(ring);
    if (!curve) {
        slabs.push_back({{smallestRadiusOf(ring.bore), largestRadiusOf(ring.outside)}, ring.z});
        return;
    }
    const auto radiusIn = [](const Outline& outline, double z, double straight) {
        const auto* bent = std::get_if<QuarterEllipse>(&outline);
        return bent ? bent->radiusAt(z) : straight;
    };
    const std::vector<double> cuts = cutsAlong(*curve, ring.z);
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double middle = (cuts[i] + cuts[i + 1]) / 2.0;
        slabs.push_back({{radiusIn(ring.bore, middle, smallestRadiusOf(ring.bore)),
                          radiusIn(ring.outside, middle, largestRadiusOf(ring.outside))},
                         {cuts[i], cuts[i + 1]}});
    }
}

/// What the blades sweep when the wheel turns.
void addBlades(std::vector<Slab>& slabs, const Blades& blades) {
    const double end = blades.zFrom + blades.reach * (blades.zTo - blades.zFrom);
    const Span z{std::min(blades.zFrom, end), std::max(blades.zFrom, end)};
    const std::vector<double> cuts = cutsAlong(blades.edge, z);
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        const double middle = (cuts[i] + cuts[i + 1]) / 2.0;
        const bool onInlet =
            blades.inletEdgeZ && middle > blades.inletEdgeZ->from && middle < blades.inletEdgeZ->to;
        const double tip = onInlet ? largestRadiusOf(blades.edge) : blades.edge.radiusAt(middle);
        slabs.push_back({{blades.hub.radiusAt(middle), tip}, {cuts[i], cuts[i + 1]}});
    }
}

/// What is left of a slab around a groove that is turned out of it: below, above, inside, outside.
void addRest(std::vector<Slab>& rest, const Slab& slab, const Slab& groove) {
    const Span r{std::max(slab.radius.from, groove.radius.from), std::min(slab.radius.to, groove.radius.to)};
    const Span z{std::max(slab.z.from, groove.z.from), std::min(slab.z.to, groove.z.to)};
    if (r.length() <= 0.0 || z.length() <= 0.0) {
        rest.push_back(slab);
        return;
    }
    for (const Slab& piece : {Slab{slab.radius, {slab.z.from, z.from}}, Slab{slab.radius, {z.to, slab.z.to}},
                              Slab{{slab.radius.from, r.from}, z}, Slab{{r.to, slab.radius.to}, z}}) {
        if (piece.radius.length() > 0.0 && piece.z.length() > 0.0)
            rest.push_back(piece);
    }
}

std::vector<Slab> without(const std::vector<Slab>& slabs, const Groove& groove) {
    const Slab cut{{std::max(groove.bore.atFrom, groove.bore.atTo) / 2.0,
                    std::min(groove.outside.atFrom, groove.outside.atTo) / 2.0},
                   groove.z};
    std::vector<Slab> rest;
    for (const Slab& slab : slabs)
        addRest(rest, slab, cut);
    return rest;
}

} // namespace

std::vector<Slab> slabsOf(const PartType& type, const Seat& seat, Side referenceFaceLooks) {
    std::vector<Slab> slabs;
    for (const RingBody& ring : type.shape.rings)
        addRing(slabs, ring);
    for (const Feature& feature : type.shape.features)
        if (const auto* groove = std::get_if<Groove>(&feature.form);
            groove && feature.does == Feature::Does::Cut)
            slabs = without(slabs, *groove);
    for (const Blades& blades : type.shape.blades)
        addBlades(slabs, blades);
    for (Slab& slab : slabs) {
        const double a = seat.zMm + signOf(referenceFaceLooks) * slab.z.from;
        const double b = seat.zMm + signOf(referenceFaceLooks) * slab.z.to;
        slab.z = {std::min(a, b), std::max(a, b)};
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
