#include "models/frame/allowed.h"

namespace gapwise {

namespace {

Arcs allowedClearOf(const Frame& frame, const GapClearOfRule& rule) {
    const PartType* ring = frame.typeOf(rule.part);
    const Part* owner = frame.partWithFeature(rule.feature);
    const auto needed = ring ? clearanceNeeded(frame, rule, *ring) : std::nullopt;
    if (!needed || !owner || owner->id != frame.housing)
        return Arcs::whole();
    const Feature& feature = *frame.feature(rule.feature).feature;
    Arcs clear = Arcs::whole();
    for (int copy = 0; copy < feature.count; ++copy)
        clear = clear.intersectedWith(
            Arcs::awayFrom(feature.offset + Degrees{360.0 * copy / feature.count}, *needed));
    return clear;
}

/// Half of what a feature covers of the bore, seen from the axis; nothing when it is wider than the bore.
std::optional<Degrees> featureHalfAngle(const FeatureForm& form, double bore) {
    if (const auto* sector = std::get_if<Sector>(&form))
        return Degrees{sector->angle.value / 2.0}; // Its angle is the same at every radius.
    const double width = extentOf(form).widthMm;
    return width <= bore ? std::optional{halfAngleOf(width, bore)} : std::nullopt;
}

} // namespace

std::optional<Degrees> clearanceNeeded(const Frame& frame, const GapClearOfRule& rule, const PartType& ring) {
    const Seat* seat = frame.seat(seatOf(rule.part));
    const Feature* feature = frame.feature(rule.feature).feature;
    if (!seat || !seat->groove || !feature || !ring.gapMm)
        return std::nullopt;
    const double bore = seat->groove->boreMm;
    if (!(bore > 0.0) || !(*ring.gapMm <= bore))
        return std::nullopt;
    const auto half = featureHalfAngle(feature->form, bore);
    return half ? std::optional{*half + halfAngleOf(*ring.gapMm, bore) + rule.margin} : std::nullopt;
}

Arcs allowedBy(const Frame& frame, const Rule& rule) {
    if (const PrintedClock* printed = printedClockOf(rule))
        return Arcs::around(targetOf(*printed).from(Side::Compressor), printed->tolerance);
    if (const auto* clear = std::get_if<GapClearOfRule>(&rule.demand))
        return allowedClearOf(frame, *clear);
    return Arcs::whole();
}

} // namespace gapwise
