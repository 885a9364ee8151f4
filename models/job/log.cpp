#include "models/job/log.h"

#include "geometry/base/overloaded.h"
#include "models/access/access.h"
#include "models/check/check.h"
#include "models/frame/sets.h"

#include <fmt/format.h>

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
    void operator()(const StepUndone& event) const { std::erase(build_.stepsDone, event.step); }
    /// What concerns the job only.
    template <class Other>
    void operator()(const Other& /*event*/) const {}

private:
    const Frame& frame_;
    Build& build_;
};

Error refusal(std::string what, std::string found, std::string allowed) {
    return Error{std::move(what), std::move(found), std::move(allowed)};
}

Errors refusalOfPlacing(const Frame& frame, const Build& build, const PartPlaced& event) {
    const std::string what = fmt::format("{} into {}", event.part.text, event.seat.text);
    if (!frame.part(event.part) || !frame.seat(event.seat))
        return {refusal(what, "no such part or seat", fmt::format("a part and a seat of {}", frame.id.text))};
    if (const Seating* there = build.in(event.seat))
        return {refusal(what, fmt::format("{} is in it", there->part.text), "an empty seat")};
    if (const Seating* elsewhere = build.of(event.part))
        return {refusal(what, fmt::format("{} sits in {}", event.part.text, elsewhere->seat.text),
                        "a part that lies on the tray")};
    if (const std::string misfit = misfitOf(frame, event.part, event.seat); !misfit.empty())
        return {refusal(what, misfit, "a part that can go in")};
    Errors errors;
    for (const Blocked& blocked : blockersOf(frame, build, event.part, event.seat))
        errors.push_back(refusal(what, blocked.words, fmt::format("take {} off first", blocked.by.text)));
    return errors;
}

/// Parts that only this part carries: they would be left in the air.
Errors refusalOfTakingOff(const Frame& frame, const Build& build, const PartTakenOff& event) {
    const Seating* there = build.in(event.seat);
    if (!there)
        return {refusal(event.seat.text, "it is empty", "a seat with a part in it")};
    const std::string what = fmt::format("{} out of {}", there->part.text, event.seat.text);
    Errors errors;
    for (const Seating& rider : build.seatings) {
        const Seat* seat = frame.seat(rider.seat);
        const bool only = seat && seat->carriers.size() == 1 && seat->carriers.front().part == there->part;
        if (only)
            errors.push_back(refusal(what, fmt::format("{} rides on it", rider.part.text),
                                     fmt::format("take {} off first", rider.part.text)));
    }
    for (const Blocked& blocked : blockersOf(frame, build, there->part, event.seat))
        errors.push_back(refusal(what, blocked.words, fmt::format("take {} off first", blocked.by.text)));
    return errors;
}

Errors refusalOfEmptySeat(const Build& build, const SeatId& seat) {
    if (build.in(seat))
        return {};
    return {refusal(seat.text, "it is empty", "a seat with a part in it")};
}

Errors refusalOfStep(const Frame& frame, const StepId& step) {
    if (frame.step(step))
        return {};
    return {refusal(step.text, "no such step", fmt::format("a step of {}", frame.id.text))};
}

struct Parted {
    std::vector<const Event*> standing{};
    std::vector<const Event*> takenBack{}; ///< The one that comes back first is last.
};

Parted partedEvents(const Log& log) {
    Parted parted;
    const auto move = [](std::vector<const Event*>& from, std::vector<const Event*>& to) {
        if (from.empty())
            return;
        to.push_back(from.back());
        from.pop_back();
    };
    for (const Event& event : log.events) {
        if (std::holds_alternative<Undone>(event)) {
            move(parted.standing, parted.takenBack);
        } else if (std::holds_alternative<Redone>(event)) {
            move(parted.takenBack, parted.standing);
        } else if (!std::holds_alternative<LookedFirst>(event)) {
            parted.standing.push_back(&event);
            parted.takenBack.clear();
        }
    }
    return parted;
}

} // namespace

const Answered* JobState::answer(const StepId& step, std::string_view question) const {
    const auto found = std::ranges::find_if(answers, [&](const Answered& each) {
        return each.step == step && each.question == question;
    });
    return found == answers.end() ? nullptr : &*found;
}

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

Errors refusalOf(const Frame& frame, const JobState& state, const Event& event) {
    const Build& build = state.build;
    return std::visit(
        Overloaded{[&](const PartPlaced& e) { return refusalOfPlacing(frame, build, e); },
                   [&](const PartTakenOff& e) { return refusalOfTakingOff(frame, build, e); },
                   [&](const IndexTurned& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const FaceTurned& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const SeatingConfirmed& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const LookedFirst& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const HomeStated& e) { return refusalOfEmptySeat(build, e.seat); },
                   [&](const StepDone& e) { return refusalOfStep(frame, e.step); },
                   [&](const StepUndone& e) { return refusalOfStep(frame, e.step); },
                   [&](const Undone&) {
                       return state.canUndo > 0 ? Errors{}
                                                : Errors{refusal("take back", "nothing was done", "an act")};
                   },
                   [&](const Redone&) {
                       return state.canRedo > 0
                                  ? Errors{}
                                  : Errors{refusal("bring back", "nothing was taken back", "an act")};
                   },
                   [](const auto&) { return Errors{}; }},
        event);
}

Build withEvent(const Frame& frame, Build build, const Event& event) {
    std::visit(Apply{frame, build}, event);
    return build;
}

std::vector<const Event*> standingEvents(const Log& log) {
    return partedEvents(log).standing;
}

JobState stateOf(const Frame& frame, const Log& log) {
    JobState state{.build = log.start};
    const Parted parted = partedEvents(log);
    for (const Event* event : parted.standing) {
        if (const auto* attitude = std::get_if<AttitudeChanged>(event))
            state.attitudeConfirmed = attitude->confirmed;
        state.build = withEvent(frame, std::move(state.build), *event);
    }
    for (const Event& event : log.events)
        if (const auto* looked = std::get_if<LookedFirst>(&event))
            state.lookedFirst.insert(looked->seat);
    state.canUndo = parted.standing.size();
    state.canRedo = parted.takenBack.size();
    return state;
}

} // namespace gapwise
