#pragma once

#include "models/check/check.h"

namespace gapwise {

/// What one evaluator found out: the comparison, and either a verdict on it or why there is none.
struct Outcome {
    Compared compared{FactCompared{}};
    std::optional<bool> holds{};
    std::string notKnown{};
};

// The rules of what was stated or written down, not seen: no last look ends them, and no eye confirms them.

/// The sense in which a fastener was turned, whichever side it was noted from.
Outcome handTurned(const Build& build, const HandRule& rule);

/// Whether everything that the step needs in this build was done before it. A step that may be skipped is not
/// missed: that it was is not for a build to say.
Outcome orderKept(const Frame& frame, const Build& build, const OrderRule& rule);

/// Whether somebody said so of the part. Who says that a part is dry says that it is not oiled; a part may be
/// new beside either.
Outcome conditionStated(const Build& build, const ConditionRule& rule);

bool isStated(const Rule& rule);

/// A hand once its torque was noted or its step is done, an order once its step is done, a condition of a
/// part that is in once somebody said something of it or the step is done at which it is to be said.
bool isStatementDue(const Frame& frame, const Build& build, const Rule& rule);

} // namespace gapwise
