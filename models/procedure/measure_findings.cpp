#include "models/procedure/measure_findings.h"

#include "models/build/reading_faults.h"
#include "models/measure/judged_quantities.h"
#include "models/measure/parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

const PartDecision* decisionOn(const Build& build, const PartId& part) {
    const auto found = std::ranges::find(build.decisions, part, &PartDecision::part);
    return part.empty() || found == build.decisions.end() ? nullptr : &*found;
}

/// How grave a standing is; 0: nothing is wrong, or it was decided on.
int severityOf(const QuantityResult& result, const PartDecision* decision) {
    const bool decided = decision && lackOf(*decision, result.standing).empty();
    switch (result.standing) {
    case Standing::Beyond:
        if (decided)
            return decision->fate == PartFate::Reuse ? 0 : 2;
        return 3;
    case Standing::Between: return decided ? 0 : 2;
    case Standing::NotJudged:
    case Standing::NotProven: return 2;
    default: return 0;
    }
}

std::string_view adviceFor(const QuantityResult& result, const PartDecision* decision) {
    if (decision && decision->fate != PartFate::Reuse)
        return " What was read is the old part: measure the new one.";
    return result.standing == Standing::Beyond ? " Find the cause, put it right, read again." : "";
}

} // namespace

std::vector<const Quantity*> unreadAt(const Frame& frame, const Build& build, const StepId& step) {
    std::vector<const Quantity*> unread;
    for (const Measurement& measurement : frame.measurements) {
        if (!measurement.required || measurement.step != step)
            continue;
        for (const Quantity& quantity : measurement.quantities) {
            const bool isRead = std::ranges::any_of(build.readings, [&](const Reading& reading) {
                return reading.occasion == Occasion::After && quantityOf(frame, reading) == &quantity;
            });
            if (!isRead && quantity.from.empty())
                unread.push_back(&quantity);
        }
    }
    return unread;
}

void addMeasureFindings(const Frame& frame, const JobState& state, std::vector<ProcedureFinding>& findings) {
    if (state.build.readings.empty())
        return;
    for (const QuantityResult& result : judgedQuantities(frame, state.build, Bench{}, "").quantities) {
        const PartDecision* decision = decisionOn(state.build, result.quantity->part);
        const int severity = severityOf(result, decision);
        if (severity > 0)
            findings.push_back(
                {"measure-" + result.quantity->id.text, severity, result.measurement->step,
                 fmt::format("{}: {}{}", result.quantity->name, result.words, adviceFor(result, decision))});
    }
}

} // namespace gapwise
