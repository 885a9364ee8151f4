#include "models/torque/angle_window.h"

#include "models/torque/preload.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>
#include <numbers>

namespace gapwise {

double springForceKn(const ClampSpring& spring, double torqueNm) {
    return nutFactorForceKn(spring.torqueFactor, spring.diameterMm, torqueNm);
}

Degrees expectedAngle(const ClampSpring& spring, double snugNm, double finalNm) {
    assert(spring.pitchMm > 0.0 && spring.stiffnessKnPerMm > 0.0);
    const double growthKn = springForceKn(spring, finalNm) - springForceKn(spring, snugNm);
    return Degrees{growthKn / spring.stiffnessKnPerMm / spring.pitchMm * 360.0};
}

double stemStressMpa(double forceKn, double stemDiameterMm) {
    assert(stemDiameterMm > 0.0);
    return forceKn * 1000.0 / (std::numbers::pi / 4.0 * stemDiameterMm * stemDiameterMm);
}

std::string_view keyOf(AngleVerdict verdict) {
    switch (verdict) {
    case AngleVerdict::TooLittle: return "too_little";
    case AngleVerdict::Within: return "within";
    case AngleVerdict::TooMuch: return "too_much";
    }
    return "";
}

AngleVerdict judgeAngle(Degrees read, const AngleWindow& window) {
    if (read < window.least - kAngleRounding)
        return AngleVerdict::TooLittle;
    return read > window.most + kAngleRounding ? AngleVerdict::TooMuch : AngleVerdict::Within;
}

std::string_view meaningOf(AngleVerdict verdict) {
    switch (verdict) {
    case AngleVerdict::TooLittle:
        return "too little: the thread is dry or picking up, the face of the nut is scored, or the wheel is "
               "not "
               "home";
    case AngleVerdict::Within: return "in the window";
    case AngleVerdict::TooMuch:
        return "too much: something is still closing up (a chip, a collar on its fillet, a soft part), or "
               "the "
               "shaft is yielding";
    }
    return "";
}

std::string angleWords(Degrees read, const AngleWindow& window) {
    return fmt::format("{:.3g}° from snug to final, window {:.3g}° to {:.3g}°: {}", read.value,
                       window.least.value, window.most.value, meaningOf(judgeAngle(read, window)));
}

} // namespace gapwise
