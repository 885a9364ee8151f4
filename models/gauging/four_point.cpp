#include "models/gauging/four_point.h"

#include "geometry/datum/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <string_view>

namespace gapwise {

namespace {

/// The play of the bearing at that end, and of the one beyond it.
struct NearAndFar {
    double nearMm = 0.0;
    double farMm = 0.0;
};

NearAndFar playsSeenFrom(const Plays& plays, Side side) {
    if (side == Side::Compressor)
        return {plays.compressorMm, plays.turbineMm};
    return {plays.turbineMm, plays.compressorMm};
}

/// The quarter clock that a direction is nearest to; a half-way direction belongs to the later one.
double nearestQuarter(Degrees seen) {
    return std::floor((seen.value + 45.0) / 90.0) * 90.0;
}

std::string_view quarterWord(double quarter) {
    constexpr std::array<std::string_view, 4> kWords{"high", "to the right", "low", "to the left"};
    return kWords.at(static_cast<std::size_t>(quarter / 90.0) % 4);
}

} // namespace

double leastOf(const FourGaps& gaps) {
    return std::min({gaps.at12Mm, gaps.at3Mm, gaps.at6Mm, gaps.at9Mm});
}

double eccentricityMm(const Offset& offset) {
    return std::hypot(offset.rightMm, offset.upMm);
}

std::optional<Clock> directionOf(const Offset& offset, Side seenFrom) {
    if (eccentricityMm(offset) < kLeastEccentricityMm)
        return std::nullopt;
    return Clock::seenFrom(seenFrom, degreesFromRadians(std::atan2(offset.rightMm, offset.upMm)));
}

DatumOffset inDatum(const Offset& offset, Side seenFrom) {
    return {.xMm = signOf(seenFrom) * offset.rightMm, .yMm = offset.upMm};
}

FourPoint fourPointOf(const FourGaps& gaps, Side seenFrom) {
    const Offset offset{.rightMm = (gaps.at9Mm - gaps.at3Mm) / 2.0, .upMm = (gaps.at6Mm - gaps.at12Mm) / 2.0};
    const double upright = gaps.at12Mm + gaps.at6Mm;
    const double level = gaps.at3Mm + gaps.at9Mm;
    const double mean = (upright + level) / 4.0;
    return {.seenFrom = seenFrom,
            .meanMm = mean,
            .offset = offset,
            .eccentricityMm = eccentricityMm(offset),
            .direction = directionOf(offset, seenFrom),
            .consistencyMm = upright - level,
            .leastMm = mean - eccentricityMm(offset)};
}

std::string offsetWords(const Offset& offset, Side seenFrom) {
    const std::optional<Clock> direction = directionOf(offset, seenFrom);
    if (!direction)
        return "centred";
    const Degrees seen = direction->from(seenFrom);
    const double quarter = nearestQuarter(seen);
    const std::string at = clockSeenFrom(wrapped(Degrees{quarter}), seenFrom);
    const double past = std::round(seen.value - quarter);
    const std::string start = fmt::format("{:.3f} mm {}, ", eccentricityMm(offset), quarterWord(quarter));
    if (past == 0.0)
        return fmt::format("{}at {}", start, at);
    return fmt::format("{}{:.0f}° {} {}", start, std::abs(past), past > 0.0 ? "past" : "before", at);
}

double restSagMm(const Lever& lever, const Plays& plays, Side side, double outboardMm) {
    assert(lever.spanMm > 0.0);
    const auto [nearMm, farMm] = playsSeenFrom(plays, side);
    return nearMm / 2.0 + (nearMm - farMm) / 2.0 * outboardMm / lever.spanMm;
}

Offset casingError(const Offset& read, double sagMm) {
    return {.rightMm = read.rightMm, .upMm = read.upMm + sagMm};
}

double rockAmplitudeMm(const Lever& lever, const Plays& plays, Side side, double outboardMm) {
    assert(lever.spanMm > 0.0);
    const auto [nearMm, farMm] = playsSeenFrom(plays, side);
    const double overhang = outboardMm / lever.spanMm;
    return (nearMm * (1.0 + overhang) + farMm * overhang) / 2.0;
}

double leftWhenRockedMm(double leastOfFourMm, double amplitudeMm, double sagMm) {
    return leastOfFourMm - (amplitudeMm - sagMm);
}

Rocking rockingOutcome(double leftMm, const Plays& plays, std::optional<double> playLimitMm) {
    if (leftMm > kLengthRoundingMm)
        return Rocking::Clear;
    const double greatest = std::max(plays.compressorMm, plays.turbineMm);
    const bool inside = !playLimitMm || greatest <= *playLimitMm + kLengthRoundingMm;
    return inside ? Rocking::Remark : Rocking::BeyondLimit;
}

std::string rockingWords(Rocking outcome, double leftMm) {
    switch (outcome) {
    case Rocking::Clear: return fmt::format("{:.2f} mm is left when it is rocked by hand", leftMm);
    case Rocking::Remark:
        return "it may touch when it is rocked by hand: with plays inside their limit a remark, not a rub";
    case Rocking::BeyondLimit:
        return "it may touch when it is rocked by hand, and a play is beyond its limit: look at the bearings";
    }
    return "";
}

} // namespace gapwise
