#pragma once

#include "models/check/check.h"

#include <optional>
#include <vector>

namespace gapwise {

/// A direction that a rule demands, in the datum: what the single mistakes are held against.
struct ClockWindow {
    Clock middle = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    Degrees tolerance{0.0};

    bool contains(const Clock& clock) const;
};

/// Everything that the search for the likeliest mistake looks at.
struct MistakeCase {
    Clock actual = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    ClockWindow window{};
    std::optional<PrintedClock> printed{}; ///< Nothing for a pin, whose clock no rule prints.
    std::optional<ClockWindow> twin{};     ///< What the rule at the other end demands.
    std::optional<ClockWindow> sister{};   ///< What the rule with the same id demands in the sister variant.
    std::optional<View> setIn{};           ///< The view in which the part was last set.
};

struct MistakesFound {
    std::vector<Mistake> mistakes{}; ///< Likeliest first; empty when no single mistake explains the clock.
    std::optional<bool>
        asPrinted{}; ///< Set exactly where the sheet says, but in a view that is not the rule's own.
};

/// The single mistakes that would satisfy the rule, in their fixed order; the one that the view itself names
/// goes first when the part was set exactly as printed.
MistakesFound mistakesOf(const MistakeCase& mistakeCase);

/// The mistake that a view away from the rule's own names by itself, within 15°; nothing for an odd view.
std::optional<Mistake> mistakeOfView(const View& view, Side ruleSide);

} // namespace gapwise
