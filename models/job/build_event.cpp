#include "models/job/log.h"

#include "models/check/check.h"
#include "models/frame/sets.h"

#include <algorithm>

namespace gapwise {

namespace {

constexpr Degrees kFallsOntoItsPin{5.0};

Seating* seatingIn(Build& build, const SeatId& seat) {
    const auto found = std::ranges::find(build.seatings, seat, &Seating::seat);
    return found == build.seatings.end() ? nullptr : &*found;
}

/// Any new setting makes what was said of the old one void.
void setAnew(Seating& seating, const std::optional<View>& view) {
    seating.confirmed.reset();
    if (view)
        seating.setIn = view;
}

class Apply {
public:
    Apply(const Frame& frame, Build& build) : frame_{frame}, build_{build} {}

    void operator()(const AttitudeChanged& event) const { build_.attitude = event.attitude; }
    void operator()(const PartPlaced& event) const {
        if (build_.in(event.seat))
            return;
        for (const PartId& piece : piecesOf(frame_, event.part))
            if (piece != event.part && !build_.of(piece) && !build_.in(seatOf(piece)))
                build_.seatings.push_back({.part = piece, .seat = seatOf(piece), .home = true});
        Seating seating{.part = event.part,
                        .seat = event.seat,
                        .index = event.index,
                        .referenceFaceLooks = event.referenceFaceLooks,
                        .home = true};
        seating.setIn = event.setIn;
        build_.seatings.push_back(std::move(seating));
        if (event.index)
            build_.seatings.back().index =
                settledIndex(frame_, build_, {event.seat, *event.index, event.setIn});
    }
    void operator()(const PartTakenOff& event) const {
        const Seating* there = build_.in(event.seat);
        if (!there)
            return;
        const std::vector<PartId> pieces = piecesOf(frame_, there->part);
        std::erase_if(build_.seatings, [&](const Seating& seating) {
            return std::ranges::find(pieces, seating.part) != pieces.end();
        });
    }
    void operator()(const IndexTurned& event) const {
        const Clock settled = settledIndex(frame_, build_, event);
        if (Seating* seating = seatingIn(build_, event.seat)) {
            setAnew(*seating, event.setIn);
            seating->index = settled;
        }
    }
    void operator()(const FaceTurned& event) const {
        if (Seating* seating = seatingIn(build_, event.seat)) {
            setAnew(*seating, event.setIn);
            seating->referenceFaceLooks = event.referenceFaceLooks;
        }
    }
    void operator()(const SeatingConfirmed& event) const {
        Seating* seating = seatingIn(build_, event.seat);
        if (!seating)
            return;
        if (event.index)
            seating->index = settledIndex(frame_, build_, {event.seat, *event.index, event.setIn});
        if (event.referenceFaceLooks)
            seating->referenceFaceLooks = event.referenceFaceLooks;
        if (event.home)
            seating->home = event.home;
        if (event.index || event.referenceFaceLooks)
            setAnew(*seating, event.setIn);
        seating->confirmed = event.confirmation;
    }
    void operator()(const HomeStated& event) const {
        if (Seating* seating = seatingIn(build_, event.seat)) {
            seating->confirmed.reset();
            seating->home = event.home;
        }
    }
    void operator()(const RotorTurned& event) const { build_.rotor = wrapped(event.rotor); }
    void operator()(const StepDone& event) const {
        if (!build_.done(event.step))
            build_.stepsDone.push_back(event.step);
    }
    void operator()(const HoldPointPassed& event) const { (*this)(StepDone{event.step, event.by}); }
    void operator()(const StepUndone& event) const { std::erase(build_.stepsDone, event.step); }
    void operator()(const ConditionStated& event) const {
        Seating* seating = seatingIn(build_, event.seat);
        if (!seating)
            return;
        // A surface is dry or has something on it; whether the part is new is another matter.
        const auto goes = [&](const std::string& state) {
            const bool contradicts = event.so && state != "new" && event.state != "new" &&
                                     (state == "dry") != (event.state == "dry");
            return state == event.state || contradicts;
        };
        std::erase_if(seating->conditions, goes);
        if (event.so)
            seating->conditions.push_back(event.state);
    }
    void operator()(const ReadingTaken& event) const { build_.readings.push_back(event.reading); }
    void operator()(const PartDecided& event) const {
        std::erase_if(build_.decisions,
                      [&](const PartDecision& each) { return each.part == event.decision.part; });
        build_.decisions.push_back(event.decision);
    }
    void operator()(const WorkStated& event) const {
        std::erase(build_.work, event.work);
        if (event.so)
            build_.work.push_back(event.work);
    }
    /// What concerns the job only.
    template <class Other>
    void operator()(const Other& /*event*/) const {}

private:
    const Frame& frame_;
    Build& build_;
};

} // namespace

Clock settledIndex(const Frame& frame, const Build& build, const IndexTurned& turned) {
    for (const Rule& rule : frame.rules) {
        const auto* engaged = std::get_if<EngagedRule>(&rule.demand);
        if (!engaged || engaged->feature || seatOf(engaged->part) != turned.seat)
            continue;
        const auto* pin = std::get_if<PartId>(&engaged->with);
        const HousingClock at = pin ? housingClockOf(frame, build, seatOf(*pin)) : HousingClock{};
        if (at.index && apart(*at.index, turned.index) <= kFallsOntoItsPin + kAngleRounding)
            return *at.index;
    }
    return turned.index;
}

Build withEvent(const Frame& frame, Build build, const Event& event) {
    std::visit(Apply{frame, build}, event);
    return build;
}

} // namespace gapwise
