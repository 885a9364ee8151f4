#pragma once

#include "models/frame/measurement.h"

#include <string>

namespace gapwise {

/// Noise of binary fractions where values are compared, in any unit: the boundary holds.
inline constexpr double kRounding = 1e-9;

/// `0.068 mm`, `0.91°`, `0.092 g·mm`; never `-0.000`.
std::string numberWords(double value, int decimals, Unit unit);

/// The same without its unit.
std::string plainNumber(double value, int decimals);

/// `0.050 to 0.090 mm`, `at least 11.980 mm`, `at most 0.010 mm`; empty for an open window.
std::string windowWords(const Window& window, int decimals, Unit unit);

/// Whether the window holds the value; its boundaries hold, binary noise aside.
bool holdsValue(const Window& window, double value);

/// The end of the window that lies within value ± U, if one does.
std::optional<double> endNear(const Window& window, double value, double expanded);

} // namespace gapwise
