#pragma once

#include "models/frame/frame.h"

#include <string>
#include <vector>

namespace gapwise {

/// What the whole job needs, gathered from all steps, checked at the start.

struct PickItem {
    std::string name{};
    int quantity = 0;
    std::vector<StepId> steps{}; ///< Where it is used.
};

/// Every consumable: what steps list, and the fasteners' locking elements.
std::vector<PickItem> pickListOf(const Frame& frame);

struct GaugeItem {
    std::string instrument{};
    std::vector<MeasurementId> measurements{};
};

/// Every instrument of the measuring plan, each once.
std::vector<GaugeItem> gaugesOf(const Frame& frame);

/// Every tool that a step names, each once, in the order of first use.
std::vector<std::string> toolsOf(const Frame& frame);

/// The least height of the block under the piece with this end up, in millimetres: from the face that lies on
/// it to the lowest point that ever reaches through, and the free space under that. Nothing when the frame
/// names no rest for this end.
std::optional<double> leastBlockMm(const Frame& frame, Side up);

} // namespace gapwise
