#include "viewer/panels/step_cautions.h"

#include "viewer/panels/step_page.h"

#include <algorithm>

namespace gapwise {

std::vector<const Caution*> cautionsOf(const Frame& frame, const StepId& step) {
    std::vector<const Caution*> cautions;
    for (const Caution& caution : frame.cautions)
        if (std::ranges::find(caution.steps, step) != caution.steps.end())
            cautions.push_back(&caution);
    // The gravest first.
    std::ranges::stable_sort(cautions, {}, [](const Caution* caution) { return caution->signal; });
    return cautions;
}

std::size_t unreadOf(const Job& job, const StepId& step) {
    const std::vector<const Caution*> cautions = cautionsOf(job.frame, step);
    return static_cast<std::size_t>(std::ranges::count_if(
        cautions, [&](const Caution* each) { return !job.state.acknowledged.contains(each->id); }));
}

void addCautions(StepPage& page) {
    using Kind = SheetParagraph::Kind;
    for (const Caution* caution : cautionsOf(page.job.frame, page.step.id)) {
        const std::size_t begin = page.flow.size();
        page.flow.paragraph({.kind = Kind::Signal,
                             .words = std::string{signalWordOf(caution->signal)},
                             .signal = caution->signal});
        page.flow.text(Kind::Body, caution->words);
        page.flow.keepsNext();
        if (page.job.state.acknowledged.contains(caution->id))
            page.flow.text(Kind::Small, "Read in this job.");
        else
            addButton(page, "I have read it", {.leading = true, .id = "read " + caution->id},
                      [p = page, id = caution->id] { sign(p, CautionAcknowledged{id, whoWorks(p.job)}); });
        page.flow.keepTogether(begin);
    }
}

} // namespace gapwise
