#pragma once

#include "viewer/command/torque_command.h"

namespace CLI {
class App;
}

namespace gapwise {

/// Everything that `gapwise torque …` may set; `act` is the command that was typed.
struct TorqueTyped {
    enum class Act { Convert, Wrench, Preload, NutLine, Pattern, Show };
    Act act = Act::Convert;
    ConvertRequest convert{};
    WrenchRequest wrench{};
    PreloadRequest preload{};
    NutLineRequest nutLine{};
    PatternRequest pattern{};
    ShowRequest show{};
};

/// Adds `torque` and its commands to the command line. `typed` and `json` must outlive it.
void addTorque(CLI::App& app, TorqueTyped& typed, bool& json);

TorqueRequest requestOf(const TorqueTyped& typed);

} // namespace gapwise
