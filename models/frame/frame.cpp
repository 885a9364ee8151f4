#include "models/frame/frame.h"

#include "geometry/datum/pose.h"

#include <algorithm>

namespace gapwise {

namespace {

template <class Thing, class ThingId>
const Thing* find(const std::vector<Thing>& things, const ThingId& id) {
    const auto found =
        std::find_if(things.begin(), things.end(), [&](const Thing& thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

} // namespace

const PartType* Frame::type(const PartTypeId& wanted) const {
    return find(types, wanted);
}

const Part* Frame::part(const PartId& wanted) const {
    return find(parts, wanted);
}

const PartType* Frame::typeOf(const PartId& wanted) const {
    const Part* found = part(wanted);
    return found ? type(found->type) : nullptr;
}

const Seat* Frame::seat(const SeatId& wanted) const {
    return find(seats, wanted);
}

const Rule* Frame::rule(const RuleId& wanted) const {
    return find(rules, wanted);
}

const Step* Frame::step(const StepId& wanted) const {
    return find(steps, wanted);
}

const Fastener* Frame::fastener(const FastenerId& wanted) const {
    return find(fasteners, wanted);
}

const Measurement* Frame::measurement(const MeasurementId& wanted) const {
    return find(measurements, wanted);
}

const Dimension* Frame::dimension(const QuantityId& wanted) const {
    return find(dimensions, wanted);
}

const Chain* Frame::chain(const QuantityId& wanted) const {
    return find(chains, wanted);
}

Frame::FoundQuantity Frame::quantity(const QuantityId& wanted) const {
    for (const Measurement& each : measurements)
        if (const Quantity* found = each.quantity(wanted))
            return {&each, found};
    return {};
}

std::optional<std::size_t> Frame::stepIndex(const StepId& wanted) const {
    const Step* found = step(wanted);
    return found ? std::optional{static_cast<std::size_t>(found - steps.data())} : std::nullopt;
}

Frame::FoundFeature Frame::feature(const FeatureId& wanted) const {
    for (const PartType& candidate : types)
        for (const Feature& feature : candidate.shape.features)
            if (!feature.id.empty() && feature.id == wanted.text)
                return {&candidate, &feature};
    return {};
}

const Part* Frame::partWithFeature(const FeatureId& wanted) const {
    const PartType* owner = feature(wanted).type;
    if (!owner)
        return nullptr;
    const auto found = std::find_if(parts.begin(), parts.end(),
                                    [&](const Part& candidate) { return candidate.type == owner->id; });
    return found == parts.end() ? nullptr : &*found;
}

Vec3 asideOf(const Seat& seat) {
    return seat.aside ? directionOf(seat.aside->clock) * seat.aside->radiusMm : Vec3{};
}

const Step* hidingStepOf(const Frame& frame, const SeatId& seat) {
    const auto hides = [&](const Step& step) {
        return std::find(step.hides.begin(), step.hides.end(), seat) != step.hides.end();
    };
    const auto found = std::find_if(frame.steps.begin(), frame.steps.end(), hides);
    return found == frame.steps.end() ? nullptr : &*found;
}

std::string_view signalWordOf(Signal signal) {
    switch (signal) {
    case Signal::Danger: return "DANGER";
    case Signal::Warning: return "WARNING";
    case Signal::Caution: return "CAUTION";
    case Signal::Notice: break;
    }
    return "NOTICE";
}

std::string_view wordOf(IndexKind index) {
    switch (index) {
    case IndexKind::Gap: return "gap";
    case IndexKind::Notch: return "notch";
    case IndexKind::TopMark: return "TOP mark";
    case IndexKind::Opening: return "opening";
    case IndexKind::Arrow: return "arrow";
    case IndexKind::MatchMark: return "match mark";
    case IndexKind::None: break;
    }
    return "index";
}

} // namespace gapwise
