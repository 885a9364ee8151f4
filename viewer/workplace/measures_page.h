#pragma once

#include "models/frame/ids.h"

#include <optional>

namespace gapwise {

/// A page of the sheet of measurements, and the chain that it tells of.
struct MeasuresPage {
    enum class Kind {
        Readings, ///< Every quantity: as received, predicted, now.
        Parts,    ///< What becomes of each part.
        Stack,    ///< A chain on the section, with its prediction.
        Effects,  ///< What each change does to each gap.
        Choose,   ///< Spacer and shims.
        Causes    ///< What explains the readings.
    };
    Kind kind = Kind::Readings;
    std::optional<QuantityId> chain{}; ///< Of the pages that tell of one; none: the first of the frame.

    bool operator==(const MeasuresPage&) const = default;
};

} // namespace gapwise
