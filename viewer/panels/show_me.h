#pragma once

#include "viewer/workplace/workplace.h"

#include <optional>
#include <string_view>

namespace gapwise {

/// A look from which a mistake is seen.
struct ShowMe {
    Standpoint standpoint{};
    std::string_view words{}; ///< `as printed`, `as you set it`, `as I stand`.
};

/// For a broken rule: the look from the side that the rule is read from, inlet on top; while one looks from
/// there, the look from where one stands, in which the part was set if that view still lies before him.
/// Neither walks nor turns the piece. Nothing for a rule that is not broken, or that no look decides.
std::optional<ShowMe> showMeOf(const Job& job, const Finding& finding);

} // namespace gapwise
