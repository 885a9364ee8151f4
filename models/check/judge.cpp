#include "models/check/carrier.h"
#include "models/check/face_words.h"
#include "models/check/stated.h"
#include "models/frame/allowed.h"

#include "geometry/base/overloaded.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

std::string_view nameOf(Joint joint) {
    return joint == Joint::Stepped ? "stepped" : "straight";
}

/// From the nearest of the feature's evenly divided copies, the first of which is at `place`.
Degrees apartFromNearest(const Clock& gap, const Clock& place, const Feature& feature) {
    Degrees nearest{180.0};
    for (int copy = 0; copy < feature.count; ++copy)
        nearest = std::min(nearest,
                           apart(gap, place.turned(Side::Compressor, Degrees{360.0 * copy / feature.count})));
    return nearest;
}

Side sideToward(bool towardCompressor) {
    return towardCompressor ? Side::Compressor : Side::Turbine;
}

/// Judges the rules of one build.
class Judge {
public:
    Judge(const Frame& frame, const Build& build) : frame_{frame}, build_{build} {}

    Outcome operator()(const GapClockRule& rule) const { return direction(rule.part, rule.target); }
    Outcome operator()(const MarkRule& rule) const { return direction(rule.part, rule.target); }

    Outcome operator()(const GapsApartRule& rule) const {
        ApartCompared compared{.expected = rule.apart, .tolerance = rule.tolerance};
        const auto [first, second, notKnown] = twoClocks(rule.first, rule.second);
        if (!first || !second)
            return {compared, std::nullopt, notKnown};
        compared.actual = apart(*first, *second);
        compared.deviation = *compared.actual - rule.apart;
        return {compared, std::abs(compared.deviation->value) <= (rule.tolerance + kAngleRounding).value, ""};
    }

    Outcome operator()(const GapClearOfRule& rule) const {
        ClearCompared compared{.feature = rule.feature};
        const PartId ring = occupantOf(build_, rule.part);
        const PartType* type = frame_.typeOf(ring);
        const auto needed = type ? clearanceNeeded(frame_, rule, *type) : std::nullopt;
        if (!needed)
            return {compared, std::nullopt, fmt::format("{} has no gap in a groove", ring.text)};
        compared.needed = *needed;
        const HousingClock gap = housingClockOf(frame_, build_, seatOf(rule.part));
        const HousingClock place = featureClockOf(rule.feature);
        if (!gap.index || !place.index)
            return {compared, std::nullopt, gap.index ? place.notKnown : gap.notKnown};
        compared.actual = apartFromNearest(*gap.index, *place.index, *frame_.feature(rule.feature).feature);
        compared.deviation = *compared.actual - compared.needed;
        return {compared, compared.deviation->value >= -kAngleRounding.value, ""};
    }

    Outcome operator()(const FaceRule& rule) const {
        const PartType* type = frame_.typeOf(occupantOf(build_, rule.part));
        FaceCompared compared{.face = std::string{faceWord(type)}, .expected = expectedFace(rule)};
        const Seating* seating = build_.in(seatOf(rule.part));
        if (!seating || !seating->referenceFaceLooks)
            return {
                compared, std::nullopt,
                fmt::format("which way the {} face of {} looks is not known", compared.face, rule.part.text)};
        compared.actual = seating->referenceFaceLooks;
        return {compared, compared.actual == compared.expected, ""};
    }

    Outcome operator()(const JointRule& rule) const {
        const Seating* seating = build_.in(rule.seat);
        const PartType* type = seating ? frame_.typeOf(seating->part) : nullptr;
        FactCompared compared{.expected = fmt::format("a {} joint", nameOf(rule.joint)), .actual = ""};
        if (!type)
            return {compared, std::nullopt, fmt::format("{} is empty", rule.seat.text)};
        compared.actual = type->joint ? fmt::format("a {} joint", nameOf(*type->joint)) : "no joint";
        return {compared, type->joint == rule.joint, ""};
    }

    Outcome operator()(const SeatRule& rule) const {
        const Seat* seat = frame_.seat(rule.seat);
        const Seating* seating = build_.in(rule.seat);
        FactCompared compared{.expected = wantedIn(*seat), .actual = ""};
        if (!seating) {
            compared.actual = "nothing";
            return {compared, false, ""};
        }
        const Part* part = frame_.part(seating->part);
        const bool fits = std::ranges::find(seat->types, part->type) != seat->types.end();
        compared.actual = fmt::format("{} ({})", part->id.text, frame_.type(part->type)->name);
        if (!fits)
            return {compared, false, ""};
        if (!seating->home)
            return {compared, std::nullopt,
                    fmt::format("whether {} is fully home is not known", part->id.text)};
        if (!*seating->home)
            compared.actual += ", not fully home";
        return {compared, *seating->home, ""};
    }

