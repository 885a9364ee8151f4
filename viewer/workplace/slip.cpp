#include "viewer/workplace/slip.h"

#include "models/check/check.h"
#include "models/frame/notice.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

HandOver slipOf(const Job& job) {
    Checked told = job.checked;
    std::erase_if(told.findings, [&](const Finding& finding) {
        return !std::ranges::all_of(partsOf(*finding.verdict.rule), [&](const PartId& part) {
            return !job.state.build.in(seatOf(part)) || demandShown(job, seatOf(part));
        });
    });
    return handOverOf(StepGraph{job.frame}, job.log, job.state, told);
}

std::string slipText(const Job& job) {
    const HandOver slip = slipOf(job);
    std::string text = fmt::format("Slip for the next shift\n{}\n{}\n", slip.frame, slip.attitude);
    if (!slip.person.empty())
        text += fmt::format("Worked last: {}\n", slip.person);
    const auto list = [&](std::string_view heading, const std::vector<std::string>& items) {
        if (items.empty())
            return;
        text += fmt::format("\n{}\n", heading);
        for (const std::string& item : items)
            text += fmt::format("- {}\n", item);
    };
    list("Done last", slip.lastActs);
    list("Possible now", slip.possible);
    text += fmt::format("\nNext hold point\n- {}\n",
                        slip.nextHoldPoint.empty() ? "none is left" : slip.nextHoldPoint);
    list("Beware", slip.beware);
    list("On the bench, put together", slip.apart);
    return text + fmt::format("\n{}\n{}\n", noticeOf(job.frame), prevailLine(job.frame));
}

} // namespace gapwise
