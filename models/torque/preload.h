#pragma once

#include "models/torque/strength.h"
#include "models/torque/thread.h"

#include <optional>

namespace gapwise {

/// Coefficients of friction while tightening.
struct Friction {
    double thread = 0.12; ///< µ between the flanks.
    double head = 0.12;   ///< µ under the head or nut that turns.
};

/// What resists the wrench.
struct ScrewJoint {
    MetricThread thread{};
    double bearingDiameterMm = 0.0; ///< Mean diameter of the rubbing ring under the head, D_Km.
    Friction friction{};
};

/// Where the torque goes. Newton-metres.
struct TorqueShares {
    double pitchNm = 0.0; ///< What stretches the screw.
    double threadNm = 0.0;
    double headNm = 0.0;

    double total() const { return pitchNm + threadNm + headNm; }
};

/// The mean diameter under a hexagon head of ISO 4014 over a medium clearance hole of ISO 273, from M5 to
/// M24; nothing for other sizes.
std::optional<double> hexagonHeadDiameterMm(double screwDiameterMm);

/// The long form of Motosh: T = F·(P/2π + µ_t·r_t/cos 30° + µ_b·r_b).
TorqueShares torqueShares(const ScrewJoint& joint, double forceKn);

/// The clamp force that a torque gives by the long form, kN.
double clampForceKn(const ScrewJoint& joint, double torqueNm);

/// VDI 2230: M_A = F_M·(0.16·P + 0.58·d₂·µ_G + D_Km/2·µ_K), N·m.
double vdiTorqueNm(const ScrewJoint& joint, double forceKn);

/// VDI 2230: F_M that with its torsion uses 90 % of R_p0.2, kN.
double vdiPreloadKn(PropertyClass property, const MetricThread& thread, double threadFriction);

/// VDI 2230: what is left of the intended preload in the worst case; the tightening factor α_A ≥ 1 is the
/// scatter of the way of tightening. kN.
double leastPreloadKn(double mostPreloadKn, double tighteningFactor);

/// ISO 16047: the one coefficient that explains torque and force, for thread and head alike.
double totalFriction(const ScrewJoint& joint, double torqueNm, double forceKn);

/// K of T = K·d·F.
double nutFactor(double diameterMm, double torqueNm, double forceKn);

/// F of T = K·d·F, kN.
double nutFactorForceKn(double nutFactor, double diameterMm, double torqueNm);

} // namespace gapwise
