#pragma once

#include "models/gauging/band.h"

#include <optional>
#include <string>
#include <string_view>

namespace gapwise {

/// An entry that looks like a slip is questioned, never refused: the person may be right.

/// What a typed number is expected to be, in the unit of the entry.
struct ExpectedEntry {
    double value = 0.0; ///< Drawing size, prediction or usual value.
    Band plausible{};   ///< What is taken without a question; holds the value.
};

/// The band from a third of a value to three times it, so that a slip by ten never passes. The value is above
/// 0.
ExpectedEntry expectedAround(double value);

/// The ways in which an entry goes wrong.
enum class Slip {
    TenTimes,
    HundredTimes,
    ThousandTimes, ///< Micrometres for millimetres.
    Tenth,
    Hundredth,
    Thousandth,
    InchesForMm, ///< The expected number over 25.4.
    MmForInches, ///< 25.4 times it.
    WrongSign,   ///< Right but for its sign.
    FarOff       ///< Implausible, and no slip explains it.
};

/// `ten times what is expected`, `read in inches`, … as they follow "it is".
std::string_view wordsFor(Slip slip);

/// What is asked about an entry.
struct EntryDoubt {
    Slip slip = Slip::FarOff;
    std::optional<double> suggestion{}; ///< What was perhaps meant, to a millionth; none for FarOff.
    std::string words{};                ///< `0.68 is ten times what is expected: did you mean 0.068?`
};

/// Nothing for a plausible entry; else the slip whose correction is plausible and nearest to what is
/// expected. The entry is finite.
std::optional<EntryDoubt> doubtOf(double entry, const ExpectedEntry& expected);

} // namespace gapwise
