#include "models/torque/nut_line.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

NutLineOutcome outcomeOf(Degrees corrected, const ShiftLimits& limits) {
    const double off = std::abs(corrected.value) - kAngleRounding.value;
    if (off <= limits.agrees.value)
        return NutLineOutcome::Agrees;
    return off <= limits.small.value ? NutLineOutcome::Small : NutLineOutcome::Large;
}

bool isLimit(Degrees limit) {
    return limit.value >= 0.0 && limit.value <= 180.0;
}

} // namespace

Degrees expectedNutShift(double stackNewMinusOldMm, double pitchMm) {
    assert(pitchMm > 0.0);
    // Adding 0 makes no −0 of a stack that did not change.
    return Degrees{-stackNewMinusOldMm / pitchMm * 360.0 + 0.0};
}

Errors limitErrors(const ShiftLimits& limits) {
    Errors errors;
    const auto refuse = [&](const char* where, Degrees limit) {
        if (!isLimit(limit))
            errors.push_back({where, fmt::format("{}°", limit.value), "from 0° to 180°"});
    };
    refuse("agrees", limits.agrees);
    refuse("small", limits.small);
    if (errors.empty() && limits.small < limits.agrees)
        errors.push_back({"small", fmt::format("{}°", limits.small.value),
                          fmt::format("no less than the limit that agrees, {}°", limits.agrees.value)});
    return errors;
}

std::string_view nameOf(NutLineOutcome outcome) {
    switch (outcome) {
    case NutLineOutcome::Agrees: return "agrees";
    case NutLineOutcome::Small: return "small";
    case NutLineOutcome::Large: return "large";
    }
    return "";
}

std::string_view adviceFor(NutLineOutcome outcome) {
    switch (outcome) {
    case NutLineOutcome::Agrees: return "go on";
    case NutLineOutcome::Small: return "bring the nut to the specified torque and read again";
    case NutLineOutcome::Large:
        return "take it apart and build it again: dirt, a burr, the wrong spacer grade, or a nut or wheel "
               "that "
               "is not the one the line was drawn on";
    }
    return "";
}

NutLineShift judgeNutLine(Degrees read, Degrees expected, const ShiftLimits& limits) {
    const Degrees corrected = read - expected;
    return {
        .expected = expected, .read = read, .corrected = corrected, .outcome = outcomeOf(corrected, limits)};
}

} // namespace gapwise
