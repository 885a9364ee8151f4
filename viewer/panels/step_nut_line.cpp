#include "viewer/panels/step_question_pages.h"
#include "viewer/panels/typed_number.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

const Fastener* nutOf(const Frame& frame) {
    for (const Fastener& fastener : frame.fasteners)
        if (fastener.plan && fastener.plan->nutLine)
            return &fastener;
    return nullptr;
}

/// Both numbers, or what is wrong at its field.
void sayNutLine(const StepPage& page, const FastenerId& nut) {
    const auto number = [&](const char* name, const char* allowed) {
        const auto typed = typedNumber(page.drafts().fields[name]);
        if (!typed)
            page.drafts().faults[name] = allowed;
        return typed;
    };
    const auto read =
        number("nut_line degrees", "Degrees, as 3.5 or 3,5; minus where it was tightened less.");
    const auto stack =
        number("nut_line stack", "Millimetres, as 0.02 or -0,02; 0 where nothing was changed.");
    if (read && stack)
        sign(page, NutLineRead{nut, Degrees{*read}, *stack, whoWorks(page.job)});
}

std::string_view wordOf(NutLineOutcome outcome) {
    switch (outcome) {
    case NutLineOutcome::Agrees: return "agrees";
    case NutLineOutcome::Small: return "is a little off";
    case NutLineOutcome::Large: break;
    }
    return "is far off";
}

/// What the model says of the line that was read.
void addJudged(StepPage& page) {
    if (!page.job.state.nutLine)
        return;
    const NutLineRead& read = *page.job.state.nutLine;
    page.flow.text(Kind::Strong,
                   fmt::format("Read: {:g}°, stack {:+g} mm{}", read.read.value, read.stackNewMinusOldMm,
                               read.by.empty() ? "" : ", by " + read.by));
    const Fastener* nut = nutOf(page.job.frame);
    const auto shift = nut ? nutLineShiftOf(*nut, read) : std::nullopt;
    if (!shift)
        return;
    page.flow.text(Kind::Body, fmt::format("Expected of the changed stack {:+.1f}°; left over {:+.1f}°.",
                                           shift->expected.value, shift->corrected.value));
    const std::string advice = fmt::format("It {}: {}.", wordOf(shift->outcome), adviceFor(shift->outcome));
    if (shift->outcome == NutLineOutcome::Agrees)
        page.flow.text(Kind::Strong, advice);
    else
        addWarning(page, advice);
}

} // namespace

void addNutLine(StepPage& page) {
    const Fastener* nut = nutOf(page.job.frame);
    if (!nut) {
        page.flow.text(Kind::Body, "This frame has no limits for the nut line.");
        return;
    }
    page.flow.text(Kind::Strong, "How far does the nut stand from its old line?");
    page.flow.text(Kind::Soft,
                   fmt::format("Seen from the {} side, beyond the line in the tightening sense is "
                               "plus. By how much the stack under it changed is taken off before "
                               "the shift is judged.",
                               nameOf(nut->handSeenFrom)));
    addJudged(page);
    addField(page, {.name = "nut_line degrees", .label = "Read, in degrees", .hint = "degrees"});
    addField(page, {.name = "nut_line stack", .label = "Stack, new minus old, in mm", .hint = "mm"});
    addButton(page, "Judge it", {.leading = true}, [p = page, id = nut->id] { sayNutLine(p, id); });
}

} // namespace gapwise
