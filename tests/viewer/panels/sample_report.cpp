#include "tests/viewer/panels/sample_report.h"

#include "models/chain/chain.h"

#include <algorithm>

namespace gapwise {

namespace {

Standing standingOf(double value, const Limits& limits) {
    if (limits.fresh.empty() && limits.service.empty())
        return Standing::NoLimit;
    if (!limits.service.holds(value))
        return Standing::Beyond;
    if (limits.fresh.holds(value))
        return Standing::Within;
    return limits.service.empty() ? Standing::Beyond : Standing::Between;
}

void addReading(QuantityResult& result, const MeasuredValue& measured) {
    result.after = Evaluated{.values = {measured.value},
                             .value = measured.value,
                             .judged = measured.value,
                             .expanded = measured.expanded};
    result.before = Evaluated{.values = {measured.value + 0.02},
                              .value = measured.value + 0.02,
                              .judged = measured.value + 0.02,
                              .expanded = measured.expanded};
    result.change = BeforeAndAfter{.difference = -0.02,
                                   .significant = 0.01,
                                   .compared = true,
                                   .outcome = BeforeAndAfter::Outcome::AsExpected,
                                   .words = "down by 0.020, as renewed thrust parts should bring"};
    result.standing = standingOf(measured.value, result.quantity->limits);
    result.words = "compared as printed";
}

std::vector<QuantityResult> quantitiesOf(const Frame& frame, std::span<const MeasuredValue> measured) {
    std::vector<QuantityResult> results;
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities) {
            QuantityResult result;
            result.measurement = &measurement;
            result.quantity = &quantity;
            const auto found = std::ranges::find(measured, quantity.id, &MeasuredValue::id);
            if (found != measured.end())
                addReading(result, *found);
            results.push_back(std::move(result));
        }
    return results;
}

void addPredictions(MeasureReport& report, const Frame& frame,
                    const std::map<QuantityId, DimensionValue>& values) {
    for (const Chain& chain : frame.chains)
        report.chains.push_back(predict(chain, values));
    for (QuantityResult& result : report.quantities)
        for (const Prediction& prediction : report.chains)
            if (prediction.chain == result.quantity->id)
                result.predicted = Predicted{.value = prediction.valueMm,
                                             .least = prediction.valueMm - prediction.rssMm,
                                             .most = prediction.valueMm + prediction.rssMm,
                                             .chain = prediction,
                                             .words = "from the parts"};
}

void addParts(MeasureReport& report, const Frame& frame) {
    for (const Part& part : frame.parts) {
        PartVerdict verdict{.part = part.id, .words = "its numbers lie where new parts have them"};
        for (const QuantityResult& result : report.quantities)
            if (result.quantity->part == part.id && result.after)
                verdict.because.push_back(result.quantity->id);
        if (verdict.because.empty())
            continue;
        verdict.worst = Standing::Within;
        report.parts.push_back(std::move(verdict));
    }
    if (report.parts.empty())
        return;
    PartVerdict& first = report.parts.front();
    first.worst = Standing::Between;
    first.open = true;
    first.words = "between new and limit: a named person decides, with a reason";
}

Diagnosis diagnosisOf(const MeasureReport& report, const Frame& frame) {
    Diagnosis diagnosis;
    for (const QuantityResult& result : report.quantities)
        if (result.after && result.predicted && result.predicted->chain)
            diagnosis.evidence.push_back(
                {.chain = result.quantity->id,
                 .predictedMm = result.predicted->value,
                 .measuredMm = result.after->value,
                 .expandedMm = 0.012,
                 .moved = std::abs(result.after->value - result.predicted->value) > 0.02});
    diagnosis.anythingMoved = std::ranges::any_of(diagnosis.evidence, &GapEvidence::moved);
    if (!diagnosis.anythingMoved || frame.changes.empty())
        return diagnosis;
    diagnosis.summary = "The axial clearance is larger than the parts say: likeliest a worn running face.";
    double likelihood = 0.61;
    for (const Change& change : frame.changes) {
        diagnosis.causes.push_back(
            {.change = &change,
             .name = change.name,
             .lengthMm = 0.085,
             .standardMm = 0.006,
             .misfit = 1.2,
             .likelihood = likelihood,
             .explains = {QuantityId{"c"}, QuantityId{"N_C"}},
             .why = "the nose depth toward the compressor moved and the other did not"});
        likelihood *= 0.4;
        if (diagnosis.causes.size() == 4)
            break;
    }
    diagnosis.unexplained = 0.02;
    diagnosis.explained = true;
    diagnosis.settles.push_back({.quantity = QuantityId{"h_A"},
                                 .method = "ball anvil in the track",
                                 .words =
                                     "collar A in its track with a ball anvil: 3.415 if it is worn, 3.500 "
                                     "if not"});
    return diagnosis;
}

} // namespace

MeasureReport sampleReport(const Frame& frame, std::span<const MeasuredValue> measured) {
    MeasureReport report;
    report.quantities = quantitiesOf(frame, measured);
    addPredictions(report, frame, dimensionValues(frame, measured));
    report.selections = selectionsOf(frame, measured);
    addParts(report, frame);
    report.diagnosis = diagnosisOf(report, frame);
    if (frame.lever)
        report.play = PlayResult{.compressorBand = {0.129, 0.156},
                                 .turbineBand = {0.135, 0.162},
                                 .compressorParts = 0.141,
                                 .turbineParts = 0.147,
                                 .agree = true,
                                 .words = "Both bearings are as the parts say: neither is worn."};
    return report;
}

} // namespace gapwise
