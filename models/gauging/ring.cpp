#include "models/gauging/ring.h"

#include <algorithm>
#include <cassert>
#include <numbers>

namespace gapwise {

namespace {

double ringFactor(const RingHeat& heat) {
    return 1.0 + heat.ringPerK * heat.ringRiseK;
}

double boreFactor(const RingHeat& heat) {
    return 1.0 + heat.borePerK * heat.boreRiseK;
}

double roundMm(const RingHeat& heat) {
    assert(heat.boreMm > 0.0);
    return std::numbers::pi * heat.boreMm;
}

} // namespace

double sideClearanceMm(double grooveMm, double ringMm) {
    return grooveMm - ringMm;
}

Band sideClearance(const Band& grooveMm, const Band& ringMm) {
    return {grooveMm.least - ringMm.most, grooveMm.most - ringMm.least};
}

double flareMm(double atRimMm, double atRootMm) {
    return atRimMm - atRootMm;
}

double gapGrowthMm(double boreGrowthMm) {
    return std::numbers::pi * boreGrowthMm;
}

double hotGapMm(const RingHeat& heat) {
    const double round = roundMm(heat);
    return round * boreFactor(heat) - (round - heat.coldGapMm) * ringFactor(heat);
}

double hotGapFirstOrderMm(const RingHeat& heat) {
    return heat.coldGapMm + roundMm(heat) * (heat.borePerK * heat.boreRiseK - heat.ringPerK * heat.ringRiseK);
}

bool endsButt(const RingHeat& heat) {
    return hotGapMm(heat) <= kLengthRoundingMm;
}

double coldGapForMm(const RingHeat& heat, double hotGapMm) {
    const double round = roundMm(heat);
    return round - (round * boreFactor(heat) - hotGapMm) / ringFactor(heat);
}

bool leaksThrough(JointForm joint, double gapMm, double overlapMm) {
    if (gapMm <= kLengthRoundingMm)
        return false;
    return joint == JointForm::Straight || overlapMm <= gapMm + kLengthRoundingMm;
}

double leakAreaMm2(JointForm joint, double gapMm, double overlapMm, double radialMm) {
    return leaksThrough(joint, gapMm, overlapMm) ? gapMm * radialMm : 0.0;
}

} // namespace gapwise
