#include "viewer/panels/step_page.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

/// What must be new, oiled or dry of the parts that the step places.
void addConditions(StepPage& page) {
    for (const Rule& rule : page.job.frame.rules) {
        const auto* condition = std::get_if<ConditionRule>(&rule.demand);
        if (!condition || std::ranges::find(page.step.places, condition->part) == page.step.places.end())
            continue;
        const SeatId seat = seatOf(condition->part);
        const auto verdict = std::ranges::find_if(
            page.job.checked.verdicts, [&](const Verdict& each) { return each.rule->id == rule.id; });
        const bool holds = verdict != page.job.checked.verdicts.end() && verdict->state == RuleState::Holds;
        const std::string words = fmt::format("{}: {}", condition->part.text, rule.printed);
        if (!page.job.state.build.in(seat)) {
            page.flow.text(Kind::Soft, words + " (once it is in its seat)");
            continue;
        }
        addTick(page,
                {.id = rule.id.text,
                 .words = words,
                 .ticked = holds,
                 .second = holds ? "said" : "tap when it is so"},
                [p = page, seat, state = condition->state] { sign(p, ConditionStated{seat, state, true}); });
    }
}

} // namespace

void addWitness(StepPage& page) {
    for (std::size_t i = 0; i < page.step.witness.size(); ++i) {
        const WitnessCheck& check = page.step.witness[i];
        const std::string name = fmt::format("witness-{}", i + 1);
        const Answered* said = page.job.state.answer(page.step.id, name);
        const std::size_t begin = page.flow.size();
        addTick(
            page,
            {.id = name,
             .words = check.look,
             .ticked = said != nullptr,
             .second = said ? (said->by.empty() ? "seen" : "seen by " + said->by)
                            : std::string{"tap when it is so"}},
            [p = page, name] { sign(p, Answered{p.step.id, name, "so", std::nullopt, whoWorks(p.job)}); });
        page.flow.text(Kind::Body, "Good: " + check.good);
        if (!check.bad.empty())
            page.flow.text(Kind::Soft, "Otherwise: " + check.bad);
        page.flow.keepTogether(begin);
    }
    addConditions(page);
}

} // namespace gapwise
