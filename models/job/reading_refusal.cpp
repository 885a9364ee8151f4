#include "models/job/reading_refusal.h"

#include "models/build/reading_faults.h"
#include "models/job/part_refusal.h"
#include "models/measure/judged_quantities.h"
#include "models/measure/parts.h"
#include "models/procedure/person_name.h"

namespace gapwise {

Errors refusalOfReading(const Frame& frame, const JobState& /*state*/, const ReadingTaken& event) {
    const Reading& reading = event.reading;
    const std::string what = reading.quantity.empty() ? reading.measurement : reading.quantity;
    Errors errors;
    for (Fault& fault : faultsOf(frame, reading))
        errors.push_back(refusal(what + fault.key, std::move(fault.found), std::move(fault.allowed)));
    return errors;
}

Errors refusalOfDecision(const Frame& frame, const JobState& state, const PartDecided& event) {
    const PartDecision& decision = event.decision;
    if (!frame.part(decision.part))
        return {refusal("decision", decision.part.text, "a part of " + frame.id.text)};
    if (isBlank(decision.by))
        return {refusal(decision.part.text, "no name", "who decides")};
    Build decided = state.build;
    decided.decisions = {decision};
    const JudgedQuantities judged = judgedQuantities(frame, decided, Bench{}, "");
    for (const PartVerdict& verdict : partVerdicts(frame, decided, judged.quantities))
        if (verdict.part == decision.part && verdict.open)
            return {refusal(decision.part.text, verdict.words, lackOf(decision, verdict.worst))};
    return {};
}

Errors refusalOfWork(const Frame& frame, const WorkStated& event) {
    if (knowsWork(frame, event.work))
        return {};
    return {refusal("work", event.work, "work that a measurement of " + frame.id.text + " shows")};
}

} // namespace gapwise
