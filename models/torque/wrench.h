#pragma once

#include "geometry/base/result.h"
#include "geometry/datum/angle.h"

#include <array>
#include <optional>
#include <string>

namespace gapwise {

/// A wrench with an adapter that carries the drive aside (a crowfoot, an open-ended head). A socket extension
/// in line with the drive changes nothing: 0 mm.
struct Adapter {
    double wrenchMm = 0.0;  ///< L: from the middle of the hand's grip to the wrench's own drive.
    double adapterMm = 0.0; ///< E: from that drive to the middle of the fastener.
    Degrees angle{0.0};     ///< α between them: 0 straight out, 90 needs no correction, 180 folded back.
};

/// What the wrench must be set to so that the fastener gets `targetNm`: M·L/(L + E·cos α). Errors name
/// `target`, `length`, `adapter` and `angle`; the geometry has no solution where L + E·cos α is not above 0.
Result<double> wrenchSettingNm(double targetNm, const Adapter& adapter);

/// What the fastener gets from a wrench that is set to `settingNm`; errors likewise, of `setting`.
Result<double> appliedTorqueNm(double settingNm, const Adapter& adapter);

/// Least and most that a wrench can be set to.
struct WrenchRange {
    std::optional<double> leastNm{};
    std::optional<double> mostNm{};
};

/// Errors, of `wrench-min` and `wrench-max`, of a range that no wrench has; none where it is in order.
Errors rangeErrors(const WrenchRange& range);

/// The share of the maximum below which a wrench is not calibrated (ISO 6789).
inline constexpr double kLeastCheckedShare = 0.2;

/// The torques at which ISO 6789 checks a wrench: 20, 60 and 100 % of its maximum.
std::array<double, 3> checkPointsNm(double mostNm);

/// Permissible deviation of an adjustable wrench (ISO 6789, type II class A), as a share of what is set. The
/// maximum of the tool decides, not the setting: 0.04 above 10 N·m, 0.06 up to there.
double permissibleDeviation(double mostNm);

/// The coarsest step that an electronic wrench may show at a reading: a quarter of the permissible deviation.
double coarsestResolutionNm(double readingNm, double mostNm);

/// A setting on a certain wrench.
struct WrenchUse {
    double deviationNm = 0.0; ///< Permissible, either way.
    bool belowCheckPoints =
        false; ///< Under 20 % of the maximum, where nothing says how well the wrench keeps.
};

/// Whether the wrench can be set so: an error, of `setting`, where it lies outside the range. The range must
/// have a maximum and no rangeErrors.
Result<WrenchUse> useOfWrench(double settingNm, const WrenchRange& range);

} // namespace gapwise
