#include "models/measure/instruments.h"

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

struct Kind {
    std::string_view id;
    std::string_view words;
    double usualMm;
};

// Usual uncertainties are common practice; no source.
constexpr std::array kKinds{Kind{"flat_anvil_micrometer", "flat-anvil micrometer", 0.003},
                            Kind{"ball_anvil_micrometer", "ball-anvil micrometer", 0.003},
                            Kind{"bore_gauge", "bore gauge", 0.004},
                            Kind{"depth_micrometer", "depth micrometer", 0.005},
                            Kind{"groove_micrometer", "groove micrometer", 0.010},
                            Kind{"dial_indicator", "dial indicator", 0.008},
                            Kind{"feeler_gauges", "feeler gauges", 0.030},
                            Kind{"caliper", "caliper", 0.030},
                            Kind{"balancing_machine", "balancing machine", 0.0}};

const Kind* kindOf(std::string_view id) {
    const auto found = std::ranges::find(kKinds, id, &Kind::id);
    return found == kKinds.end() ? nullptr : &*found;
}

} // namespace

double usualUncertainty(std::string_view id) {
    const Kind* kind = kindOf(id);
    return kind ? kind->usualMm : 0.0;
}

std::string kindWords(std::string_view id) {
    const Kind* kind = kindOf(id);
    return std::string{kind ? kind->words : id};
}

double expandedOf(const ReadingCase& c, const Instrument* instrument, const Reading& reading) {
    if (instrument && instrument->unit == nameOf(c.quantity.unit))
        return instrument->uncertainty;
    if (c.quantity.unit != Unit::Millimetres)
        return 0.0;
    const Method* method = c.measurement.method(reading.method);
    if (!method && !c.measurement.methods.empty())
        method = &c.measurement.methods.front();
    return method && !method->gauges.empty() ? usualUncertainty(method->gauges.front()) : 0.0;
}

} // namespace gapwise
