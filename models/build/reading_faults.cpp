#include "models/build/reading_faults.h"

#include "models/build/date.h"
#include "models/build/names.h"
#include "models/json/document.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// The faults of one reading of a quantity that is known.
class ReadingCheck {
public:
    ReadingCheck(const Frame& frame, const Quantity& quantity, const Reading& reading)
        : frame_{frame}, quantity_{quantity}, reading_{reading} {}

    std::vector<Fault> faults(const Measurement& measurement) {
        checkUnit();
        checkMethod(measurement);
        checkValues();
        checkTemperature("/temperature_C", reading_.temperatureC);
        checkTemperature("/gauge_temperature_C", reading_.gaugeTemperatureC);
        if (!reading_.on.empty() && !isDate(reading_.on))
            add("/on", quotedText(reading_.on), kDateWords);
        return std::move(faults_);
    }

private:
    void checkUnit() {
        if (reading_.unit != nameOf(quantity_.unit))
            add("/unit", reading_.unit.empty() ? "no unit" : quotedText(reading_.unit),
                fmt::format("{}, the unit of {}", nameOf(quantity_.unit), quantity_.id.text));
    }

    void checkMethod(const Measurement& measurement) {
        if (reading_.method.empty() || measurement.method(reading_.method))
            return;
        std::vector<std::string> ids;
        for (const Method& method : measurement.methods)
            ids.push_back(method.id);
        add("/method", quotedText(reading_.method),
            ids.empty() ? fmt::format("no method: {} has none", measurement.id.text)
                        : schema::listed(ids, "or"));
    }

    void checkValues() {
        const std::vector<double>& values = reading_.values;
        if (values.empty())
            add("/values", "no value", "at least one value");
        const bool negative = mayBeNegative(frame_, quantity_);
        for (std::size_t i = 0; i < values.size(); ++i)
            if (!std::isfinite(values[i]))
                add(fmt::format("/values/{}", i), "a value that is no number", "a number");
            else if (values[i] < 0.0 && !negative)
                add(fmt::format("/values/{}", i), fmt::format("{:g}", values[i]),
                    fmt::format("not below 0: {}", quantity_.name));
        const std::size_t places = quantity_.points.size();
        const bool whole = quantity_.fourPoint || quantity_.unbalance;
        if (whole && places > 0 && values.size() % places != 0)
            add("/values", schema::counted(values.size(), "value"),
                fmt::format("a value for each of {}", schema::listed(quantity_.points, "and")));
    }

    void checkTemperature(const char* key, const std::optional<double>& celsius) {
        if (celsius && !kBenchC.contains(*celsius))
            add(key, fmt::format("{:g}", *celsius),
                fmt::format("from {:g} to {:g} °C", kBenchC.least, kBenchC.most));
    }

    void add(std::string key, std::string found, std::string allowed) {
        faults_.push_back({std::move(key), std::move(found), std::move(allowed)});
    }

    const Frame& frame_;
    const Quantity& quantity_;
    const Reading& reading_;
    std::vector<Fault> faults_{};
};

/// Why no quantity is meant.
Fault unknownQuantity(const Measurement& measurement, const Reading& reading) {
    if (measurement.quantities.empty())
        return {"/measurement", quotedText(reading.measurement),
                fmt::format("a measurement with a number: {} is judged by eye", measurement.name)};
    std::vector<std::string> ids;
    for (const Quantity& quantity : measurement.quantities)
        ids.push_back(quantity.id.text);
    const std::string allowed = schema::listed(ids, "or");
    if (reading.quantity.empty())
        return {"", "no quantity", fmt::format("a reading of {} names {}", measurement.id.text, allowed)};
    return {"/quantity", quotedText(reading.quantity), allowed};
}

} // namespace

const Quantity* quantityOf(const Frame& frame, const Reading& reading) {
    const Measurement* measurement = frame.measurement(MeasurementId{reading.measurement});
    if (!measurement)
        return nullptr;
    if (reading.quantity.empty())
        return measurement->quantities.size() == 1 ? &measurement->quantities.front() : nullptr;
    return measurement->quantity(QuantityId{reading.quantity});
}

bool mayBeNegative(const Frame& frame, const Quantity& quantity) {
    const Dimension* dimension = frame.dimension(quantity.id);
    return !quantity.from.empty() || (dimension && dimension->nominalMm <= 0.0);
}

std::vector<Fault> faultsOf(const Frame& frame, const Reading& reading) {
    const Measurement* measurement = frame.measurement(MeasurementId{reading.measurement});
    if (!measurement) {
        std::vector<std::string> ids;
        for (const Measurement& each : frame.measurements)
            ids.push_back(each.id.text);
        return {{"/measurement", quotedText(reading.measurement),
                 ids.empty() ? fmt::format("none: {} has no measurements", frame.id.text)
                             : schema::listed(ids, "or")}};
    }
    const Quantity* quantity = quantityOf(frame, reading);
    if (!quantity)
        return {unknownQuantity(*measurement, reading)};
    return ReadingCheck{frame, *quantity, reading}.faults(*measurement);
}

std::vector<std::string> worksOf(const Frame& frame) {
    std::vector<std::string> works;
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities)
            for (const Expectation& expectation : quantity.expectations)
                if (!expectation.work.empty() && std::ranges::find(works, expectation.work) == works.end())
                    works.push_back(expectation.work);
    return works;
}

bool knowsWork(const Frame& frame, const std::string& work) {
    const std::vector<std::string> works = worksOf(frame);
    return std::ranges::find(works, work) != works.end();
}

} // namespace gapwise
