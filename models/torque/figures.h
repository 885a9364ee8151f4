#pragma once

#include <string>

namespace gapwise {

/// A number with so many significant figures (at least 1), never in powers of ten: 32.361 at three is
/// `32.4`, 1234 is `1230`, 20 is `20.0`; 0 is `0`; what is no number is
/// `nan` or `inf`.
std::string withFigures(double value, int figures);

} // namespace gapwise
