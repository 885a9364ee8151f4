#include "geometry/base/overloaded.h"
#include "oracle.h"

#include <algorithm>
#include <cmath>

namespace gapwise::oracle {

namespace {

/// Holds, is broken, or is not known.
using Truth = std::optional<bool>;

bool done(const Bench& bench, const StepId& step) {
    return std::find(bench.stepsDone.begin(), bench.stepsDone.end(), step.text) != bench.stepsDone.end();
}

std::vector<SeatId> seatsOf(const Rule& rule) {
    std::vector<SeatId> seats;
    for (const PartId& part : partsOf(rule))
        seats.push_back(seatOf(part));
    return seats;
}

/// The last look at a rule is over once a step is done that hides one of its seats: not a step before the one
/// that the rule names (a collar's face is hidden long before its match mark).
bool lastLookPassed(const Case& asked, const Rule& rule) {
    bool named = false;
    for (const Step& step : asked.frame.steps) {
        named = named || step.id == rule.lastLook;
        for (const SeatId& seat : seatsOf(rule))
            if (named && done(asked.bench, step.id) &&
                std::find(step.hides.begin(), step.hides.end(), seat) != step.hides.end())
                return true;
    }
    return false;
}

const PartType* typeIn(const Case& asked, const SeatId& seat) {
    const Placed* placed = asked.bench.in(seat.text);
    return placed ? asked.frame.typeOf(PartId{placed->part}) : nullptr;
}

double halfAngle(double width, double diameter) {
    return std::asin(width / diameter) * 180.0 / std::numbers::pi;
}

double halfAngleOf(const FeatureForm& form, double bore) {
    return std::visit(Overloaded{[&](const RadialHole& hole) { return halfAngle(hole.diameterMm, bore); },
                                 [&](const AxialHole& hole) { return halfAngle(hole.diameterMm, bore); },
                                 [&](const InclinedHole& hole) { return halfAngle(hole.diameterMm, bore); },
                                 [&](const Slot& slot) { return halfAngle(slot.widthMm, bore); },
                                 [&](const Sector& sector) { return sector.angle.value / 2.0; },
                                 [](const auto&) { return 180.0; }},
                      form);
}

/// Where a feature at `offset` of a part points whose index and face are given: half a turn about the part's
/// own Y takes its right to its left.
Direction featureAt(const Direction& index, Side face, double offset) {
    const Matrix flip = face == Side::Compressor ? Matrix{} : kLeftForRight;
    return turnOf(index) * (flip * onDial(offset));
}

Truth clockHolds(const Case& asked, const PartId& part, const PrintedClock& printed) {
    const auto actual = directionIn(asked, seatOf(part));
    if (!actual)
        return std::nullopt;
    return within(*actual, meantBy(printed.seenFrom.value_or(Side::Compressor), printed.clock.value),
                  printed.tolerance.value);
}

/// Gaps that ride on one part are compared there, wherever it is.
Truth apartHolds(const Case& asked, const GapsApartRule& rule) {
    const Placed* a = asked.bench.in(seatOf(rule.first).text);
    const Placed* b = asked.bench.in(seatOf(rule.second).text);
    if (!a || !b || !a->index || !b->index)
        return std::nullopt;
    const double actual =
        between(meantBy(a->index->side, a->index->degrees), meantBy(b->index->side, b->index->degrees));
    return std::abs(actual - rule.apart.value) <= rule.tolerance.value + kRounding;
}

Truth clearHolds(const Case& asked, const GapClearOfRule& rule) {
    const auto gap = directionIn(asked, seatOf(rule.part));
    const PartType* ring = typeIn(asked, seatOf(rule.part));
    if (!gap || !ring || !ring->gapMm)
        return std::nullopt;
    const Feature& feature = *asked.frame.feature(rule.feature).feature;
    const double bore = asked.frame.seat(seatOf(rule.part))->groove->boreMm;
    const double needed = halfAngleOf(feature.form, bore) + halfAngle(*ring->gapMm, bore) + rule.margin.value;
    for (int copy = 0; copy < feature.count; ++copy) {
        const Direction at =
            onDial(feature.offset.value + 360.0 * copy / feature.count); // The housing does not turn.
        if (between(*gap, at) < needed - kRounding)
            return false;
    }
    return true;
}

Truth faceHolds(const Case& asked, const FaceRule& rule) {
    const Placed* placed = asked.bench.in(seatOf(rule.part).text);
    if (!placed || !placed->referenceFaceLooks)
        return std::nullopt;
    const double along = std::visit(
        Overloaded{[](Side side) { return side == Side::Compressor ? 1.0 : -1.0; },
                   [&](const PartId& other) {
                       return asked.frame.seat(seatOf(other))->zMm - asked.frame.seat(seatOf(rule.part))->zMm;
                   }},
        rule.toward);
    const double normal = *placed->referenceFaceLooks == Side::Compressor ? 1.0 : -1.0;
    return normal * along > 0.0;
}

Truth jointHolds(const Case& asked, const JointRule& rule) {
    const PartType* ring = typeIn(asked, rule.seat);
    if (!ring)
        return std::nullopt;
    return ring->joint == rule.joint;
}

/// An empty seat is a fact like another: once it can no longer be looked into, something was left out.
Truth seatHolds(const Case& asked, const SeatRule& rule) {
    const PartType* type = typeIn(asked, rule.seat);
    if (!type)
        return false;
    const auto& listed = asked.frame.seat(rule.seat)->types;
    if (std::find(listed.begin(), listed.end(), type->id) == listed.end())
        return false;
    return asked.bench.in(rule.seat.text)->home;
}

/// Match marks turn with what carries them: only the angles between them count. The rotor's own mark is its
/// top.
Truth marksHold(const Case& asked, const MatchMarksRule& rule) {
    std::vector<Direction> marks;
    for (const PartId& part : rule.parts) {
        const Placed* placed = asked.bench.in(seatOf(part).text);
        if (part == asked.frame.rotor)
            marks.push_back(Direction{});
        else if (placed && placed->index)
            marks.push_back(meantBy(placed->index->side, placed->index->degrees));
        else
            return std::nullopt;
    }
    return std::all_of(marks.begin(), marks.end(), [&](const Direction& mark) {
        return within(marks.front(), mark, rule.tolerance.value);
    });
}

Truth engagedHolds(const Case& asked, const EngagedRule& rule) {
    const auto index = directionIn(asked, seatOf(rule.part));
    const Placed* placed = asked.bench.in(seatOf(rule.part).text);
    if (!index || !placed)
        return std::nullopt;
    Direction own = *index;
    if (rule.feature) {
        if (!placed->referenceFaceLooks)
            return std::nullopt;
        own = featureAt(*index, *placed->referenceFaceLooks,
                        asked.frame.feature(*rule.feature).feature->offset.value);
    }
    const std::optional<Direction> with = std::visit(
        Overloaded{[&](const PartId& pin) { return directionIn(asked, seatOf(pin)); },
                   [&](const FeatureId& dowel) {
                       return std::optional{onDial(asked.frame.feature(dowel).feature->offset.value)};
                   }},
        rule.with);
    return with ? Truth{within(own, *with, rule.engage.value)} : std::nullopt;
}

/// +1 for a turn that is clockwise to who looks from the compressor, -1 for the other one.
int senseOf(bool clockwise, Side from) {
    return (clockwise ? 1 : -1) * (from == Side::Compressor ? 1 : -1);
}

Truth handHolds(const Case& asked, const HandRule& rule) {
    for (const Wrenched& wrenched : asked.bench.wrenched)
        if (wrenched.fastener == rule.fastener.text && wrenched.clockwise)
            return senseOf(*wrenched.clockwise, wrenched.seenFrom) == senseOf(rule.clockwise, rule.seenFrom);
    return std::nullopt;
}

/// The place of a step among those done; -1 when it is not.
int placeOf(const Bench& bench, const std::string& step) {
    for (std::size_t i = 0; i < bench.stepsDone.size(); ++i)
        if (bench.stepsDone[i] == step)
            return static_cast<int>(i);
    return -1;
}

/// Whether a step is excused: it may be left out, does not apply when the rotor was not lowered in, or
/// another one that stands for it was done in time.
bool isExcused(const Case& asked, const Step& needed, int until) {
    const int own = placeOf(asked.bench, needed.id.text);
    if (needed.maySkip && own < 0)
        return true;
    if (needed.when == OnlyWhen::RotorLoweredIn && asked.bench.rotorLoweredIn != true)
        return true;
    for (const Step& other : asked.frame.steps) {
        const int place = placeOf(asked.bench, other.id.text);
        const auto& stands = other.standsFor;
        if (place >= 0 && place < until && std::find(stands.begin(), stands.end(), needed.id) != stands.end())
            return true;
    }
    return false;
}

Truth orderHolds(const Case& asked, const OrderRule& rule) {
    const int own = placeOf(asked.bench, rule.step.text);
    if (own < 0)
        return std::nullopt;
    for (const Precedence& need : asked.frame.step(rule.step)->after) {
        const int place = placeOf(asked.bench, need.step.text);
        const bool inTime = place >= 0 && place < own;
        const bool asksHere = need.when == OnlyWhen::Always || asked.bench.rotorLoweredIn == true;
        if (!inTime && asksHere && !isExcused(asked, *asked.frame.step(need.step), own))
            return false;
    }
    return true;
}

/// What was said of a part: the state itself settles it; of wet and dry the one denies the other.
Truth conditionHolds(const Case& asked, const ConditionRule& rule) {
    const Placed* placed = asked.bench.in(seatOf(rule.part).text);
    if (!placed)
        return std::nullopt;
    Truth truth;
    for (const std::string& said : placed->stated) {
        if (said == rule.state)
            return true;
        const bool aboutWetness = said != "new" && rule.state != "new";
        if (aboutWetness && (said == "dry" || rule.state == "dry"))
            truth = false;
    }
    return truth;
}

/// Hands, orders and conditions are what people said or wrote: nothing hides them, nobody confirms them.
std::optional<RuleState> statedState(const Case& asked, const Rule& rule) {
    Truth truth;
    bool due = false;
    if (const auto* hand = std::get_if<HandRule>(&rule.demand)) {
        const auto& notes = asked.bench.wrenched;
        const bool noted = std::any_of(notes.begin(), notes.end(), [&](const Wrenched& note) {
            return note.fastener == hand->fastener.text;
        });
        due = noted || done(asked.bench, asked.frame.fastener(hand->fastener)->step);
        truth = handHolds(asked, *hand);
    } else if (const auto* order = std::get_if<OrderRule>(&rule.demand)) {
        due = done(asked.bench, order->step);
        truth = orderHolds(asked, *order);
    } else if (const auto* condition = std::get_if<ConditionRule>(&rule.demand)) {
        truth = conditionHolds(asked, *condition);
        due = asked.bench.in(seatOf(condition->part).text) && (truth || done(asked.bench, rule.lastLook));
    } else {
        return std::nullopt;
    }
    if (!due)
        return RuleState::NotDue;
    if (!truth)
        return RuleState::Open;
    return *truth ? RuleState::Holds : RuleState::Broken;
}

Truth truthOf(const Case& asked, const Rule& rule) {
    return std::visit(Overloaded{[&](const GapClockRule& r) { return clockHolds(asked, r.part, r.target); },
                                 [&](const MarkRule& r) { return clockHolds(asked, r.part, r.target); },
                                 [&](const GapsApartRule& r) { return apartHolds(asked, r); },
                                 [&](const GapClearOfRule& r) { return clearHolds(asked, r); },
                                 [&](const FaceRule& r) { return faceHolds(asked, r); },
                                 [&](const JointRule& r) { return jointHolds(asked, r); },
                                 [&](const SeatRule& r) { return seatHolds(asked, r); },
                                 [&](const MatchMarksRule& r) { return marksHold(asked, r); },
                                 [&](const EngagedRule& r) { return engagedHolds(asked, r); },
                                 [&](const HandRule& r) { return handHolds(asked, r); },
                                 [&](const OrderRule& r) { return orderHolds(asked, r); },
                                 [&](const ConditionRule& r) { return conditionHolds(asked, r); }},
                      rule.demand);
}

/// What carries a seat now: the last carrier of the list whose moment has come.
PartId carrierOf(const Case& asked, const Seat& seat) {
    PartId carrier = seat.carriers.front().part;
    for (const Carrier& next : seat.carriers) {
        const bool always = !next.onceStep && next.onceSeated.empty();
        const bool stepped = next.onceStep && done(asked.bench, *next.onceStep);
        const bool seated =
            !next.onceSeated.empty() &&
            std::all_of(next.onceSeated.begin(), next.onceSeated.end(),
                        [&](const PartId& part) { return asked.bench.in(seatOf(part).text) != nullptr; });
        if (always || stepped || seated)
            carrier = next.part;
    }
    return carrier;
}

} // namespace

const Placed* Bench::in(const std::string& seat) const {
    const auto found =
        std::find_if(placed.begin(), placed.end(), [&](const Placed& one) { return one.seat == seat; });
    return found == placed.end() ? nullptr : &*found;
}

Placed* Bench::of(const std::string& part) {
    const auto found =
        std::find_if(placed.begin(), placed.end(), [&](const Placed& one) { return one.part == part; });
    return found == placed.end() ? nullptr : &*found;
}

std::optional<Direction> directionIn(const Case& asked, const SeatId& seat) {
    const Seat& place = *asked.frame.seat(seat);
    if (place.carriers.empty())
        return Direction{}; // The housing: its inlet is the top.
    const Placed* placed = asked.bench.in(seat.text);
    if (!placed)
        return std::nullopt;
    std::optional<Direction> own;
    if (place.fixedIndex)
        own = onDial(place.fixedIndex->from(Side::Compressor).value);
    else if (placed->index)
        own = meantBy(placed->index->side, placed->index->degrees);
    if (!own)
        return std::nullopt;
    // Until the last of its carriers has taken it over, it is read from the top of the one that has it.
    const PartId last = place.carriers.back().part;
    if (last == asked.frame.housing || last == asked.frame.rotor || carrierOf(asked, place) != last)
        return own;
    // The last one is a plate: only through the plate's own clock does it point anywhere in the housing.
    const auto plate = directionIn(asked, seatOf(last));
    return plate ? std::optional{turnOf(*plate) * *own} : std::nullopt;
}

RuleState stateOf(const Case& asked, const Rule& rule) {
    if (const auto stated = statedState(asked, rule))
        return *stated;
    const std::vector<SeatId> seats = seatsOf(rule);
    const bool allPlaced = std::all_of(seats.begin(), seats.end(),
                                       [&](const SeatId& s) { return asked.bench.in(s.text) != nullptr; });
    const bool passed = lastLookPassed(asked, rule);
    if (!allPlaced && !passed)
        return RuleState::NotDue;
    const Truth truth = truthOf(asked, rule);
    if (!truth)
        return RuleState::Open;
    if (!*truth)
        return RuleState::Broken;
    const bool confirmed = std::all_of(seats.begin(), seats.end(), [&](const SeatId& s) {
        const Placed* placed = asked.bench.in(s.text);
        return placed && placed->confirmed;
    });
    return passed && !confirmed ? RuleState::Open : RuleState::Holds;
}

} // namespace gapwise::oracle
