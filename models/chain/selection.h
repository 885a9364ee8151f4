#pragma once

#include "models/chain/dimension_values.h"

#include <optional>
#include <span>
#include <vector>

namespace gapwise {

/// A gap as it would be with a grade.
struct GapThen {
    QuantityId chain{};
    double nowMm = 0.0;
    double thenMm = 0.0;
    Window window{};
    bool within = true;
};

struct GradeOption {
    double gradeMm = 0.0;
    std::vector<GapThen> gaps{}; ///< Every chain that the grade moves, the one that it sets first.
    bool allWithin = true;
    double nutShiftDeg =
        0.0; ///< By which the nut's old line moves against the grade now in, tightening positive.
};

/// A spacer or shim to be chosen.
struct Selection {
    const Selector* selector = nullptr;
    double nowMm = 0.0;
    double targetMm = 0.0;   ///< The middle of the window of the chain that it sets.
    double requiredMm = 0.0; ///< The size that would give exactly that.
    std::vector<GradeOption> grades{};
    /// The grade that comes nearest to the target, of two equally near ones the one nearer to what is in now;
    /// nothing when even it lies outside the window, or the window is open on a side and has no middle (the
    /// target is then what the gap is now).
    std::optional<std::size_t> proposed{};
};

/// Every selector of the frame, which must outlive the result, with all its grades. `measured` may hold gaps
/// besides parts: a measured gap counts instead of its prediction (a cover shim is chosen on the gap that was
/// read).
std::vector<Selection> selectionsOf(const Frame& frame, std::span<const MeasuredValue> measured);

} // namespace gapwise
