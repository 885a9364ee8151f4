#pragma once

#include <string_view>

namespace gapwise {

/// An end of the cartridge, and the place an observer looks from.
enum class Side { Compressor, Turbine };

/// σ of the clock formula: +1 from the compressor side, -1 from the turbine side.
constexpr double signOf(Side side) {
    return side == Side::Compressor ? 1.0 : -1.0;
}

constexpr Side opposite(Side side) {
    return side == Side::Compressor ? Side::Turbine : Side::Compressor;
}

/// `compressor` or `turbine`, as in files and sentences.
constexpr std::string_view nameOf(Side side) {
    return side == Side::Compressor ? "compressor" : "turbine";
}

} // namespace gapwise
