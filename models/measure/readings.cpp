#include "models/measure/readings.h"

#include "models/build/reading_faults.h"
#include "models/measure/evaluate.h"
#include "models/measure/numbers.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

void addReckoned(const Frame& frame, ReadValues& read) {
    ReadValues sums;
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities)
            if (!read.contains(quantity.id))
                if (std::optional<Evaluated> sum = reckoned(frame, measurement, quantity, read))
                    sums.emplace(quantity.id, std::move(*sum));
    read.merge(sums);
}

/// Flags a quantity that is not what it must agree with.
void addDisagreements(const Frame& frame, ReadValues& read) {
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities) {
            if (!quantity.agrees)
                continue;
            const auto one = read.find(quantity.id);
            const auto other = read.find(quantity.agrees->with);
            if (one == read.end() || other == read.end())
                continue;
            const double apart = std::abs(one->second.value - other->second.value);
            if (apart > quantity.agrees->withinMm + kRounding)
                one->second.flags.push_back(
                    {FlagKind::Disagrees,
                     fmt::format("{} from {}, {} apart; they should agree within {}: read both again.",
                                 numberWords(one->second.value, 3, Unit::Millimetres),
                                 numberWords(other->second.value, 3, Unit::Millimetres),
                                 numberWords(apart, 3, Unit::Millimetres),
                                 numberWords(quantity.agrees->withinMm, 3, Unit::Millimetres))});
        }
}

} // namespace

AllRead allRead(const Frame& frame, const Build& build, const Bench& bench, std::string_view today) {
    AllRead all;
    for (const Reading& reading : build.readings) {
        const Quantity* quantity = quantityOf(frame, reading);
        if (!quantity || !faultsOf(frame, reading).empty())
            continue;
        const Measurement& measurement = *frame.measurement(MeasurementId{reading.measurement});
        Evaluated evaluated = evaluateReading({frame, build, bench, measurement, *quantity, today}, reading);
        ReadValues& values = reading.occasion == Occasion::Before ? all.before : all.after;
        const auto [place, isFirst] = values.try_emplace(quantity->id);
        if (!isFirst)
            all.earlier[quantity->id].push_back(std::move(place->second));
        place->second = std::move(evaluated);
    }
    for (ReadValues* read : {&all.before, &all.after}) {
        addReckoned(frame, *read);
        addDisagreements(frame, *read);
    }
    return all;
}

} // namespace gapwise
