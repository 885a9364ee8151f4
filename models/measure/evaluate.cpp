#include "models/measure/evaluate.h"

#include "models/gauging/form.h"
#include "models/gauging/repeats.h"
#include "models/gauging/temperature.h"
#include "models/measure/flags.h"
#include "models/measure/instruments.h"
#include "models/uncertainty/type_b.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace gapwise {

namespace {

/// Gauges, anvils and setting rings are of steel.
constexpr double kGaugePerK = 11.5e-6;
/// How well an expansion coefficient (a share of it) and a temperature (K) are known, rectangular. Common
/// practice, no source.
constexpr double kExpansionShare = 0.1;
constexpr double kThermometerK = 1.0;

/// Whole rounds over the points of the quantity; 0 where the values are no whole rounds.
std::size_t roundsOf(const Quantity& quantity, std::size_t values) {
    const std::size_t points = std::max<std::size_t>(quantity.points.size(), 1);
    return values % points == 0 ? values / points : 0;
}

/// The repeats of one point.
std::vector<double> repeatsAt(const Quantity& quantity, const std::vector<double>& values,
                              std::size_t point) {
    const std::size_t points = std::max<std::size_t>(quantity.points.size(), 1);
    std::vector<double> repeats;
    for (std::size_t i = point; i < values.size(); i += points)
        repeats.push_back(values[i]);
    return repeats;
}

double expansionOfPart(const Frame& frame, const Quantity& quantity) {
    const PartType* type = quantity.part.empty() ? nullptr : frame.typeOf(quantity.part);
    return type ? type->expansionPerK.value_or(0.0) : 0.0;
}

bool wasWarm(const ReadingCase& c, const Reading& reading) {
    return c.quantity.unit == Unit::Millimetres && expansionOfPart(c.frame, c.quantity) > 0.0 &&
           (reading.temperatureC || reading.gaugeTemperatureC);
}

WarmReading warm(const ReadingCase& c, const Reading& reading, double read) {
    return WarmReading{.readMm = read,
                       .partC = reading.temperatureC.value_or(kReferenceC),
                       .partPerK = expansionOfPart(c.frame, c.quantity),
                       .gaugeC = reading.gaugeTemperatureC.value_or(kReferenceC),
                       .gaugePerK = kGaugePerK};
}

/// Standard uncertainty of the correction to 20 °C: of both coefficients and of both thermometers.
double standardOfWarmth(const WarmReading& w) {
    const auto part = [&](double perK, double riseK) {
        return std::hypot(standardFromRectangular(kExpansionShare * perK * riseK),
                          standardFromRectangular(perK * kThermometerK));
    };
    return std::abs(w.readMm) *
           std::hypot(part(w.partPerK, w.partC - kReferenceC), part(w.gaugePerK, w.gaugeC - kReferenceC));
}

/// Of the mean of the repeats of one point; 0 where nothing was repeated.
double standardOfRepeats(const Quantity& quantity, const std::vector<double>& values) {
    const std::size_t rounds = roundsOf(quantity, values.size());
    if (rounds < 2)
        return 0.0;
    const std::size_t points = values.size() / rounds;
    double variances = 0.0;
    for (std::size_t point = 0; point < points; ++point) {
        const double deviation = statisticsOf(repeatsAt(quantity, values, point)).deviation;
        variances += deviation * deviation;
    }
    return std::sqrt(variances / static_cast<double>(points) / static_cast<double>(rounds));
}

double spreadOf(const Quantity& quantity, const std::vector<double>& values) {
    if (roundsOf(quantity, values.size()) < 2)
        return 0.0;
    double spread = 0.0;
    for (std::size_t point = 0; point < std::max<std::size_t>(quantity.points.size(), 1); ++point)
        spread = std::max(spread, repeatsOf(repeatsAt(quantity, values, point)).spread);
    return spread;
}

double judgedOf(Takes takes, const std::vector<double>& values, double mean) {
    switch (takes) {
    case Takes::Least: return *std::ranges::min_element(values);
    case Takes::Most: return *std::ranges::max_element(values);
    case Takes::Range: return rangeMm(values);
    case Takes::Mean: break;
    }
    return mean;
}

void addForm(const Quantity& quantity, Evaluated& evaluated) {
    const auto planes = static_cast<std::size_t>(quantity.planes);
    const std::size_t points = quantity.points.size();
    if (planes == 0 || points % planes != 0 || roundsOf(quantity, evaluated.values.size()) == 0)
        return;
    const std::vector<double> means = pointMeans(quantity, evaluated.values);
    const auto directions = static_cast<std::ptrdiff_t>(points / planes);
    std::vector<PlaneReadings> byPlane;
    for (auto at = means.begin(); at != means.end(); at += directions)
        byPlane.emplace_back(at, at + directions);
    const DiameterForm form = formOf(byPlane);
    evaluated.ovality = form.ovalityMm;
    evaluated.taper = form.taperMm;
}

/// How many decimals the values carry, at most 4.
int decimalsOf(const std::vector<double>& values) {
    int decimals = 0;
    for (const double value : values)
        for (double scaled = value * std::pow(10.0, decimals);
             decimals < 4 && std::abs(scaled - std::round(scaled)) > 1e-6;
             scaled = value * std::pow(10.0, decimals))
            ++decimals;
    return decimals;
}

} // namespace

