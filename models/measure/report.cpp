#include "models/measure/report.h"

#include "models/chain/chain.h"
#include "models/measure/case_of.h"
#include "models/measure/judged_quantities.h"
#include "models/measure/parts.h"
#include "models/measure/play.h"

#include <algorithm>

namespace gapwise {

namespace {

std::optional<PlayResult> playOf(const Frame& frame, std::span<const Prediction> chains,
                                 const ReadValues& read, Occasion occasion) {
    return playResult(frame, chains,
                      {.nose = valueIn(read, frame.lever->noseReading),
                       .turbine = valueIn(read, frame.lever->turbineReading),
                       .occasion = occasion});
}

} // namespace

const QuantityResult* MeasureReport::of(const QuantityId& id) const {
    const auto isOf = [&](const QuantityResult& each) { return each.quantity && each.quantity->id == id; };
    const auto found = std::ranges::find_if(quantities, isOf);
    return found == quantities.end() ? nullptr : &*found;
}

MeasureReport measureReport(const Frame& frame, const Build& build, const Bench& bench,
                            const MeasureSettings& settings) {
    JudgedQuantities judged = judgedQuantities(frame, build, bench, settings.today);
    MeasureReport report{.quantities = std::move(judged.quantities), .chains = std::move(judged.chains)};
    if (frame.lever) {
        report.play = playOf(frame, report.chains, judged.read.after, Occasion::After);
        report.playBefore = playOf(frame, report.chains, judged.read.before, Occasion::Before);
    }
    report.diagnosis = diagnose(frame, caseOf(frame, build, judged.read.after));
    report.selections = selectionsOf(frame, measuredValues(judged.read.after));
    report.parts = partVerdicts(frame, build, report.quantities);
    return report;
}

std::vector<MeasuredValue> measuredValues(const MeasureReport& report) {
    std::vector<MeasuredValue> values;
    for (const QuantityResult& each : report.quantities)
        if (each.after)
            values.push_back({each.quantity->id, each.after->value, each.after->expanded});
    return values;
}

bool isBroken(const MeasureReport& report) {
    return std::ranges::any_of(
               report.quantities,
               [](const QuantityResult& each) { return each.standing == Standing::Beyond; }) ||
           std::ranges::any_of(report.parts, &PartVerdict::open);
}

bool measuresHold(const Frame& /*frame*/, const MeasureReport& report) {
    return isBroken(report) || std::ranges::any_of(report.quantities, [](const QuantityResult& each) {
               return each.measurement->required && each.standing == Standing::NotRead;
           });
}

} // namespace gapwise
