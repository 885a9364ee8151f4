#pragma once

#include "models/check/check.h"
#include "models/job/log.h"

#include <string>
#include <vector>

namespace gapwise {

/// Something wrong that no rule of a seating tells: severity as of rules.
struct ProcedureFinding {
    std::string id{}; ///< `loose-rotor`, `count`, `variant`, `block`, `angle-T3`, `nut-line`, `measure-c`, …
    int severity = 3;
    StepId step{};       ///< Where it shows.
    std::string words{}; ///< What, why it matters and what to do.
};

/// As the job stands: the piece was turned with a loose rotor, counts that differ, a bearing of another
/// variant than the frame's, a block that is too low, an angle outside its window, a nut line that is off,
/// a quantity beyond its limit or not decided on.
std::vector<ProcedureFinding> procedureFindings(const Frame& frame, const JobState& state);

/// Whether the rotor lies in the housing and nothing holds it: no step done that holds it. Of a
/// frame that names no such step it is not known, and never loose.
bool rotorIsLoose(const Frame& frame, const Build& build);

/// What is said before the piece is turned, lifted or tilted: the loose rotor, severity 4; nothing when it
/// may be turned.
std::optional<ProcedureFinding> findingBeforeTurning(const Frame& frame, const JobState& state);

/// Something that stops a hold point, and whether it can be overridden at all and by whom.
struct HeldBy {
    std::string finding{}; ///< Id of the rule or of the finding of the procedure.
    int severity = 3;
    std::string words{};
    bool mayOverride = false;    ///< Never in a rehearsal.
    bool needsInspector = false; ///< Severity 4: a second person, inspector, with a concession number.
};

/// The findings of severity 3 and 4 that are broken or open.
std::vector<HeldBy> heldBy(const Frame& frame, const JobState& state, const Checked& checked);

/// Why a hold point does not pass: no name, no witness or the same person, an override that is missing or not
/// allowed. Each with its place: `by`, `witness`, `overrides/SR-CO.gap/reason`. Empty when it passes.
Errors refusalOfPassing(const Frame& frame, const JobState& state, const Checked& checked,
                        const HoldPointPassed& passing);

} // namespace gapwise
