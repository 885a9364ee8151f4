#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace gapwise {

/// Lengths are stated at this temperature, °C (ISO 1).
inline constexpr double kReferenceC = 20.0;

/// How much a length grows when it gets warmer by so many kelvins, mm: L·α·ΔT.
double growthMm(double lengthMm, double perK, double riseK);

/// A length that was read warm or cold.
struct WarmReading {
    double readMm = 0.0;
    double partC = kReferenceC;  ///< Temperature of the part.
    double partPerK = 0.0;       ///< Its linear expansion, 1/K.
    double gaugeC = kReferenceC; ///< Temperature of what it was read with: gauge, setting ring or scale.
    double gaugePerK = 0.0;
};

/// The length at 20 °C, mm. A warm part reads too long, a warm gauge too short: a part and a gauge of one
/// material at one temperature need no correction.
double lengthAt20Mm(const WarmReading& reading);

/// What is added to the reading, mm: lengthAt20Mm − readMm.
double correctionTo20Mm(const WarmReading& reading);

/// Linear expansion of a material near room temperature.
struct Expansion {
    std::string_view material{};
    double perK = 0.0;
    std::string_view source{};
};

/// Coefficients for want of better ones. Tables differ by several percent (grey cast iron is printed as 11.4
/// and as 10.8 millionths), and metals of one name do: a frame file's number wins.
inline constexpr std::array kExpansions{
    Expansion{"aluminium 356.0", 21.5e-6, "Callister, table B.6"},
    Expansion{"aluminium 2024", 22.9e-6, "Callister, table B.6"},
    Expansion{"aluminium 6061", 23.6e-6, "Callister, table B.6"},
    Expansion{"grey cast iron", 11.4e-6, "Callister, table B.6"},
    Expansion{"ductile iron 60-40-18", 11.2e-6, "Callister, table B.6"},
    Expansion{"ductile iron 80-55-06", 10.6e-6, "Callister, table B.6"},
    Expansion{"plain carbon steel", 11.7e-6, "Callister, table B.6, from memory"},
    Expansion{"alloy steel", 12.3e-6, "Callister, table B.6, from memory"},
    Expansion{"austenitic steel 304", 17.2e-6, "Callister, table B.6, from memory"},
};

/// The row of this name, or nothing.
std::optional<Expansion> expansionOf(std::string_view material);

} // namespace gapwise
