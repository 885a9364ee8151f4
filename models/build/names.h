#pragma once

#include "models/build/build.h"
#include "models/json/fields.h"

#include <array>

namespace gapwise {

/// The words that build sheets and journals use for readings and decisions: one table each, read both ways.

inline constexpr std::array kOccasionNames{Named<Occasion>{"before", Occasion::Before},
                                           Named<Occasion>{"after", Occasion::After}};

inline constexpr std::array kConditionWords{
    Named<PartCondition>{"as_new", PartCondition::AsNew},
    Named<PartCondition>{"worn_in_limits", PartCondition::WornInLimits},
    Named<PartCondition>{"worn_out", PartCondition::WornOut},
    Named<PartCondition>{"damaged", PartCondition::Damaged},
    Named<PartCondition>{"missing", PartCondition::Missing},
    Named<PartCondition>{"wrong_part", PartCondition::WrongPart},
};

inline constexpr std::array kFateNames{
    Named<PartFate>{"reuse", PartFate::Reuse},
    Named<PartFate>{"renew", PartFate::Renew},
    Named<PartFate>{"reject", PartFate::Reject},
};

} // namespace gapwise
