#pragma once

#include "models/measure/report.h"

namespace gapwise {

/// Where a reading belongs, with all that its evaluation looks at.
struct ReadingCase {
    const Frame& frame;
    const Build& build;
    const Bench& bench;
    const Measurement& measurement;
    const Quantity& quantity;
    std::string_view today{}; ///< For calibrations of readings without a date; empty: not looked at.
};

/// A reading at 20 °C: its values, mean, spread and form, how well it is known, and what is odd about it.
/// `reading` must be a reading of the quantity without faults (see faultsOf), and outlive the result.
Evaluated evaluateReading(const ReadingCase& readingCase, const Reading& reading);

/// How the quantity is expected to be read, in its unit: usual value, drawing size or the middle of its band;
/// nothing where none of them is above 0.
std::optional<double> expectedEntryOf(const Frame& frame, const Quantity& quantity);

/// The instrument of a reading, or null.
const Instrument* instrumentOf(const ReadingCase& readingCase, const Reading& reading);

/// The mean of each point over all rounds; all values where they are no whole rounds.
std::vector<double> pointMeans(const Quantity& quantity, const std::vector<double>& values);

} // namespace gapwise
