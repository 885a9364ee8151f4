#pragma once

#include "models/build/build.h"
#include "models/json/fields.h"

#include <array>
#include <string_view>

namespace gapwise {

/// The words that build sheets and journals use for readings, decisions and instruments: one table each, read
/// both ways.

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

/// What an instrument can be, and what a method can ask for.
inline constexpr std::array<Named<std::string_view>, 9> kInstrumentKinds{
    {{"flat_anvil_micrometer", "flat_anvil_micrometer"},
     {"ball_anvil_micrometer", "ball_anvil_micrometer"},
     {"bore_gauge", "bore_gauge"},
     {"depth_micrometer", "depth_micrometer"},
     {"groove_micrometer", "groove_micrometer"},
     {"dial_indicator", "dial_indicator"},
     {"feeler_gauges", "feeler_gauges"},
     {"caliper", "caliper"},
     {"balancing_machine", "balancing_machine"}}};

/// How warm a part or a gauge may be when it is read: a part may come from an oven.
inline constexpr Range kBenchC{-50.0, 400.0};

/// What isDate allows.
inline constexpr const char* kDateWords = "a day as in 2026-05-04";

} // namespace gapwise
