#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace gapwise {

/// One straight stroke of a letter, in a cell 4 wide and 6 high with its origin at the lower left.
struct Stroke {
    double fromX = 0.0, fromY = 0.0, toX = 0.0, toY = 0.0;
};

inline constexpr double kLetterCellWidth = 4.0;
inline constexpr double kLetterCellHeight = 6.0;
inline constexpr double kLetterPitch = 6.0; ///< From one cell's origin to the next.
inline constexpr double kStrokeWidth = 0.9; ///< In the units of the cell.

/// The strokes of a capital letter A–Z, a digit, a hyphen or a space (no strokes); nothing for any other
/// character.
std::optional<std::vector<Stroke>> strokesOf(char letter);

} // namespace gapwise
