#include "models/gauging/lever.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

/// Overhang of each dial over the span: p at the nose, q at the turbine end.
struct Overhang {
    double nose = 0.0;
    double turbine = 0.0;
};

Overhang overhangOf(const Lever& lever) {
    assert(lever.spanMm > 0.0);
    return {lever.noseMm / lever.spanMm, lever.turbineMm / lever.spanMm};
}

/// What a reading at this end is multiplied from, the play at both bearings being the same.
double equalPlayFactor(const Lever& lever, Side end) {
    const Overhang overhang = overhangOf(lever);
    return 1.0 + 2.0 * (end == Side::Compressor ? overhang.nose : overhang.turbine);
}

} // namespace

Errors leverErrors(const Lever& lever, std::string_view where) {
    Errors errors;
    const auto insist = [&](const char* name, double found, bool right, std::string allowed) {
        if (!std::isfinite(found) || !right)
            errors.push_back(
                {fmt::format("{}/{}", where, name), fmt::format("{}", found), std::move(allowed)});
    };
    const double half = lever.bearingLengthMm / 2.0;
    insist("span_mm", lever.spanMm, lever.spanMm > 0.0, "a length above 0 mm");
    insist("bearing_length_mm", lever.bearingLengthMm, half >= 0.0, "a length of 0 mm or more");
    if (!errors.empty())
        return errors;
    const std::string outboard =
        fmt::format("outboard of the bearing: {} mm or more from its mid-plane", half);
    insist("nose_mm", lever.noseMm, lever.noseMm >= half, outboard);
    insist("turbine_mm", lever.turbineMm, lever.turbineMm >= half, outboard);
    return errors;
}

EndReadings rockingReadings(const Lever& lever, const Plays& plays) {
    const auto [p, q] = overhangOf(lever);
    return {.noseMm = plays.compressorMm * (1.0 + p) + plays.turbineMm * p,
            .turbineMm = plays.turbineMm * (1.0 + q) + plays.compressorMm * q};
}

Plays playsFrom(const Lever& lever, const EndReadings& readings) {
    const auto [p, q] = overhangOf(lever);
    const double determinant = 1.0 + p + q;
    return {.compressorMm = (readings.noseMm * (1.0 + q) - readings.turbineMm * p) / determinant,
            .turbineMm = (readings.turbineMm * (1.0 + p) - readings.noseMm * q) / determinant};
}

Lever atBearingEdges(const Lever& lever) {
    const double half = lever.bearingLengthMm / 2.0;
    return {.spanMm = lever.spanMm + lever.bearingLengthMm,
            .noseMm = lever.noseMm - half,
            .turbineMm = lever.turbineMm - half,
            .bearingLengthMm = 0.0};
}

double equalLiftReadingMm(const Lever& lever, const Plays& plays, double inboardMm) {
    assert(inboardMm >= 0.0 && inboardMm <= lever.spanMm);
    return plays.compressorMm + (plays.turbineMm - plays.compressorMm) * inboardMm / lever.spanMm;
}

EndBands predictedBand(const Lever& lever, const Plays& plays) {
    const EndReadings edges = rockingReadings(atBearingEdges(lever), plays);
    const EndReadings middles = rockingReadings(lever, plays);
    return {.nose = bandOf(edges.noseMm, middles.noseMm),
            .turbine = bandOf(edges.turbineMm, middles.turbineMm)};
}

PlayBands separatedBand(const Lever& lever, const EndReadings& readings) {
    const Plays edges = playsFrom(atBearingEdges(lever), readings);
    const Plays middles = playsFrom(lever, readings);
    return {.compressor = bandOf(edges.compressorMm, middles.compressorMm),
            .turbine = bandOf(edges.turbineMm, middles.turbineMm)};
}

bool contradicts(const PlayBands& separated) {
    return separated.compressor.most < -kLengthRoundingMm || separated.turbine.most < -kLengthRoundingMm;
}

std::string playWords(const PlayBands& separated) {
    return fmt::format("compressor bearing {}, turbine bearing {}", bandWords(separated.compressor, 2),
                       bandWords(separated.turbine, 2));
}

Band equalPlayFor(const Lever& lever, Side end, double readingMm) {
    return bandOf(readingMm / equalPlayFactor(lever, end),
                  readingMm / equalPlayFactor(atBearingEdges(lever), end));
}

bool planesDiffer(double verticalMm, double horizontalMm) {
    assert(verticalMm > 0.0 && horizontalMm > 0.0);
    const double mean = (verticalMm + horizontalMm) / 2.0;
    return std::abs(verticalMm - horizontalMm) > 0.2 * mean + kLengthRoundingMm;
}

} // namespace gapwise
