#pragma once

#include "models/measure/report.h"

namespace gapwise {

/// How a quantity stands, with the reason in a sentence.
struct Judgement {
    Standing standing = Standing::NotRead;
    bool close = false;
    Window limit{};
    std::string words{};
};

/// Nobody read it.
Judgement notRead(const Measurement& measurement, const Quantity& quantity);

/// Holds what was read against the limits of its quantity, by their own rule, when it was read by the method
/// that they are for. Of a form out of round, and of four gaps, an unbalance or a ring's gap that is in
/// `result`, their own limits too.
Judgement judge(const QuantityResult& result, const Evaluated& read);

/// How a value with its U stands in the two bands of a limit. Both bands open: NoLimit.
Standing standingOf(const Limits& limits, double value, double expanded);

} // namespace gapwise
