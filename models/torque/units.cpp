#include "models/torque/units.h"

#include "models/torque/figures.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>
#include <span>

namespace gapwise {

namespace {

constexpr double kFootM = 0.3048;
constexpr double kInchM = 0.0254;
constexpr double kPoundForceN = 4.4482216152605;
constexpr double kKilogramForceN = 9.80665;

constexpr const char* kAllowedUnits =
    "N·m (or N.m, Nm), lbf·ft (lbf.ft, ft-lb), lbf·in (lbf.in, in-lb), kgf·m "
    "(kgf.m) or kgf·cm (kgf.cm)";

/// A force and a length, in the order in which they are written.
struct Spelling {
    std::string_view first{};
    std::string_view second{};
    TorqueUnit unit = TorqueUnit::NewtonMetre;
};

constexpr std::array kSpellings{
    Spelling{"N", "m", TorqueUnit::NewtonMetre},
    Spelling{"lbf", "ft", TorqueUnit::PoundForceFoot},
    Spelling{"lb", "ft", TorqueUnit::PoundForceFoot},
    Spelling{"ft", "lbf", TorqueUnit::PoundForceFoot},
    Spelling{"ft", "lb", TorqueUnit::PoundForceFoot},
    Spelling{"lbf", "in", TorqueUnit::PoundForceInch},
    Spelling{"lb", "in", TorqueUnit::PoundForceInch},
    Spelling{"in", "lbf", TorqueUnit::PoundForceInch},
    Spelling{"in", "lb", TorqueUnit::PoundForceInch},
    Spelling{"kgf", "m", TorqueUnit::KilogramForceMetre},
    Spelling{"kg", "m", TorqueUnit::KilogramForceMetre},
    Spelling{"kgf", "cm", TorqueUnit::KilogramForceCentimetre},
    Spelling{"kg", "cm", TorqueUnit::KilogramForceCentimetre},
};

/// What may stand between: the raised dots of print, and what keyboards have.
constexpr std::array<std::string_view, 7> kBetween{"·", "⋅", ".", "*", "-", " ", ""};

bool isSpelt(std::string_view text, const Spelling& spelling) {
    if (!text.starts_with(spelling.first))
        return false;
    text.remove_prefix(spelling.first.size());
    if (!text.ends_with(spelling.second))
        return false;
    text.remove_suffix(spelling.second.size());
    return std::ranges::find(kBetween, text) != kBetween.end();
}

std::optional<TorqueUnit> unitSpelt(std::string_view text) {
    for (const Spelling& spelling : kSpellings)
        if (isSpelt(text, spelling))
            return spelling.unit;
    return std::nullopt;
}

/// A number at the start of a text, and what follows it less one blank.
struct NumberAndRest {
    std::optional<double> number{};
    std::string_view rest{};
};

NumberAndRest numberAndRest(std::string_view text) {
    double number = 0.0;
    const char* const end = text.data() + text.size();
    const auto [stop, code] = std::from_chars(text.data(), end, number);
    if (code != std::errc{})
        return {};
    text.remove_prefix(static_cast<std::size_t>(stop - text.data()));
    if (text.starts_with(' ') && text.size() > 1)
        text.remove_prefix(1);
    return {number, text};
}

/// Where `bare` holds a unit, it is that of a number without one.
Result<StatedTorque> parseStated(std::string_view text, std::string_view where,
                                 std::optional<TorqueUnit> bare) {
    const NumberAndRest parts = numberAndRest(text);
    const Error refused{
        .where = std::string{where},
        .found = fmt::format("\"{}\"", text),
        .allowed = fmt::format("a torque from 0.000001 N·m to 1000000 N·m, its unit {}", kAllowedUnits)};
    if (!parts.number)
        return refused;
    const std::optional<TorqueUnit> unit = parts.rest.empty() ? bare : unitSpelt(parts.rest);
    if (!unit)
        return refused;
    const StatedTorque torque{*parts.number, *unit};
    // A comparison with not-a-number is false.
    if (torque.newtonMetres() >= kLeastTorqueNm && torque.newtonMetres() <= kMostTorqueNm)
        return torque;
    return refused;
}

} // namespace

double newtonMetresIn(TorqueUnit unit) {
    switch (unit) {
    case TorqueUnit::NewtonMetre: return 1.0;
    case TorqueUnit::PoundForceFoot: return kPoundForceN * kFootM;
    case TorqueUnit::PoundForceInch: return kPoundForceN * kInchM;
    case TorqueUnit::KilogramForceMetre: return kKilogramForceN;
    case TorqueUnit::KilogramForceCentimetre: return kKilogramForceN / 100.0;
    }
    return 1.0;
}

double toNewtonMetres(double value, TorqueUnit unit) {
    return value * newtonMetresIn(unit);
}

double fromNewtonMetres(double newtonMetres, TorqueUnit unit) {
    return newtonMetres / newtonMetresIn(unit);
}

std::string_view nameOf(TorqueUnit unit) {
    switch (unit) {
    case TorqueUnit::NewtonMetre: return "N·m";
    case TorqueUnit::PoundForceFoot: return "lbf·ft";
    case TorqueUnit::PoundForceInch: return "lbf·in";
    case TorqueUnit::KilogramForceMetre: return "kgf·m";
    case TorqueUnit::KilogramForceCentimetre: return "kgf·cm";
    }
    return "";
}

std::string_view typedNameOf(TorqueUnit unit) {
    switch (unit) {
    case TorqueUnit::NewtonMetre: return "N.m";
    case TorqueUnit::PoundForceFoot: return "lbf.ft";
    case TorqueUnit::PoundForceInch: return "lbf.in";
    case TorqueUnit::KilogramForceMetre: return "kgf.m";
    case TorqueUnit::KilogramForceCentimetre: return "kgf.cm";
    }
    return "";
}

Result<TorqueUnit> parseTorqueUnit(std::string_view text, std::string_view where) {
    if (const std::optional<TorqueUnit> unit = unitSpelt(text))
        return *unit;
    return Error{.where = std::string{where}, .found = fmt::format("\"{}\"", text), .allowed = kAllowedUnits};
}

Result<StatedTorque> parseTorque(std::string_view text, std::string_view where) {
    return parseStated(text, where, std::nullopt);
}

Result<StatedTorque> parseTorqueOrNewtonMetres(std::string_view text, std::string_view where) {
    return parseStated(text, where, TorqueUnit::NewtonMetre);
}

std::string torqueWords(double newtonMetres, TorqueUnit unit, int figures) {
    return fmt::format("{} {}", withFigures(fromNewtonMetres(newtonMetres, unit), figures), nameOf(unit));
}

} // namespace gapwise
