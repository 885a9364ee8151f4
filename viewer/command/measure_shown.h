#pragma once

#include "models/chain/chain.h"
#include "models/measure/measure.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// The chain of a prediction, drawn many times.
struct DrawnChain {
    QuantityId chain{};
    ChainTrials trials{};
    std::uint64_t seed = 0;
};

/// What a command line asks to be shown of the measurements of a build.
struct MeasureShown {
    std::string name{}; ///< Of the sheet.
    const Frame* frame = nullptr;
    const Build* build = nullptr;
    const Bench* bench = nullptr;
    MeasureReport report{};
    std::vector<DrawnChain> drawn{};       ///< Where trials were asked for.
    std::optional<QuantityId> onlyChain{}; ///< Nothing but this chain.
    std::optional<EffectTable> effects{};
    std::optional<QuantityId> onlySelector{}; ///< Nothing but this selector, with all its grades.

    /// Everything, not one chain or one selector.
    bool whole() const { return !onlyChain && !onlySelector && !effects; }
};

/// As text for a person.
std::string measureAsText(const MeasureShown& shown);

/// As JSON; what is asked for by itself stands alone, all else is complete.
std::string measureAsJson(const MeasureShown& shown);

} // namespace gapwise
