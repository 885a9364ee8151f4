#include "viewer/panels/step_measure.h"

#include "viewer/panels/step_page.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// How far a measurement is read, and whether something of it is out.
struct Read {
    std::size_t wanted = 0;
    std::size_t read = 0;
    bool beyond = false;
};

Read readOf(const Job& job, const StepMeasurement& each) {
    Read out;
    for (const Quantity& quantity : each.measurement->quantities) {
        const QuantityResult* result = job.measured.of(quantity.id);
        const bool before = each.occasion == Occasion::Before;
        const bool there = result && (before ? result->before.has_value() : result->after.has_value());
        out.wanted += quantity.from.empty() ? 1U : 0U;
        out.read += there && quantity.from.empty() ? 1U : 0U;
        out.beyond = out.beyond || (there && !before && result->standing == Standing::Beyond);
    }
    return out;
}

std::string readWords(const Job& job, const StepMeasurement& each) {
    if (each.measurement->quantities.empty())
        return "judged by eye";
    const Read read = readOf(job, each);
    const std::string words = read.read == 0 ? "not read"
                              : read.read == read.wanted
                                  ? "read"
                                  : fmt::format("{} of {} read", read.read, read.wanted);
    return words + (each.occasion == Occasion::Before ? ", as received" : "") +
           (read.beyond ? " · ! beyond a limit" : "");
}

} // namespace

std::vector<StepMeasurement> measurementsOf(const Frame& frame, const StepId& step) {
    std::vector<StepMeasurement> found;
    for (const Measurement& each : frame.measurements) {
        if (each.before == step)
            found.push_back({&each, Occasion::Before});
        if (each.step == step)
            found.push_back({&each, Occasion::After});
    }
    return found;
}

std::string measuredWords(const Job& job, const StepId& step) {
    const std::vector<StepMeasurement> all = measurementsOf(job.frame, step);
    const auto numbers = std::ranges::count_if(
        all, [](const StepMeasurement& each) { return !each.measurement->quantities.empty(); });
    const auto done = std::ranges::count_if(all, [&](const StepMeasurement& each) {
        const Read read = readOf(job, each);
        return read.wanted > 0 && read.read == read.wanted;
    });
    return numbers == 0 ? "by eye" : fmt::format("{} of {} read", done, numbers);
}

void addMeasurements(StepPage& page) {
    for (const StepMeasurement& each : measurementsOf(page.job.frame, page.step.id)) {
        const std::string& id = each.measurement->id.text;
        addButton(
            page, each.measurement->name,
            {.font = page.surface.fonts().strong, .second = readWords(page.job, each), .id = "measure " + id},
            [p = page, measurement = each.measurement->id] { p.wish = OpenMeasurement{measurement}; });
    }
}

} // namespace gapwise
