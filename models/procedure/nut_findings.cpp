#include "models/procedure/nut_findings.h"

#include "models/procedure/tightening.h"
#include "models/torque/angle_window.h"
#include "models/torque/thread.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Findings = std::vector<ProcedureFinding>;

std::string idOf(const char* what, const Fastener& fastener) {
    return fmt::format("{}-{}", what, fastener.id.text);
}

void addAngle(const JobState& state, const Fastener& fastener, Findings& findings) {
    const TorqueNote* note = noteOf(state.build, fastener);
    if (!note || !fastener.plan || !fastener.plan->runDown)
        return;
    const RunDown& run = *fastener.plan->runDown;
    if (!note->angle) {
        findings.push_back({idOf("angle", fastener), 2, fastener.step,
                            fmt::format("The angle of {} from snug to final was not written down: torque "
                                        "alone does not tell a dry thread.",
                                        fastener.name)});
        return;
    }
    const AngleWindow window{run.leastAngle, run.mostAngle};
    if (judgeAngle(*note->angle, window) != AngleVerdict::Within)
        findings.push_back({idOf("angle", fastener), 3, fastener.step,
                            fmt::format("{}: {}. Loosen it, find out why, tighten it again.", fastener.name,
                                        angleWords(*note->angle, window))});
}

void addNutLine(const Frame& frame, const JobState& state, const Fastener& fastener, Findings& findings) {
    if (!state.nutLine || state.nutLine->fastener != fastener.id)
        return;
    const std::optional<NutLineShift> shift = nutLineShiftOf(fastener, *state.nutLine);
    if (!shift || shift->outcome == NutLineOutcome::Agrees)
        return;
    StepId at = fastener.step;
    for (const Step& step : frame.steps)
        if (std::ranges::find(step.asks, StepQuestion::NutLine) != step.asks.end())
            at = step.id;
    findings.push_back(
        {"nut-line", shift->outcome == NutLineOutcome::Small ? 3 : 4, at,
         fmt::format("The nut stands {:.1f}° from its line, {:.1f}° are expected of the changed stack: "
                     "{:.1f}° are left. {}.",
                     shift->read.value, shift->expected.value, shift->corrected.value,
                     adviceFor(shift->outcome))});
}

} // namespace

std::optional<NutLineShift> nutLineShiftOf(const Fastener& fastener, const NutLineRead& read) {
    if (!fastener.plan || !fastener.plan->nutLine)
        return std::nullopt;
    const Result<MetricThread> thread = parseThread(fastener.plan->thread, "thread");
    if (!thread)
        return std::nullopt;
    return judgeNutLine(read.read, expectedNutShift(read.stackNewMinusOldMm, thread->pitchMm),
                        {fastener.plan->nutLine->agrees, fastener.plan->nutLine->small});
}

void addNutFindings(const Frame& frame, const JobState& state, const Fastener& fastener,
                    std::vector<ProcedureFinding>& findings) {
    addAngle(state, fastener, findings);
    addNutLine(frame, state, fastener, findings);
}

} // namespace gapwise
