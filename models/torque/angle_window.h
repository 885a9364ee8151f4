#pragma once

#include "geometry/base/result.h"
#include "geometry/datum/angle.h"

#include <string>
#include <string_view>

namespace gapwise {

/// A nut on a shaft that it stretches, as one spring: the clamp force is T/(K·d), and grows with the angle by
/// pitch and stiffness.
struct ClampSpring {
    double torqueFactor = 0.16;    ///< K of T = K·d·F.
    double diameterMm = 0.0;       ///< d of the thread.
    double pitchMm = 0.0;          ///< P of the thread.
    double stiffnessKnPerMm = 0.0; ///< Of shaft and clamped parts together.
};

/// kN.
double springForceKn(const ClampSpring& spring, double torqueNm);

/// The angle by which the nut turns while the torque grows from snug to final.
Degrees expectedAngle(const ClampSpring& spring, double snugNm, double finalNm);

/// Tension in a round stem of this diameter, MPa.
double stemStressMpa(double forceKn, double stemDiameterMm);

/// The angle from snug to final within which the final torque must arrive.
struct AngleWindow {
    Degrees least{0.0};
    Degrees most{0.0};
};

/// What an angle tells that belongs to the right torque.
enum class AngleVerdict { TooLittle, Within, TooMuch };

/// `too_little`, `within` or `too_much`, as in files.
std::string_view keyOf(AngleVerdict verdict);

/// The boundary of the window is within.
AngleVerdict judgeAngle(Degrees read, const AngleWindow& window);

/// What it means in the trade: `the thread is dry or picking up, …`; within, that the nut came down as it
/// should.
std::string_view meaningOf(AngleVerdict verdict);

/// `19° from snug to final, window 12° to 28°: …`.
std::string angleWords(Degrees read, const AngleWindow& window);

} // namespace gapwise
