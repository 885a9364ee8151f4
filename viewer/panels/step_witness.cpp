#include "viewer/panels/step_page.h"

#include <fmt/format.h>

namespace gapwise {

void addWitness(StepPage& page) {
    using Kind = SheetParagraph::Kind;
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
}

} // namespace gapwise
