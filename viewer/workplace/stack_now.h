#pragma once

#include "models/chain/chain.h"

#include <map>
#include <optional>

namespace gapwise {

struct Job;

/// The chains of a job as pages of the sheet of measurements show them: reckoned once after every event.
/// Points into the job's frame.
struct StackNow {
    /// By drawing sizes alone, rotor pushed to either side: what a section is drawn by.
    std::map<StationId, double> towardCompressor{};
    std::map<StationId, double> towardTurbine{};
    EffectTable effects{};
    /// Of the chains that were looked at since, with what was measured.
    std::map<QuantityId, ChainTrials> trials{};
};

/// Everything but the trials.
StackNow stackNow(const Job& job);

/// The chain that a page tells of: the one named, else the first of the frame; null when the frame has none.
const Chain* chainShown(const Job& job);

/// Draws the chain that is shown, unless it was drawn with these values before.
void drawShownChain(Job& job);

} // namespace gapwise
