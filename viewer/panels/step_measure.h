#pragma once

#include "viewer/workplace/workplace.h"

#include <string>
#include <vector>

namespace gapwise {

struct StepPage;

/// A measurement that belongs to a step: as received at one of the strip-down, now at another.
struct StepMeasurement {
    const Measurement* measurement = nullptr;
    Occasion occasion = Occasion::After;
};
std::vector<StepMeasurement> measurementsOf(const Frame& frame, const StepId& step);

/// `2 of 5 read` of a step that measures something.
std::string measuredWords(const Job& job, const StepId& step);

/// The page of the card from which they are opened.
void addMeasurements(StepPage& page);

} // namespace gapwise