    Outcome operator()(const MatchMarksRule& rule) const {
        ApartCompared compared{.expected = Degrees{0.0}, .tolerance = rule.tolerance};
        std::optional<Clock> first;
        for (const PartId& part : rule.parts) {
            const HousingClock mark = housingClockOf(frame_, build_, seatOf(part));
            if (!mark.index)
                return {compared, std::nullopt, mark.notKnown};
            if (!first)
                first = mark.index;
            compared.actual = std::max(compared.actual.value_or(Degrees{0.0}), apart(*first, *mark.index));
        }
        compared.deviation = compared.actual;
        return {compared, compared.actual.value_or(Degrees{0.0}) <= rule.tolerance + kAngleRounding, ""};
    }

    Outcome operator()(const EngagedRule& rule) const {
        DirectionCompared compared{.tolerance = rule.engage};
        const HousingClock pin =
            std::visit(Overloaded{[&](const PartId& part) { return pinClockOf(part); },
                                  [&](const FeatureId& feature) { return featureClockOf(feature); }},
                       rule.with);
        if (!pin.index)
            return {compared, std::nullopt, pin.notKnown};
        compared.expected = pin.index->from(Side::Compressor);
        const HousingClock notch = rule.feature ? featureClockOn(rule.part, *rule.feature)
                                                : housingClockOf(frame_, build_, seatOf(rule.part));
        if (!notch.index)
            return {compared, std::nullopt, notch.notKnown};
        compareDirection(compared, *notch.index);
        return {compared, within(*compared.actual, compared.expected, rule.engage), ""};
    }

    Outcome operator()(const HandRule& rule) const { return handTurned(build_, rule); }
    Outcome operator()(const OrderRule& rule) const { return orderKept(frame_, build_, rule); }
    Outcome operator()(const ConditionRule& rule) const { return conditionStated(build_, rule); }

private:
    static void compareDirection(DirectionCompared& compared, const Clock& index) {
        compared.actual = index.from(compared.seenFrom);
        compared.deviation = wrappedHalf(*compared.actual - compared.expected);
    }

    Outcome direction(const PartId& part, const PrintedClock& target) const {
        DirectionCompared compared{.expected = wrapped(target.clock),
                                   .tolerance = target.tolerance,
                                   .seenFrom = target.seenFrom.value_or(Side::Compressor)};
        const HousingClock index = housingClockOf(frame_, build_, seatOf(part));
        if (!index.index)
            return {compared, std::nullopt, index.notKnown};
        compareDirection(compared, *index.index);
        return {compared, within(*compared.actual, compared.expected, target.tolerance), ""};
    }

    struct TwoClocks {
        std::optional<Clock> first{};
        std::optional<Clock> second{};
        std::string notKnown{};
    };

    /// Two gaps on one carrier are compared there, even while that carrier is not in the housing.
    TwoClocks twoClocks(const PartId& a, const PartId& b) const {
        const Carrier* onA = currentCarrierOf(frame_, build_, seatOf(a));
        const Carrier* onB = currentCarrierOf(frame_, build_, seatOf(b));
        const Seating* inA = build_.in(seatOf(a));
        const Seating* inB = build_.in(seatOf(b));
        if (onA && onB && onA->part == onB->part && inA && inB && inA->index && inB->index)
            return {inA->index, inB->index, ""};
        const HousingClock first = housingClockOf(frame_, build_, seatOf(a));
        const HousingClock second = housingClockOf(frame_, build_, seatOf(b));
        if (first.index && second.index && first.onCarrier != second.onCarrier)
            return {.notKnown = fmt::format("{} and {} do not ride on the same part yet", a.text, b.text)};
        return {first.index, second.index, first.index ? second.notKnown : first.notKnown};
    }