std::vector<double> pointMeans(const Quantity& quantity, const std::vector<double>& values) {
    const std::size_t rounds = roundsOf(quantity, values.size());
    if (rounds < 2 || quantity.points.empty())
        return values;
    std::vector<double> means;
    for (std::size_t point = 0; point < quantity.points.size(); ++point)
        means.push_back(repeatsOf(repeatsAt(quantity, values, point)).mean);
    return means;
}

const Instrument* instrumentOf(const ReadingCase& c, const Reading& reading) {
    return reading.instrument.empty() ? nullptr : instrumentOf(c.build, c.bench, reading.instrument);
}

std::optional<double> expectedEntryOf(const Frame& frame, const Quantity& quantity) {
    const Window& fresh = quantity.limits.fresh;
    std::optional<double> expected = quantity.expected;
    if (const Dimension* dimension = frame.dimension(quantity.id); !expected && dimension)
        expected = dimension->nominalMm;
    if (!expected && fresh.least && fresh.most && quantity.takes != Takes::Range)
        expected = (*fresh.least + *fresh.most) / 2.0;
    return expected && *expected > 0.0 ? expected : std::nullopt;
}

Evaluated evaluateReading(const ReadingCase& c, const Reading& reading) {
    Evaluated evaluated;
    evaluated.reading = &reading;
    const bool corrects = wasWarm(c, reading);
    double ofWarmth = 0.0;
    for (const double read : reading.values) {
        const WarmReading each = warm(c, reading, read);
        evaluated.values.push_back(corrects ? lengthAt20Mm(each) : read);
        ofWarmth = corrects ? std::max(ofWarmth, standardOfWarmth(each)) : 0.0;
    }
    const auto count = static_cast<double>(reading.values.size());
    const double mean = std::accumulate(evaluated.values.begin(), evaluated.values.end(), 0.0) / count;
    evaluated.value = mean;
    evaluated.correctedBy =
        corrects ? mean - std::accumulate(reading.values.begin(), reading.values.end(), 0.0) / count : 0.0;
    const std::vector<double> means = pointMeans(c.quantity, evaluated.values);
    if (c.quantity.unbalance)
        evaluated.value = std::accumulate(means.begin(), means.end(), 0.0);
    evaluated.judged =
        c.quantity.unbalance ? evaluated.value : judgedOf(c.quantity.takes, means, evaluated.value);
    evaluated.method = reading.method;
    evaluated.spread = spreadOf(c.quantity, evaluated.values);
    addForm(c.quantity, evaluated);
    const double ofInstrument =
        standardFromExpanded(expandedOf(c, instrumentOf(c, reading), reading), kCoverageFactor);
    const double ofRepeats = standardOfRepeats(c.quantity, evaluated.values);
    evaluated.expanded = kCoverageFactor * std::hypot(ofInstrument, ofRepeats, ofWarmth);
    const Instrument* instrument = instrumentOf(c, reading);
    evaluated.decimals =
        std::max(decimalsOf(reading.values), instrument ? decimalsOf({instrument->resolution}) : 0);
    evaluated.flags = flagsOf(c, reading, evaluated);
    return evaluated;
}

} // namespace gapwise
