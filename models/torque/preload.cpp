#include "models/torque/preload.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

/// Half the angle between the flanks.
const double kCosFlank = std::numbers::sqrt3 / 2.0;

struct HexagonHead {
    double screwMm = 0.0;
    double faceMm = 0.0; ///< d_w, product grade A.
    double holeMm = 0.0; ///< d_h, medium.
};

/// ISO 4014 and ISO 273.
constexpr std::array kHexagonHeads{
    HexagonHead{5.0, 6.88, 5.5},    HexagonHead{6.0, 8.88, 6.6},    HexagonHead{8.0, 11.63, 9.0},
    HexagonHead{10.0, 14.63, 11.0}, HexagonHead{12.0, 16.63, 13.5}, HexagonHead{14.0, 19.64, 15.5},
    HexagonHead{16.0, 22.49, 17.5}, HexagonHead{18.0, 25.34, 20.0}, HexagonHead{20.0, 28.19, 22.0},
    HexagonHead{22.0, 31.71, 24.0}, HexagonHead{24.0, 33.61, 26.0}};

bool isJoint(const ScrewJoint& joint) {
    return joint.thread.pitchMm > 0.0 && joint.bearingDiameterMm > 0.0 && joint.friction.thread >= 0.0 &&
           joint.friction.head >= 0.0;
}

} // namespace

std::optional<double> hexagonHeadDiameterMm(double screwDiameterMm) {
    const auto found = std::ranges::find(kHexagonHeads, screwDiameterMm, &HexagonHead::screwMm);
    if (found == kHexagonHeads.end())
        return std::nullopt;
    return (found->faceMm + found->holeMm) / 2.0;
}

// A kilonewton times a millimetre is a newton-metre.

TorqueShares torqueShares(const ScrewJoint& joint, double forceKn) {
    assert(isJoint(joint) && forceKn >= 0.0);
    const double flankRadiusMm = sizesOf(joint.thread).flankDiameterMm / 2.0;
    return {.pitchNm = forceKn * joint.thread.pitchMm / (2.0 * std::numbers::pi),
            .threadNm = forceKn * joint.friction.thread * flankRadiusMm / kCosFlank,
            .headNm = forceKn * joint.friction.head * joint.bearingDiameterMm / 2.0};
}

double clampForceKn(const ScrewJoint& joint, double torqueNm) {
    return torqueNm / torqueShares(joint, 1.0).total();
}

double vdiTorqueNm(const ScrewJoint& joint, double forceKn) {
    assert(isJoint(joint) && forceKn >= 0.0);
    return forceKn * (0.16 * joint.thread.pitchMm +
                      0.58 * sizesOf(joint.thread).flankDiameterMm * joint.friction.thread +
                      joint.bearingDiameterMm / 2.0 * joint.friction.head);
}

double vdiPreloadKn(PropertyClass property, const MetricThread& thread, double threadFriction) {
    assert(threadFriction >= 0.0);
    const ThreadSizes sizes = sizesOf(thread);
    const double stressDiameterMm = (sizes.flankDiameterMm + sizes.rootDiameterMm) / 2.0;
    const double torsion =
        1.5 * sizes.flankDiameterMm / stressDiameterMm *
        (thread.pitchMm / (std::numbers::pi * sizes.flankDiameterMm) + 1.155 * threadFriction);
    const double usableMpa = 0.9 * yieldStressMpa(property, thread.diameterMm);
    return usableMpa * sizes.stressAreaMm2 / std::sqrt(1.0 + 3.0 * torsion * torsion) / 1000.0;
}

double leastPreloadKn(double mostPreloadKn, double tighteningFactor) {
    assert(tighteningFactor >= 1.0);
    return mostPreloadKn / tighteningFactor;
}

double totalFriction(const ScrewJoint& joint, double torqueNm, double forceKn) {
    assert(forceKn > 0.0);
    return (torqueNm / forceKn - joint.thread.pitchMm / (2.0 * std::numbers::pi)) /
           (0.577 * sizesOf(joint.thread).flankDiameterMm + 0.5 * joint.bearingDiameterMm);
}

double nutFactor(double diameterMm, double torqueNm, double forceKn) {
    assert(diameterMm > 0.0 && forceKn > 0.0);
    return torqueNm / (diameterMm * forceKn);
}

double nutFactorForceKn(double nutFactor, double diameterMm, double torqueNm) {
    assert(nutFactor > 0.0 && diameterMm > 0.0);
    return torqueNm / (nutFactor * diameterMm);
}

} // namespace gapwise
