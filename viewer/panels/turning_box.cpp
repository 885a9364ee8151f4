#include "viewer/panels/box.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/step_page.h"

#include <algorithm>

namespace gapwise {

namespace {

/// The step at which what holds the rotor is written down.
std::optional<StepId> retainingStep(const Job& job) {
    const auto asks = [&](const Step& step) {
        return std::ranges::find(step.asks, StepQuestion::Retention) != step.asks.end();
    };
    const auto found = std::ranges::find_if(job.frame.steps, asks);
    if (found != job.frame.steps.end() && applies(found->when, job.state.build))
        return found->id;
    for (const Step& step : job.frame.steps)
        if (step.holdsRotor && !job.state.build.done(step.id) && applies(step.when, job.state.build))
            return step.id;
    return std::nullopt;
}

} // namespace

std::optional<Wish> turningBox(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "turning"};
    const std::optional<ProcedureFinding> finding = findingBeforeTurning(job.frame, job.state);
    const Area body = drawBox(area, "Before the piece is turned", surface);
    const double row = std::max(surface.target, surface.px(44.0));
    const double gap = surface.px(8.0);
    const Area words{body.x, body.y, body.width, body.height - row - gap};
    const SheetPaper paper{.surface = surface, .large = false};
    CardFlow flow{words, paper};
    flow.paragraph({.kind = SheetParagraph::Kind::Signal,
                    .words = std::string{signalWordOf(Signal::Danger)},
                    .signal = Signal::Danger});
    flow.paragraph({.kind = SheetParagraph::Kind::Strong, .words = finding ? finding->words : std::string{}});
    flow.text(SheetParagraph::Kind::Soft, "Severity 4. Hands clear of the wheel.");
    flow.draw(0);
    const Area buttons{body.x, body.bottom() - row, body.width, row};
    const std::optional<StepId> step = retainingStep(job);
    std::optional<Wish> wish;
    if (button(
            surface, columnOf(buttons, 3, 0, gap), "Record what holds it",
            {.enabled = step.has_value(), .leading = true, .second = step ? step->text : std::string_view{}}))
        wish = OpenStep{step};
    if (button(surface, columnOf(buttons, 3, 1, gap), "Do not turn", {}))
        wish = TurnGivenUp{};
    if (button(surface, columnOf(buttons, 3, 2, gap), "It was turned all the same",
               {.font = surface.fonts().small, .second = "it is written down"}))
        wish = TurnedAllTheSame{};
    return wish;
}

} // namespace gapwise
