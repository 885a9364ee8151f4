#include "viewer/panels/torque_parts.h"

#include "models/procedure/reopen.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

std::string listed(const std::vector<StepId>& steps) {
    std::vector<std::string> names;
    for (const StepId& step : steps)
        names.push_back(step.text);
    return fmt::format("{}", fmt::join(names, ", "));
}

bool isTightened(const TorqueWork& work) {
    return tighteningOf(work.fastener, work.job.state).done > 0 ||
           work.job.state.build.done(work.fastener.step);
}

std::vector<std::string> consequencesOf(const TorqueWork& work) {
    if (!isTightened(work))
        return {"Nothing of it is tightened yet: there is nothing to take back."};
    const Reopened reopened = reopenedBy(StepGraph{work.job.frame}, work.job.state.build, work.fastener.step);
    std::vector<std::string> lines{
        fmt::format("{}: slackened, turned on or taken out since? Then the tightening begins anew at its "
                    "first stage, with new locking elements.",
                    work.fastener.name)};
    lines.push_back(reopened.steps.empty() ? "No step that is done depends on it."
                                           : "Open again: " + listed(reopened.steps) + ".");
    if (!reopened.lapsed.empty())
        lines.push_back("To be signed again: " + listed(reopened.lapsed) + ".");
    lines.emplace_back("What was done stays in the record.");
    return lines;
}

} // namespace

std::optional<Wish> touchedPage(const TorqueWork& work, const Area& area, const Surface& surface) {
    constexpr std::array<const char*, 3> kReasons{"slackened", "turned on", "taken out"};
    const double row = std::max(surface.bench ? surface.target : 0.0, surface.px(44.0));
    Area words{area.x, area.y, area.width, area.height - row - surface.px(10.0)};
    for (const std::string& line : consequencesOf(work)) {
        const double used = writeLines(words, line, {wordFont(surface)}) + surface.px(4.0);
        words = {words.x, words.y + used, words.width, words.height - used};
    }
    const bool enabled = isTightened(work);
    const Area buttons{area.x, area.bottom() - row, area.width * 0.7, row};
    std::optional<Wish> wish;
    for (int i = 0; i < static_cast<int>(kReasons.size()); ++i) {
        const std::string reason = kReasons.at(static_cast<std::size_t>(i));
        if (!button(surface, columnOf(buttons, 4, i + 1, surface.px(8.0)), "Yes, " + reason,
                    {.enabled = enabled}))
            continue;
        wish = byWhoWorks(work.job, Loosened{work.fastener.id, reason, whoWorks(work.job)}, surface.drafts());
        if (wish)
            surface.drafts().torque.page = TorqueDrafts::Page::Tighten;
    }
    if (button(surface, columnOf(buttons, 4, 0, surface.px(8.0)), "No, back"))
        surface.drafts().torque.page = TorqueDrafts::Page::Tighten;
    return wish;
}

} // namespace gapwise
