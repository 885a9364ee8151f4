#include "models/measure/judged_quantities.h"

#include "models/gauging/ring.h"
#include "models/gauging/unbalance.h"
#include "models/measure/case_of.h"
#include "models/measure/compare.h"
#include "models/measure/expect.h"
#include "models/measure/four_points.h"
#include "models/measure/judge.h"
#include "models/measure/numbers.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

UnbalanceResult unbalanceOf(const UnbalancePlan& plan, const Evaluated& read) {
    const std::size_t planes = read.values.size() >= 2 ? 2 : 1;
    UnbalanceResult result{.permissible = permissibleUnbalanceGmm(plan.grade, plan.massKg, plan.speedRpm)};
    double sums[2] = {0.0, 0.0};
    for (std::size_t i = 0; i < read.values.size(); ++i)
        sums[i % planes] += read.values[i];
    const double rounds = static_cast<double>(read.values.size()) / static_cast<double>(planes);
    result.compressor = sums[0] / rounds;
    result.turbine = sums[1] / rounds;
    const Result<PlaneShares> shares = splitOverPlanes(
        result.permissible,
        {.centreMm = plan.centreMm, .aMm = plan.compressorPlaneMm, .bMm = plan.turbinePlaneMm}, "unbalance");
    result.split = shares && planes == 2;
    if (result.split) {
        result.compressorShare = shares->aGmm;
        result.turbineShare = shares->bGmm;
    }
    return result;
}

double hotGapOf(const RingGapPlan& plan, const Evaluated& read) {
    return hotGapMm({.boreMm = plan.boreMm,
                     .coldGapMm = read.value,
                     .ringPerK = plan.ringPerK,
                     .borePerK = plan.borePerK,
                     .ringRiseK = plan.ringRiseK,
                     .boreRiseK = plan.boreRiseK});
}

/// All quantities of one build, each with what the others say of it.
class Judging {
public:
    Judging(const Frame& frame, const Build& build, const Bench& bench, std::string_view today)
        : frame_{frame}, build_{build}, judged_{.read = allRead(frame, build, bench, today)} {}

    JudgedQuantities judged() && {
        const std::map<QuantityId, DimensionValue> values =
            dimensionValues(frame_, measuredValues(judged_.read.after));
        for (const Chain& chain : frame_.chains)
            judged_.chains.push_back(predict(chain, values));
        for (const Measurement& measurement : frame_.measurements)
            for (const Quantity& quantity : measurement.quantities)
                judged_.quantities.push_back(resultOf(measurement, quantity));
        return std::move(judged_);
    }

private:
    QuantityResult resultOf(const Measurement& measurement, const Quantity& quantity) const {
        QuantityResult result;
        result.measurement = &measurement;
        result.quantity = &quantity;
        result.before = valueIn(judged_.read.before, quantity.id);
        result.after = valueIn(judged_.read.after, quantity.id);
        if (const auto earlier = judged_.read.earlier.find(quantity.id);
            earlier != judged_.read.earlier.end())
            result.earlier = earlier->second;
        result.predicted = predictedFor(frame_, quantity, judged_.chains);
        addPlans(quantity, result);
        const Judgement judgement =
            result.after ? judge(result, *result.after) : notRead(measurement, quantity);
        result.standing = judgement.standing;
        result.close = judgement.close;
        result.limit = judgement.limit;
        result.words = judgement.words;
        if (result.before && result.after)
            result.change = compareReadings(frame_, build_, result);
        addPredictionWords(result);
        return result;
    }

    void addPlans(const Quantity& quantity, QuantityResult& result) const {
        if (quantity.fourPoint && result.after)
            result.fourPoint =
                fourPointResult(frame_, quantity, *result.after, partPlays(frame_, judged_.chains));
        if (quantity.fourPoint && result.before)
            result.fourPointBefore = fourPointResult(frame_, quantity, *result.before, std::nullopt);
        if (quantity.unbalance && result.after)
            result.unbalance = unbalanceOf(*quantity.unbalance, *result.after);
        if (quantity.ringGap && result.after)
            result.hotGap = hotGapOf(*quantity.ringGap, *result.after);
    }

    /// A reading that the parts do not explain points to the assembly or to a part reading; one that they
    /// explain and that is out points to the parts.
    static void addPredictionWords(QuantityResult& result) {
        if (!result.after || !result.predicted)
            return;
        const Unit unit = result.quantity->unit;
        const Predicted& predicted = *result.predicted;
        const double apart = result.after->value - predicted.value;
        result.disagrees = disagrees(*result.after, predicted, unit);
        if (result.disagrees)
            result.words +=
                fmt::format(" {} {} than the parts give ({}): the assembly is not right, or a part "
                            "was misread.",
                            numberWords(std::abs(apart), 3, unit), apart > 0.0 ? "more" : "less",
                            numberWords(predicted.value, 3, unit));
        else if (result.standing == Standing::Beyond && predicted.chain)
            result.words +=
                fmt::format(" The parts give {}: it is the parts.", numberWords(predicted.value, 3, unit));
        if (result.disagrees && result.change &&
            result.change->outcome == BeforeAndAfter::Outcome::AsExpected)
            addWhatCameBack(result, apart);
    }

    /// What was renewed brought a part of it back only: something else wore too.
    static void addWhatCameBack(QuantityResult& result, double apart) {
        const double was = result.before->value - result.predicted->value;
        if (was * apart <= 0.0 || std::abs(was) <= std::abs(apart))
            return;
        result.change->words +=
            fmt::format(" Only {} of {} came back: what else is worn?", plainNumber(std::abs(was - apart), 3),
                        numberWords(std::abs(was), 3, result.quantity->unit));
    }

    const Frame& frame_;
    const Build& build_;
    JudgedQuantities judged_;
};

} // namespace

std::optional<Evaluated> valueIn(const ReadValues& read, const QuantityId& id) {
    const auto found = read.find(id);
    return found == read.end() ? std::nullopt : std::optional{found->second};
}

JudgedQuantities judgedQuantities(const Frame& frame, const Build& build, const Bench& bench,
                                  std::string_view today) {
    return Judging{frame, build, bench, today}.judged();
}

} // namespace gapwise
