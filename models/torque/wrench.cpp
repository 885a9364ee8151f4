#include "models/torque/wrench.h"

#include "models/torque/figures.h"
#include "models/torque/units.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

/// ISO 6789: the larger tools are held to the tighter class.
constexpr double kSmallToolNm = 10.0;

/// Not so near to nothing that the setting would be no torque any more.
constexpr double kLeastShare = 1e-9;

std::string inUnit(double value, const char* unit) {
    return fmt::format("{} {}", value, unit);
}

void refuseTorque(double torqueNm, const char* where, Errors& errors) {
    if (!(torqueNm > 0.0 && torqueNm <= kMostTorqueNm))
        errors.push_back({where, inUnit(torqueNm, "N·m"), "a torque above 0 N·m, up to 1000000 N·m"});
}

/// (L + E·cos α)/L, how much more than its setting the wrench gives; or what is wrong.
Result<double> gain(const Adapter& adapter, Errors errors) {
    if (!(adapter.wrenchMm > 0.0) || !std::isfinite(adapter.wrenchMm))
        errors.push_back(
            {"length", inUnit(adapter.wrenchMm, "mm"), "a length above 0 mm, from grip to drive"});
    if (!(adapter.adapterMm >= 0.0) || !std::isfinite(adapter.adapterMm))
        errors.push_back(
            {"adapter", inUnit(adapter.adapterMm, "mm"), "0 mm or more, from the drive to the fastener"});
    if (!std::isfinite(adapter.angle.value))
        errors.push_back({"angle", inUnit(adapter.angle.value, "°"), "degrees between adapter and wrench"});
    if (!errors.empty())
        return errors;
    const double share = 1.0 + adapter.adapterMm * std::cos(radians(adapter.angle)) / adapter.wrenchMm;
    if (share > kLeastShare && std::isfinite(share))
        return share;
    return Error{.where = "adapter",
                 .found = fmt::format("{} mm folded back at {}° over a wrench of {} mm", adapter.adapterMm,
                                      adapter.angle.value, adapter.wrenchMm),
                 .allowed = "an adapter that leaves a lever: length + adapter × cos(angle) above 0 mm"};
}

} // namespace

Result<double> wrenchSettingNm(double targetNm, const Adapter& adapter) {
    Errors errors;
    refuseTorque(targetNm, "target", errors);
    const Result<double> more = gain(adapter, errors);
    if (!more)
        return more.errors();
    return targetNm / *more;
}

Result<double> appliedTorqueNm(double settingNm, const Adapter& adapter) {
    Errors errors;
    refuseTorque(settingNm, "setting", errors);
    const Result<double> more = gain(adapter, errors);
    if (!more)
        return more.errors();
    return settingNm * *more;
}

Errors rangeErrors(const WrenchRange& range) {
    Errors errors;
    if (range.leastNm)
        refuseTorque(*range.leastNm, "wrench-min", errors);
    if (range.mostNm)
        refuseTorque(*range.mostNm, "wrench-max", errors);
    if (!range.leastNm)
        return errors;
    const double leastNm = *range.leastNm;
    if (!range.mostNm)
        errors.push_back({"wrench-min", "no maximum", "only with the wrench's maximum"});
    else if (const double mostNm = *range.mostNm; errors.empty() && leastNm >= mostNm)
        errors.push_back({"wrench-min", torqueWords(leastNm),
                          fmt::format("less than the maximum, {}", torqueWords(mostNm))});
    return errors;
}

std::array<double, 3> checkPointsNm(double mostNm) {
    return {kLeastCheckedShare * mostNm, 0.6 * mostNm, mostNm};
}

double permissibleDeviation(double mostNm) {
    return mostNm > kSmallToolNm ? 0.04 : 0.06;
}

double coarsestResolutionNm(double readingNm, double mostNm) {
    return permissibleDeviation(mostNm) * readingNm / 4.0;
}

Result<WrenchUse> useOfWrench(double settingNm, const WrenchRange& range) {
    assert(range.mostNm && rangeErrors(range).empty());
    const double leastNm = range.leastNm.value_or(0.0);
    const double mostNm = range.mostNm.value_or(kMostTorqueNm);
    if (settingNm >= leastNm && settingNm <= mostNm)
        return WrenchUse{.deviationNm = permissibleDeviation(mostNm) * settingNm,
                         .belowCheckPoints = settingNm < kLeastCheckedShare * mostNm};
    const std::string from = range.leastNm ? torqueWords(leastNm) + " to" : "up to";
    return Error{.where = "setting",
                 .found = torqueWords(settingNm, TorqueUnit::NewtonMetre, 5),
                 .allowed = fmt::format("what this wrench can be set to, {} {}", from, torqueWords(mostNm))};
}

} // namespace gapwise