    /// The clock of a feature of whatever sits in the seat of `part`.
    HousingClock featureClockOn(const PartId& part, const FeatureId& id) const {
        const Feature* feature = frame_.feature(id).feature;
        HousingClock clock = housingClockOf(frame_, build_, seatOf(part));
        if (!clock.index || !feature)
            return clock;
        const Seating* seating = build_.in(seatOf(part));
        const bool sameBothWays = apart(feature->offset, -feature->offset) <= kAngleRounding;
        // The housing carries the datum: a sheet need not say which way it looks.
        const bool isDatum = !seating || part == frame_.housing;
        const std::optional<Side> looks = isDatum ? Side::Compressor : seating->referenceFaceLooks;
        if (!looks && !sameBothWays)
            return {.carrier = clock.carrier,
                    .notKnown = fmt::format("which way {} looks is not known", part.text)};
        clock.index = featureClock(*clock.index, looks.value_or(Side::Compressor), feature->offset);
        return clock;
    }

    HousingClock featureClockOf(const FeatureId& id) const {
        const Part* owner = frame_.partWithFeature(id);
        return owner ? featureClockOn(owner->id, id)
                     : HousingClock{.notKnown = fmt::format("no part has {}", id.text)};
    }

    HousingClock pinClockOf(const PartId& pin) const {
        if (!isFilled(frame_, build_, seatOf(pin)))
            return {.notKnown = fmt::format("{} is empty", seatOf(pin).text)};
        return housingClockOf(frame_, build_, seatOf(pin));
    }

    Side expectedFace(const FaceRule& rule) const {
        if (const Side* side = std::get_if<Side>(&rule.toward))
            return *side;
        const Seat* other = frame_.seat(seatOf(std::get<PartId>(rule.toward)));
        const Seat* own = frame_.seat(seatOf(rule.part));
        return sideToward(other->zMm > own->zMm);
    }

    std::string wantedIn(const Seat& seat) const {
        std::string words;
        for (const PartTypeId& id : seat.types)
            words += (words.empty() ? "" : " or ") + frame_.type(id)->name;
        return words + ", fully home";
    }

    const Frame& frame_;
    const Build& build_;
};

/// A step is done that ends the last look at the rule: it hides one of its parts, and does not come before
/// the step that the rule names (the face of a collar is out of sight long before its match mark).
bool lastLookPassed(const Frame& frame, const Build& build, const Rule& rule) {
    const std::size_t look = frame.stepIndex(rule.lastLook).value_or(0);
    return std::ranges::any_of(partsOf(rule), [&](const PartId& part) {
        const Step* hiding = hidingStepOf(frame, seatOf(part));
        return hiding && build.done(hiding->id) && frame.stepIndex(hiding->id) >= look;
    });
}

/// Empty, or which seating was not confirmed before the last look at the rule had passed: one that is not
/// there was not seen either.
std::string unconfirmedIn(const Frame& frame, const Build& build, const Rule& rule) {
    for (const PartId& part : partsOf(rule)) {
        const Seating* seating = build.in(seatOf(part));
        if (!seating && !isFilled(frame, build, seatOf(part)))
            return fmt::format("the last look has passed and {} is empty", seatOf(part).text);
        if (seating && !seating->confirmed)
            return fmt::format("the last look at {} has passed and nobody confirmed it", seating->part.text);
    }
    return {};
}

bool allFilled(const Frame& frame, const Build& build, const Rule& rule) {
    return std::ranges::all_of(partsOf(rule),
                               [&](const PartId& part) { return isFilled(frame, build, seatOf(part)); });
}

} // namespace

std::string_view faceWord(const PartType* type) {
    return faceWord(type ? type->face : FaceKind::None);
}

Verdict judge(const Frame& frame, const Build& build, const Rule& rule) {
    Verdict verdict{.rule = &rule};
    for (const PartId& part : partsOf(rule))
        verdict.parts.push_back(occupantOf(build, part));
    const Outcome outcome = std::visit(Judge{frame, build}, rule.demand);
    verdict.compared = outcome.compared;
    const bool stated = isStated(rule);
    const bool passed = !stated && lastLookPassed(frame, build, rule);
    const bool due = stated ? isStatementDue(frame, build, rule) : passed || allFilled(frame, build, rule);
    if (!due) {
        verdict.notKnown = outcome.notKnown.empty() ? "it is not placed yet" : outcome.notKnown;
        return verdict;
    }
    const std::string unconfirmed = passed ? unconfirmedIn(frame, build, rule) : "";
    if (!outcome.holds) {
        verdict.state = RuleState::Open;
        verdict.notKnown = outcome.notKnown;
    } else if (!*outcome.holds) {
        verdict.state = RuleState::Broken;
    } else if (!unconfirmed.empty()) {
        verdict.state = RuleState::Open;
        verdict.notKnown = unconfirmed;
    } else {
        verdict.state = RuleState::Holds;
    }
    return verdict;
}

} // namespace gapwise
