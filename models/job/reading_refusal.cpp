#include "models/job/reading_refusal.h"

#include "models/frame/names.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

Errors refused(std::string where, std::string found, std::string allowed) {
    return {Error{.where = std::move(where), .found = std::move(found), .allowed = std::move(allowed)}};
}

const Quantity* quantityOf(const Measurement& measurement, const Reading& reading) {
    if (reading.quantity.empty() && measurement.quantities.size() == 1)
        return &measurement.quantities.front();
    return measurement.quantity(QuantityId{reading.quantity});
}

} // namespace

Errors refusalOfReading(const Frame& frame, const JobState& /*state*/, const ReadingTaken& event) {
    const Reading& reading = event.reading;
    const Measurement* measurement = frame.measurement(MeasurementId{reading.measurement});
    if (!measurement)
        return refused("reading", reading.measurement, "a measurement of " + frame.id.text);
    const Quantity* quantity = quantityOf(*measurement, reading);
    if (!quantity)
        return refused(reading.measurement, reading.quantity.empty() ? "no quantity" : reading.quantity,
                       "a quantity of " + measurement->name);
    if (reading.values.empty())
        return refused(quantity->id.text, "no value", "at least one value");
    if (!std::ranges::all_of(reading.values, [](double value) { return std::isfinite(value); }))
        return refused(quantity->id.text, "a value that is no number", "numbers");
    if (reading.unit != nameOf(quantity->unit))
        return refused(quantity->id.text, reading.unit.empty() ? "no unit" : reading.unit,
                       std::string{nameOf(quantity->unit)});
    if (!reading.method.empty() && !measurement->method(reading.method))
        return refused(quantity->id.text, "method " + reading.method, "a method of " + measurement->name);
    return {};
}

Errors refusalOfDecision(const Frame& frame, const JobState& /*state*/, const PartDecided& event) {
    const PartDecision& decision = event.decision;
    if (!frame.part(decision.part))
        return refused("decision", decision.part.text, "a part of " + frame.id.text);
    if (decision.by.empty())
        return refused(decision.part.text, "no name", "who decides");
    return {};
}

Errors refusalOfWork(const Frame& frame, const WorkStated& event) {
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities)
            for (const Expectation& expectation : quantity.expectations)
                if (expectation.work == event.work)
                    return {};
    return refused("work", event.work, "work that a measurement of " + frame.id.text + " shows");
}

} // namespace gapwise
