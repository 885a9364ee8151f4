#pragma once

#include "models/procedure/tightening_card.h"
#include "viewer/command/torque_command.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What `gapwise torque show` tells, reckoned: text and JSON only write it down.
struct TorqueShown {
    const Frame& frame;
    const Fastener& fastener; ///< Has a plan.
    TorqueUnit unit = TorqueUnit::NewtonMetre;
    bool lies = false; ///< How the piece lies was said.
    Facing facing{};
    std::vector<Stage> stages{};
    std::vector<FlangeGroup> flanges{};
    TurnFacts turn{};
    WrenchRange range{};
    std::vector<WrenchFacts> wrench{}; ///< One a stage; of a stage without a torque nothing is set.
};

std::string torqueShownAsText(const TorqueShown& shown);
std::string torqueShownAsJson(const TorqueShown& shown);

} // namespace gapwise
