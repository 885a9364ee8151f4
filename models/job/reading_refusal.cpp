#include "models/job/reading_refusal.h"

#include "models/build/reading_faults.h"
#include "models/job/part_refusal.h"
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

Errors refusalOfDecision(const Frame& frame, const JobState& /*state*/, const PartDecided& event) {
    const PartDecision& decision = event.decision;
    if (!frame.part(decision.part))
        return {refusal("decision", decision.part.text, "a part of " + frame.id.text)};
    if (isBlank(decision.by))
        return {refusal(decision.part.text, "no name", "who decides")};
    return {};
}

Errors refusalOfWork(const Frame& frame, const WorkStated& event) {
    if (knowsWork(frame, event.work))
        return {};
    return {refusal("work", event.work, "work that a measurement of " + frame.id.text + " shows")};
}

} // namespace gapwise
