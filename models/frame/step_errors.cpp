#include "models/frame/frame_errors.h"

#include "models/frame/names.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace gapwise {

namespace {

/// The steps as a graph of indices: which steps each one needs, and where its file says so.
class StepOrder {
public:
    explicit StepOrder(const Frame& frame) : frame_{frame}, states_(frame.steps.size(), State::Untouched) {
        for (std::size_t i = 0; i < frame.steps.size(); ++i)
            index_.emplace(frame.steps[i].id, i);
        for (const Step& step : frame.steps) {
            std::vector<std::optional<std::size_t>>& needs = needs_.emplace_back();
            for (const Precedence& need : step.after)
                needs.push_back(indexOf(need.step));
        }
    }

    /// Complains once about each circle.
    void complainOfCircles(Complaints& complaints) {
        for (std::size_t i = 0; i < frame_.steps.size(); ++i)
            follow(i, complaints);
    }

    std::optional<std::size_t> indexOf(const StepId& id) const {
        const auto found = index_.find(id);
        return found == index_.end() ? std::nullopt : std::optional{found->second};
    }

    /// True when `early` has to be done before `late`.
    bool mustPrecede(std::size_t early, std::size_t late) const {
        std::vector<bool> seen(frame_.steps.size(), false);
        std::vector<std::size_t> open{late};
        while (!open.empty()) {
            const std::size_t step = open.back();
            open.pop_back();
            for (const std::optional<std::size_t>& before : needs_[step]) {
                if (!before || seen[*before])
                    continue;
                if (*before == early)
                    return true;
                seen[*before] = true;
                open.push_back(*before);
            }
        }
        return false;
    }

private:
    enum class State { Untouched, Open, Done };

    void follow(std::size_t step, Complaints& complaints) {
        if (states_[step] != State::Untouched)
            return;
        states_[step] = State::Open;
        path_.push_back(step);
        for (std::size_t i = 0; i < needs_[step].size(); ++i) {
            const auto before = needs_[step][i];
            if (!before)
                continue;
            if (states_[*before] == State::Open)
                complaints.add(fmt::format("{}/after/{}/step", frame_.steps[step].pointer, i),
                               circleFrom(*before), "steps that do not wait for each other");
            else
                follow(*before, complaints);
        }
        path_.pop_back();
        states_[step] = State::Done;
    }

    std::string circleFrom(std::size_t start) const {
        std::string circle;
        for (auto step = std::ranges::find(path_, start); step != path_.end(); ++step)
            circle += frame_.steps[*step].id.text + " after ";
        return circle + frame_.steps[start].id.text;
    }

    const Frame& frame_;
    std::map<StepId, std::size_t> index_{};
    std::vector<std::vector<std::optional<std::size_t>>> needs_{}; ///< Of each step, as `after` lists them.
    std::vector<State> states_;
    std::vector<std::size_t> path_{};
};

/// Whether a step is done before another, or is it: as `after` demands, else as the file lists them.
bool precedes(const StepOrder& order, std::size_t early, std::size_t late) {
    if (early == late || order.mustPrecede(early, late))
        return true;
    return early < late && !order.mustPrecede(late, early);
}

/// A rule of several parts may be judged as long as one of them can still be looked at.
void lastLookError(const Frame& frame, const StepOrder& order, const Rule& rule, Complaints& complaints) {
    const auto look = order.indexOf(rule.lastLook);
    if (!look)
        return;
    const Step* tooEarly = nullptr;
    SeatId hidden;
    for (const PartId& part : partsOf(rule)) {
        const Step* hiding = hidingStepOf(frame, seatOf(part));
        const auto hides = hiding ? order.indexOf(hiding->id) : std::nullopt;
        if (!hides || precedes(order, *look, *hides))
            return;
        tooEarly = hiding;
        hidden = seatOf(part);
    }
    if (tooEarly)
        complaints.add(rule.pointer + "/last_look",
                       fmt::format("{}, but {} hides {} before", quotedId(rule.lastLook.text),
                                   tooEarly->id.text, hidden.text),
                       fmt::format("{} or a step before it", tooEarly->id.text));
}

bool tightensWithRunDown(const Frame& frame, const Step& step) {
    return std::ranges::any_of(frame.fasteners, [&](const Fastener& fastener) {
        return fastener.step == step.id && fastener.plan && fastener.plan->runDown;
    });
}

/// A nut line is read where the nut is tightened, or at a step after that one.
bool followsRunDown(const Frame& frame, const StepOrder& order, std::size_t step) {
    return std::ranges::any_of(frame.fasteners, [&](const Fastener& fastener) {
        const auto at = order.indexOf(fastener.step);
        return at && fastener.plan && fastener.plan->nutLine && (*at == step || order.mustPrecede(*at, step));
    });
}

void askErrors(const Frame& frame, const StepOrder& order, Complaints& complaints) {
    for (std::size_t at = 0; at < frame.steps.size(); ++at) {
        const Step& step = frame.steps[at];
        for (std::size_t i = 0; i < step.asks.size(); ++i) {
            const std::string pointer = fmt::format("{}/asks/{}", step.pointer, i);
            const std::string found = quotedId(nameIn(kQuestionNames, step.asks[i]));
            if (step.asks[i] == StepQuestion::DragTorque && !tightensWithRunDown(frame, step))
                complaints.add(pointer, found, "at a step that tightens a fastener with run_down");
            if (step.asks[i] == StepQuestion::NutLine && !followsRunDown(frame, order, at))
                complaints.add(pointer, found, "at or after the step of a fastener with nut_line");
            if (step.asks[i] == StepQuestion::BlockHeight && frame.rests.empty())
                complaints.add(pointer, found, "in a frame with rests");
        }
        for (std::size_t i = 0; i < step.standsFor.size(); ++i)
            if (step.standsFor[i] == step.id)
                complaints.add(fmt::format("{}/stands_for/{}", step.pointer, i), quotedId(step.id.text),
                               "other steps");
    }
}

} // namespace

void stepErrors(const Frame& frame, Complaints& complaints) {
    StepOrder order{frame};
    order.complainOfCircles(complaints);
    for (const Rule& rule : frame.rules)
        lastLookError(frame, order, rule, complaints);
    askErrors(frame, order, complaints);
}

} // namespace gapwise
