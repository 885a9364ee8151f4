#pragma once

#include "models/measure/measure.h"

#include <string>
#include <vector>

namespace gapwise::small {

/// An invented frame: a journal `d` of the shaft (two planes, two directions; new 11.990 to 11.995, limit
/// 11.980), a collar `a` with its hub and track (a ball anvil sees it, flat anvils do not), and on the
/// assembly a clearance `c` (new 0.050 to 0.090, limit 0.120), which the collar's step makes with `t`.
Frame frame();

/// MIC (flat anvils), BALL, DIAL: 0.001 mm, U 0.003 and 0.006, calibrated to the end of 2026.
Bench bench();

/// A reading in mm by the usual method and instrument of its measurement, on 2026-05-04.
Reading reading(const std::string& quantity, std::vector<double> values);

/// All parts in their seats, with these readings.
Build build(std::vector<Reading> readings);

/// The report of such a build. `held` keeps frame and build where the report points.
struct Held {
    Frame frame{};
    Build build{};
    MeasureReport report{};

    const QuantityResult& of(const std::string& quantity) const { return *report.of(QuantityId{quantity}); }
    const Evaluated& read(const std::string& quantity) const { return *of(quantity).after; }
    /// The flags of what was read, by their names, joined by blanks.
    std::string flags(const std::string& quantity) const;
};
/// Fills `held.report` from its frame and build.
void measure(Held& held, const std::string& today = "");

} // namespace gapwise::small
