#pragma once

#include "geometry/base/result.h"
#include "geometry/datum/angle.h"

#include <optional>
#include <string>
#include <string_view>

namespace gapwise {

/// Which way a thread winds. Right-hand tightens clockwise for whoever faces the nut or the head.
enum class ThreadHand { Right, Left };

/// `right-hand` or `left-hand`.
std::string_view nameOf(ThreadHand hand);

/// An ISO metric thread (ISO 68-1).
struct MetricThread {
    double diameterMm = 0.0; ///< d, nominal.
    double pitchMm = 0.0;    ///< P.
    ThreadHand hand = ThreadHand::Right;

    bool operator==(const MetricThread&) const = default;
};

/// The pitch of the coarse series (ISO 261), or nothing where the series lacks the diameter.
std::optional<double> coarsePitchMm(double diameterMm);

/// Reads `M8` (coarse), `M8x1`, `M8×1.25`, and with a left hand `M8x1-LH`. Diameters from 1 to 300 mm, a
/// pitch of at most a quarter of the diameter: `M5x12` states a length. `where` names the option or file in
/// an error.
Result<MetricThread> parseThread(std::string_view text, std::string_view where);

/// `M8×1`, `M16×1.5-LH`; the pitch always stands there.
std::string nameOf(const MetricThread& thread);

/// Basic sizes (ISO 724) and what strength is reckoned with (ISO 898-1). Millimetres.
struct ThreadSizes {
    double flankDiameterMm = 0.0; ///< d₂, also of the friction in the thread.
    double minorDiameterMm = 0.0; ///< d₁ = D₁, of the nut.
    double rootDiameterMm = 0.0;  ///< d₃, of the screw.
    double overlapMm = 0.0;       ///< H₁ = 5/8 H, flanks in touch.
    double depthMm = 0.0;         ///< h₃ = 17/24 H, of the screw's thread.
    double rootRadiusMm = 0.0;    ///< R = H/6.
    double stressAreaMm2 = 0.0;   ///< Aₛ = π/4·((d₂+d₃)/2)², not rounded.
    Degrees lead{0.0};            ///< φ = atan(P/(π·d₂)).
};
ThreadSizes sizesOf(const MetricThread& thread);

/// How far a nut that turns by `turn` (by the right-hand rule about an axis) travels along that axis: a
/// right-hand thread forward, a left-hand one back.
double axialTravelMm(const MetricThread& thread, Degrees turn);

} // namespace gapwise
