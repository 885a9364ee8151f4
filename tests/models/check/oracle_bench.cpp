#include "geometry/base/overloaded.h"
#include "oracle.h"

#include <algorithm>

namespace gapwise::oracle {

namespace {

Attitude attitudeOf(const Lying& lying) {
    return Attitude{lying.up, Degrees{lying.drainDegrees}, lying.seenFrom};
}

Seating seatingOf(const Placed& placed) {
    Seating seating;
    seating.part = PartId{placed.part};
    seating.seat = SeatId{placed.seat};
    if (placed.index)
        seating.index = Clock::seenFrom(placed.index->side, Degrees{placed.index->degrees});
    seating.referenceFaceLooks = placed.referenceFaceLooks;
    seating.home = placed.home;
    seating.conditions = placed.stated;
    if (placed.setIn)
        seating.setIn = View{placed.setIn->side, Degrees{placed.setIn->topDegrees}};
    if (placed.confirmed)
        seating.confirmed = Confirmation{.by = "I. Dorn", .said = Confirmation::Said::Before};
    return seating;
}

Side demandedFace(const Frame& frame, const FaceRule& rule) {
    return std::visit(Overloaded{[](Side side) { return side; },
                                 [&](const PartId& other) {
                                     return frame.seat(seatOf(other))->zMm >
                                                    frame.seat(seatOf(rule.part))->zMm
                                                ? Side::Compressor
                                                : Side::Turbine;
                                 }},
                      rule.toward);
}

/// The narrowest clock that the rules print for a part.
const PrintedClock* narrowestOf(const Frame& frame, const PartId& part) {
    const PrintedClock* narrowest = nullptr;
    for (const Rule& rule : frame.rules) {
        const PrintedClock* printed = printedClockOf(rule);
        if (printed && partsOf(rule).front() == part &&
            (!narrowest || printed->tolerance.value < narrowest->tolerance.value))
            narrowest = printed;
    }
    return narrowest;
}

/// Sets what the rule demands of its part, as it is printed.
void obey(const Frame& frame, const Rule& rule, Bench& bench) {
    if (std::holds_alternative<OrderRule>(rule.demand))
        return; // No step is done.
    if (const auto* hand = std::get_if<HandRule>(&rule.demand)) {
        bench.wrenched.push_back({hand->fastener.text, hand->clockwise, hand->seenFrom});
        return;
    }
    Placed* first = bench.of(partsOf(rule).front().text);
    if (printedClockOf(rule)) {
        const PrintedClock& printed = *narrowestOf(frame, PartId{first->part});
        first->index = Said{printed.clock.value, printed.seenFrom.value_or(Side::Compressor)};
    }
    if (const auto* condition = std::get_if<ConditionRule>(&rule.demand))
        first->stated.push_back(condition->state);
    if (const auto* face = std::get_if<FaceRule>(&rule.demand))
        first->referenceFaceLooks = demandedFace(frame, *face);
    else if (const auto* engaged = std::get_if<EngagedRule>(&rule.demand); engaged && !engaged->feature)
        first->index = Said{180.0, Side::Compressor}; // Every pin of these frames stands at the bottom.
    else if (const auto* apart = std::get_if<GapsApartRule>(&rule.demand);
             apart &&
             bench.of(apart->second.text)->index->degrees == bench.of(apart->first.text)->index->degrees)
        bench.of(apart->second.text)->index->degrees += apart->apart.value;
}

} // namespace

Build buildOf(const Bench& bench) {
    Build build;
    if (bench.lying)
        build.attitude = attitudeOf(*bench.lying);
    for (const Placed& placed : bench.placed)
        build.seatings.push_back(seatingOf(placed));
    for (const std::string& step : bench.stepsDone)
        build.stepsDone.emplace_back(step);
    build.rotorLoweredIn = bench.rotorLoweredIn;
    for (const Wrenched& wrenched : bench.wrenched) {
        TorqueNote note{.fastener = wrenched.fastener, .clockwise = wrenched.clockwise};
        if (wrenched.clockwise)
            note.seenFrom = wrenched.seenFrom;
        build.torques.push_back(note);
    }
    return build;
}

Bench goodBench(const Frame& frame) {
    Bench bench;
    for (const Seat& seat : frame.seats)
        if (!seat.carriers.empty())
            bench.placed.push_back(Placed{.part = seat.id.text.substr(5), // Past "seat-".
                                          .seat = seat.id.text,
                                          .index = Said{},
                                          .referenceFaceLooks = Side::Compressor,
                                          .home = true});
    for (const Rule& rule : frame.rules)
        obey(frame, rule, bench);
    return bench;
}

} // namespace gapwise::oracle
