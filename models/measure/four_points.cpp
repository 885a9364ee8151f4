#include "models/measure/four_points.h"

#include "models/gauging/four_point.h"
#include "models/measure/evaluate.h"
#include "models/measure/lever_of.h"
#include "models/measure/numbers.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

/// The most that either bearing may have: the smaller of the limits of both plays.
std::optional<double> playLimitOf(const Frame& frame) {
    std::optional<double> limit;
    for (const QuantityId& id : {frame.lever->compressorPlay, frame.lever->turbinePlay}) {
        const Chain* chain = frame.chain(id);
        if (chain && chain->window.most)
            limit = std::min(limit.value_or(*chain->window.most), *chain->window.most);
    }
    return limit;
}

void addParts(const Frame& frame, const FourPointPlan& plan, const PartPlays& parts, const Offset& offset,
              FourPointResult& result) {
    const Lever lever = leverOf(*frame.lever);
    const Plays plays{parts.compressor, parts.turbine};
    result.sag = restSagMm(lever, plays, plan.seenFrom, plan.outboardMm);
    const Offset casing = casingError(offset, result.sag);
    result.casing = eccentricityMm(casing);
    result.rock = rockAmplitudeMm(lever, plays, plan.seenFrom, plan.outboardMm);
    result.leftWhenRocked = leftWhenRockedMm(result.least, result.rock, result.sag);
    const Rocking rocking = rockingOutcome(result.leftWhenRocked, plays, playLimitOf(frame));
    result.words += fmt::format(" The resting rotor sags {}: the casing stands {} off. {}.",
                                numberWords(result.sag, 3, Unit::Millimetres),
                                numberWords(result.casing, 3, Unit::Millimetres),
                                rockingWords(rocking, result.leftWhenRocked));
}

std::string capital(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

} // namespace

FourPointResult fourPointResult(const Frame& frame, const Quantity& quantity, const Evaluated& read,
                                const std::optional<PartPlays>& plays) {
    assert(quantity.fourPoint);
    const FourPointPlan& plan = *quantity.fourPoint;
    const std::vector<double> gaps = pointMeans(quantity, read.values);
    assert(gaps.size() == 4);
    const FourPoint four = fourPointOf({gaps[0], gaps[1], gaps[2], gaps[3]}, plan.seenFrom);
    FourPointResult result{.seenFrom = plan.seenFrom,
                           .mean = four.meanMm,
                           .right = four.offset.rightMm,
                           .up = four.offset.upMm,
                           .eccentricity = four.eccentricityMm,
                           .directionDeg = four.direction ? four.direction->from(plan.seenFrom).value : 0.0,
                           .consistency = four.consistencyMm,
                           .least = *std::ranges::min_element(gaps),
                           .parts = plays.has_value() && frame.lever.has_value()};
    result.words = capital(fmt::format("the rotor stands {}.", offsetWords(four.offset, plan.seenFrom)));
    if (result.parts)
        addParts(frame, plan, *plays, four.offset, result);
    if (std::abs(four.consistencyMm) > plan.consistencyMost + kRounding)
        result.words += fmt::format(" 12 + 6 and 3 + 9 differ by {}: read again, or the casing is oval.",
                                    numberWords(std::abs(four.consistencyMm), 2, Unit::Millimetres));
    return result;
}

} // namespace gapwise
