#include "models/frame/frame_errors.h"

#include "geometry/base/overloaded.h"
#include "geometry/shape/possible.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace gapwise {

namespace {

constexpr double kSameMm = 1e-6;

bool touches(const Span& a, const Span& b) {
    return std::min(a.to, b.to) >= std::max(a.from, b.from) - kSameMm;
}

bool isInside(const Span& inner, const Span& outer) {
    return inner.from >= outer.from - kSameMm && inner.to <= outer.to + kSameMm;
}

std::string asText(const Span& span) {
    return fmt::format("{} to {} mm", span.from, span.to);
}

double largestRadius(const Outline& outline) {
    return std::visit(
        Overloaded{[](const Diameter& d) { return std::max(d.atFrom, d.atTo) / 2.0; },
                   [](const QuarterEllipse& curve) { return std::max(curve.r0, curve.r0 + curve.r1); },
                   [](const AcrossFlats& hexagon) { return hexagon.widthMm; }},
        outline);
}

double smallestRadius(const Outline& outline) {
    return std::visit(
        Overloaded{[](const Diameter& d) { return std::min(d.atFrom, d.atTo) / 2.0; },
                   [](const QuarterEllipse& curve) { return std::min(curve.r0, curve.r0 + curve.r1); },
                   [](const AcrossFlats& hexagon) { return hexagon.widthMm / 2.0; }},
        outline);
}

/// The tube about the axis that holds everything of a shape that is material.
struct Envelope {
    Span r{std::numeric_limits<double>::infinity(), 0.0};
    Span z{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};

