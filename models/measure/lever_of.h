#pragma once

#include "models/frame/chain.h"
#include "models/gauging/lever.h"

namespace gapwise {

/// The lever of a frame as plain numbers.
inline Lever leverOf(const LeverPlan& plan) {
    return {.spanMm = plan.spanMm,
            .noseMm = plan.noseMm,
            .turbineMm = plan.turbineMm,
            .bearingLengthMm = plan.bearingLengthMm};
}

} // namespace gapwise
