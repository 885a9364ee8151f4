#include "models/gauging/plausible.h"

#include <fmt/format.h>

#include <array>
#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

/// An entry is what was meant times this.
struct Factor {
    Slip slip = Slip::FarOff;
    double times = 1.0;
};

constexpr std::array kFactors{Factor{Slip::TenTimes, 10.0},          Factor{Slip::Tenth, 0.1},
                              Factor{Slip::HundredTimes, 100.0},     Factor{Slip::Hundredth, 0.01},
                              Factor{Slip::ThousandTimes, 1000.0},   Factor{Slip::Thousandth, 0.001},
                              Factor{Slip::InchesForMm, 1.0 / 25.4}, Factor{Slip::MmForInches, 25.4},
                              Factor{Slip::WrongSign, -1.0}};

/// Free of the noise of a division: 0.68/10 is 0.068.
double toAMillionth(double value) {
    return std::round(value * 1e6) / 1e6;
}

EntryDoubt doubt(double entry, const ExpectedEntry& expected, Slip slip, std::optional<double> suggestion) {
    if (suggestion)
        return {slip, suggestion,
                fmt::format("{:.7g} is {}: did you mean {:.7g}?", entry, wordsFor(slip), *suggestion)};
    return {slip, std::nullopt,
            fmt::format("{:.7g} is {}, {:.7g} to {:.7g}: is it right?", entry, wordsFor(slip),
                        expected.plausible.least, expected.plausible.most)};
}

} // namespace

ExpectedEntry expectedAround(double value) {
    assert(value > 0.0);
    return {value, {value / 3.0, value * 3.0}};
}

std::string_view wordsFor(Slip slip) {
    switch (slip) {
    case Slip::TenTimes: return "ten times what is expected";
    case Slip::HundredTimes: return "a hundred times what is expected";
    case Slip::ThousandTimes: return "a thousand times what is expected";
    case Slip::Tenth: return "a tenth of what is expected";
    case Slip::Hundredth: return "a hundredth of what is expected";
    case Slip::Thousandth: return "a thousandth of what is expected";
    case Slip::InchesForMm: return "what is expected in inches";
    case Slip::MmForInches: return "25.4 times what is expected";
    case Slip::WrongSign: return "of the other sign than is expected";
    case Slip::FarOff: return "far from what is expected";
    }
    return "";
}

std::optional<EntryDoubt> doubtOf(double entry, const ExpectedEntry& expected) {
    assert(std::isfinite(entry));
    if (holds(expected.plausible, entry))
        return std::nullopt;
    EntryDoubt best = doubt(entry, expected, Slip::FarOff, std::nullopt);
    for (const auto& [slip, times] : kFactors) {
        const double meant = toAMillionth(entry / times);
        if (!holds(expected.plausible, meant))
            continue;
        const double off = std::abs(meant - expected.value);
        if (!best.suggestion || off < std::abs(*best.suggestion - expected.value))
            best = doubt(entry, expected, slip, meant);
    }
    return best;
}

} // namespace gapwise