    bool empty() const { return z.from > z.to; }
    void take(const Span& radii, const Span& stations) {
        r = Span{std::min(r.from, radii.from), std::max(r.to, radii.to)};
        z = Span{std::min(z.from, stations.from), std::max(z.to, stations.to)};
    }
};

Envelope envelopeOf(const Shape& shape) {
    Envelope envelope;
    for (const RingBody& ring : shape.rings)
        envelope.take({smallestRadius(ring.bore), largestRadius(ring.outside)}, ring.z);
    for (const Blades& blades : shape.blades)
        envelope.take({smallestRadius(blades.hub), largestRadius(blades.hub)},
                      {std::min(blades.zFrom, blades.zTo), std::max(blades.zFrom, blades.zTo)});
    for (const Feature& feature : shape.features)
        if (feature.does == Feature::Does::Add) {
            const Extent extent = extentOf(feature.form);
            envelope.take(extent.r, extent.z);
        }
    return envelope;
}

/// A cut has to meet the body roughly; where exactly, only the solid tells.
void featureErrors(const PartType& type, Complaints& complaints) {
    const Envelope body = envelopeOf(type.shape);
    for (std::size_t i = 0; i < type.shape.features.size() && !body.empty(); ++i) {
        const Feature& feature = type.shape.features[i];
        const Extent extent = extentOf(feature.form);
        const bool hasPlace = !std::holds_alternative<SteppedJoint>(feature.form);
        if (feature.does == Feature::Does::Add || !hasPlace ||
            (touches(extent.r, body.r) && touches(extent.z, body.z)))
            continue;
        complaints.add(
            fmt::format("{}/shape/features/{}", type.pointer, i),
            fmt::format("a cut at z {}, r {}", asText(extent.z), asText(extent.r)),
            fmt::format("a cut that meets the body at z {}, r {}", asText(body.z), asText(body.r)));
    }
}

void positive(double value, const std::string& pointer, std::string_view what, Complaints& complaints) {
    if (!(value > 0.0) || !std::isfinite(value))
        complaints.add(pointer, fmt::format("{}", value), fmt::format("a {} above 0", what));
}

void typeErrors(const PartType& type, Complaints& complaints) {
    positive(type.densityGPerCm3, type.pointer + "/density_g_cm3", "density", complaints);
    positive(type.massKg, type.pointer + "/mass_kg", "mass", complaints);
    const bool hasGap = type.index == IndexKind::Gap;
    if (type.gapMm)
        positive(*type.gapMm, type.pointer + "/gap_mm", "gap", complaints);
    if (hasGap != type.gapMm.has_value())
        complaints.add(type.pointer, hasGap ? "the index gap without gap_mm" : "gap_mm without the index gap",
                       "both or neither");
    if (type.joint && !hasGap)
        complaints.add(type.pointer + "/joint", "a joint without a gap", "a joint where the index is a gap");
    for (Error& error : impossibleSizes(type.shape, type.pointer + "/shape"))
        complaints.add(error.where, std::move(error.found), std::move(error.allowed));
    featureErrors(type, complaints);
}

/// The ring of each type has to go into the groove, and the groove into the carrier.
void grooveErrors(const Frame& frame, const Seat& seat, Complaints& complaints) {
    const RingGroove& groove = *seat.groove;
    const std::string pointer = seat.pointer + "/groove";
    positive(groove.boreMm, pointer + "/bore_mm", "diameter", complaints);
    if (!(groove.z.length() > 0.0)) {
        complaints.add(pointer + "/z_mm", fmt::format("[{}, {}]", groove.z.from, groove.z.to),
                       "[from, to] with from < to");
        return;
    }
    for (const PartTypeId& id : seat.types) {
        const PartType* type = frame.type(id);
        if (!type)
            continue;
        if (type->gapMm && *type->gapMm >= groove.boreMm)
            complaints.add(pointer + "/bore_mm",
                           fmt::format("{} mm, not more than the gap of {} ({} mm)", groove.boreMm, id.text,
                                       *type->gapMm),
                           "a bore larger than the gap of its ring");
        const Envelope ring = envelopeOf(type->shape);
        const Span inPlace{seat.zMm + ring.z.from, seat.zMm + ring.z.to};
        if (!ring.empty() && !isInside(inPlace, groove.z))
            complaints.add(pointer + "/z_mm",
                           fmt::format("{}, but {} lies at {}", asText(groove.z), id.text, asText(inPlace)),
                           "a groove that holds its ring at the z_mm of the seat");
    }
}

/// A part has to touch what carries it, along the shaft; casings are bolted on over other parts.
void carrierErrors(const Frame& frame, const Seat& seat, Complaints& complaints) {
    const auto owner =
        std::ranges::find_if(frame.parts, [&](const Part& part) { return seatOf(part.id) == seat.id; });
    const PartType* type = owner == frame.parts.end() ? nullptr : frame.type(owner->type);
    const Envelope own = type ? envelopeOf(type->shape) : Envelope{};
    if (own.empty() || owner->casing)
        return;
    const Span place = alongShaft(frame, owner->id, own.z);
    for (const Carrier& carrier : seat.carriers) {
        const PartType* carrierType = frame.typeOf(carrier.part);
        const Envelope body = carrierType ? envelopeOf(carrierType->shape) : Envelope{};
        if (body.empty() || !frame.seat(seatOf(carrier.part)))
            continue;
        const Span reach = alongShaft(frame, carrier.part, body.z);
        if (!touches(place, reach))
            complaints.add(
                seat.pointer + "/z_mm",
                fmt::format("{}, so that {} lies at {}", seat.zMm, owner->id.text, asText(place)),
                fmt::format("a place on {}, which reaches from {}", carrier.part.text, asText(reach)));
        if (seat.groove && carrier.part == frame.housing && !isInside(seat.groove->z, reach))
            complaints.add(
                seat.pointer + "/groove/z_mm", asText(seat.groove->z),
                fmt::format("a groove within {}, which reaches from {}", carrier.part.text, asText(reach)));
    }
}

/// The piece rests on a face of its housing: within its length, and one face an end.
void restErrors(const Frame& frame, Complaints& complaints) {
    const PartType* housing = frame.typeOf(frame.housing);
    const Seat* seat = frame.seat(seatOf(frame.housing));
    const Envelope body = housing ? envelopeOf(housing->shape) : Envelope{};
    for (std::size_t i = 0; i < frame.rests.size(); ++i) {
        const Rest& rest = frame.rests[i];
        const auto before = frame.rests.begin() + static_cast<std::ptrdiff_t>(i);
        if (std::ranges::find(frame.rests.begin(), before, rest.up, &Rest::up) != before)
            complaints.add(rest.pointer + "/up", quotedId(nameOf(rest.up)), "each end once");
        if (body.empty() || !seat)
            continue;
        const Span reach{seat->zMm + body.z.from, seat->zMm + body.z.to};
        if (!isInside(Span{rest.faceMm, rest.faceMm}, reach))
            complaints.add(
                rest.pointer + "/face_z_mm", fmt::format("{}", rest.faceMm),
                fmt::format("a face of {}, which reaches from {}", frame.housing.text, asText(reach)));
    }
}

} // namespace

void sizeErrors(const Frame& frame, Complaints& complaints) {
    for (const PartType& type : frame.types)
        typeErrors(type, complaints);
    for (const Seat& seat : frame.seats) {
        if (!std::isfinite(seat.zMm))
            complaints.add(seat.pointer + "/z_mm", fmt::format("{}", seat.zMm), "a number");
        if (seat.groove)
            grooveErrors(frame, seat, complaints);
        carrierErrors(frame, seat, complaints);
    }
    restErrors(frame, complaints);
}

} // namespace gapwise
