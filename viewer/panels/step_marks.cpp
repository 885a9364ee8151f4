#include "viewer/panels/step_marks.h"

#include "models/frame/sets.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace gapwise {

namespace {

std::string labelOf(const Job& job, const Step& step) {
    std::string label;
    for (const PartId& part : step.places)
        if (piecesOf(job.frame, part).front() == part)
            label += (label.empty() ? "" : ", ") + setNameOf(job.frame, part);
    return label.empty() ? step.title.substr(0, step.title.find_first_of(",:;(")) : label;
}

std::vector<LastLook> lastLooksOf(const Job& job, const Step& step) {
    std::vector<LastLook> looks;
    for (const SeatId& seat : step.hides) {
        const Seating* seating = job.state.build.in(seat);
        LastLook look{.seat = seat,
                      .part = seating ? seating->part : meantFor(job.frame, seat),
                      .state = dialStateOf(job, seat)};
        const auto left = std::ranges::find_if(job.procedure.looks, [&](const LookLeft& each) {
            return each.seat == seat && each.hiddenBy == step.id;
        });
        look.finished = left != job.procedure.looks.end()
                            ? left->finished
                            : look.state.sign == DialSign::Holds && seating && seating->confirmed;
        look.unfinished = unfinishedWord(job, seat, look.state);
        look.stepsLeft = left != job.procedure.looks.end() ? left->stepsLeft : 0;
        looks.push_back(std::move(look));
    }
    return looks;
}

std::string_view wordsOf(StepAttitude attitude) {
    switch (attitude) {
    case StepAttitude::CompressorUp: return "compressor end up";
    case StepAttitude::TurbineUp: return "turbine end up";
    case StepAttitude::Level: return "level";
    case StepAttitude::Bench: return "on the bench";
    case StepAttitude::Any: break;
    }
    return {};
}

std::string_view wordsOf(StepView view) {
    switch (view) {
    case StepView::Compressor: return "looked at from the compressor side";
    case StepView::Turbine: return "looked at from the turbine side";
    case StepView::Beside: return "looked at from beside";
    case StepView::Any: break;
    }
    return {};
}

MarkState markStateOf(const Job& job, const StepId& step) {
    switch (statusOf(job, step).standing) {
    case StepStanding::Done: return MarkState::Done;
    case StepStanding::Skipped: return MarkState::Skipped;
    case StepStanding::NotNeeded: return MarkState::NotNeeded;
    case StepStanding::Possible: return job.procedure.leading == step ? MarkState::Next : MarkState::Possible;
    case StepStanding::Blocked: break;
    }
    return MarkState::Later;
}

} // namespace

std::vector<StepMark> stepMarksOf(const Job& job) {
    std::vector<StepMark> marks;
    for (const Step& step : job.frame.steps)
        marks.push_back({.id = step.id,
                         .label = labelOf(job, step),
                         .title = step.title,
                         .state = markStateOf(job, step.id),
                         .holdPoint = step.holdPoint,
                         .reopened = statusOf(job, step.id).reopenedBy.has_value(),
                         .lastLooks = lastLooksOf(job, step)});
    return marks;
}

std::string unfinishedWord(const Job& job, const SeatId& seat, const DialState& state) {
    if (state.sign != DialSign::Holds)
        return state.word;
    const Seating* seating = job.state.build.in(seat);
    return seating && seating->confirmed ? "not said whether new, oiled or dry" : "not confirmed";
}

std::string_view wordOf(const StepMark& mark) {
    switch (mark.state) {
    case MarkState::Done: return mark.holdPoint ? "passed" : "done";
    case MarkState::Skipped: return "skipped";
    case MarkState::NotNeeded: return "not needed";
    case MarkState::Next:
    case MarkState::Possible: return mark.reopened ? "open again" : "possible now";
    case MarkState::Later: break;
    }
    return mark.reopened ? "open again" : "waits";
}

std::string countdownOf(const LastLook& look) {
    if (look.stepsLeft == 0)
        return "last look now";
    return fmt::format("last look, {} {} left", look.stepsLeft, look.stepsLeft == 1 ? "step" : "steps");
}

std::optional<std::size_t> nextMarkOf(const std::vector<StepMark>& marks) {
    const auto found = std::ranges::find(marks, MarkState::Next, &StepMark::state);
    if (found == marks.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - marks.begin());
}

std::string howOf(const Step& step) {
    std::string how;
    for (const StepAttitude attitude : step.attitudes)
        if (const std::string_view words = wordsOf(attitude); !words.empty())
            how += fmt::format("{}{}", how.empty() ? "" : " or ", words);
    if (const std::string_view words = wordsOf(step.view); !words.empty())
        how += fmt::format("{}{}", how.empty() ? "" : ", ", words);
    return how;
}

std::string sentenceOf(const Frame& frame, const StepId& id) {
    const Step* step = frame.step(id);
    if (!step)
        return {};
    const std::string how = howOf(*step);
    return fmt::format("{} {}{}{}", step->id.text, step->title, how.empty() ? "" : " – ", how);
}

std::string hidesUnfinished(const StepMark& mark) {
    std::string words;
    for (const LastLook& look : mark.lastLooks)
        if (!look.finished)
            words += fmt::format("{}{} ({})", words.empty() ? "" : ", ", look.part.text, look.unfinished);
    return words;
}

std::vector<PartId> partsBefore(const Job& job, const PartId& part) {
    const Frame& frame = job.frame;
    std::vector<PartId> parts;
    std::vector<const Step*> open;
    for (const Step& step : frame.steps)
        if (std::ranges::find(step.places, part) != step.places.end())
            open.push_back(&step);
    std::set<StepId> seen;
    for (std::size_t i = 0; i < open.size(); ++i)
        for (const Precedence& before : open[i]->after) {
            const Step* step = frame.step(before.step);
            if (!step || !seen.insert(step->id).second)
                continue;
            open.push_back(step);
            for (const PartId& placed : step->places)
                if (placed != part && placed != frame.housing && !job.state.build.of(placed) &&
                    piecesOf(frame, placed).front() == placed)
                    parts.push_back(placed);
        }
    return parts;
}

} // namespace gapwise
