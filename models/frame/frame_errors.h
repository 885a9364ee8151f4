#pragma once

#include "models/frame/frame.h"
#include "models/json/fields.h"

namespace gapwise {

// The parts of frameErrors, one idea each. All of them bear references that resolve to nothing: that is the
// complaint of referenceErrors, and theirs only where they can still judge.

/// Ids are unique, references resolve, parts and seats belong together, carriers have no cycle.
void referenceErrors(const Frame& frame, Complaints& complaints);
/// Steps have no cycle; a rule's last look comes before its seating is hidden; what a step asks can be
/// answered.
void stepErrors(const Frame& frame, Complaints& complaints);
/// Each rule suits the parts it speaks of.
void ruleErrors(const Frame& frame, Complaints& complaints);
/// The rules of one part leave it a clock.
void exclusionErrors(const Frame& frame, Complaints& complaints);
/// What conditions state of one part can be true together.
void conditionErrors(const Frame& frame, Complaints& complaints);
/// What is measured can be judged: methods, limits and points fit together, references resolve.
void measurementErrors(const Frame& frame, Complaints& complaints);
/// Chains close, and what hangs on them resolves: changes, selectors, the lever.
void chainErrors(const Frame& frame, Complaints& complaints);
/// Torque plans can be carried out: patterns name every screw once, stages rise, angles are ordered, the
/// pieces that are drawn are as many as are tightened.
void torqueErrors(const Frame& frame, Complaints& complaints);
/// Parts can be made and fit where they go; rests lie on the housing.
void sizeErrors(const Frame& frame, Complaints& complaints);

/// `"SR-CO"`, for the `found` of an error.
std::string quotedId(std::string_view id);

/// The side to which the rules make the reference face of the part look; nothing without a face rule.
std::optional<Side> demandedFace(const Frame& frame, const PartId& part);

/// A part type's extent along the shaft, from its own axes to those of the cartridge: moved to the seat of
/// `part`, and turned when its face is demanded to look to the turbine.
Span alongShaft(const Frame& frame, const PartId& part, const Span& own);

} // namespace gapwise
