#pragma once

#include "models/frame/ids.h"
#include "models/torque/units.h"

#include <string>

namespace gapwise {

/// What is typed and folded out on the card of a fastener; kept while the window is open.
struct TorqueDrafts {
    enum class Page { Tighten, Wrench, Value, Preload, NutLine, Touched };

    FastenerId fastener{}; ///< Of which the card was last drawn: another one begins at its first page.
    Page page = Page::Tighten;
    int group = 0; ///< Which of its flanges.
    TorqueUnit unit = TorqueUnit::NewtonMetre;
    std::string length{};  ///< mm, from the middle of the grip to the drive.
    std::string adapter{}; ///< mm, from the drive to the fastener.
    std::string angle{};   ///< Degrees between both.
    std::string least{};   ///< That the wrench can be set to, in `unit`.
    std::string most{};
    std::string number{};   ///< Of the wrench.
    std::string turned{};   ///< Degrees from snug to final.
    std::string drag{};     ///< In `unit`.
    std::string nutRead{};  ///< Degrees from the old line.
    std::string nutStack{}; ///< mm, new less old.
    std::string said{};     ///< Why what was pressed last was not taken.
};

} // namespace gapwise
