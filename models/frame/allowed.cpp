#include "models/frame/allowed.h"

namespace gapwise {

namespace {

Arcs allowedClearOf(const Frame& frame, const GapClearOfRule& rule) {
    const PartType* ring = frame.typeOf(rule.part);
    const Part* owner = frame.partWithFeature(rule.feature);
    const auto needed = ring ? clearanceNeeded(frame, rule, *ring) : std::nullopt;
    if (!needed || !owner || owner->id != frame.housing)
        return Arcs::whole();
    return Arcs::awayFrom(frame.feature(rule.feature).feature->offset, *needed);
}

} // namespace

std::optional<Degrees> clearanceNeeded(const Frame& frame, const GapClearOfRule& rule, const PartType& ring) {
    const Seat* seat = frame.seat(seatOf(rule.part));
    const Feature* feature = frame.feature(rule.feature).feature;
    if (!seat || !seat->groove || !feature || !ring.gapMm)
        return std::nullopt;
    const double bore = seat->groove->boreMm;
    const double width = extentOf(feature->form).widthMm;
    if (!(bore > 0.0) || !(width <= bore) || !(*ring.gapMm <= bore))
        return std::nullopt;
    return halfAngleOf(width, bore) + halfAngleOf(*ring.gapMm, bore) + rule.margin;
}

Arcs allowedBy(const Frame& frame, const Rule& rule) {
    if (const PrintedClock* printed = printedClockOf(rule))
        return Arcs::around(targetOf(*printed).from(Side::Compressor), printed->tolerance);
    if (const auto* clear = std::get_if<GapClearOfRule>(&rule.demand))
        return allowedClearOf(frame, *clear);
    return Arcs::whole();
}

} // namespace gapwise
