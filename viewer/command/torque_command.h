#pragma once

#include "models/frame/data_folder.h"
#include "viewer/command/outcome.h"

#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace gapwise {

/// The words of `gapwise torque …` as typed, one struct and one function a command. What somebody typed wrong
/// is refused as a whole, every error at once; where a limit is broken the status is Broken.

/// `gapwise torque convert 32.4 N·m [--to UNIT]`
struct ConvertRequest {
    std::vector<std::string> torque{}; ///< Number and unit, in one word or more.
    std::optional<std::string> to{};
};

/// The torque in one unit, or in all of them.
Outcome torqueConvert(const ConvertRequest& request, Format format);

/// `gapwise torque wrench --target T --length MM …`
struct WrenchRequest {
    std::string target{};
    std::string length{};
    std::optional<std::string> adapter{};
    std::optional<std::string> angle{};
    std::optional<std::string> wrenchMin{};
    std::optional<std::string> wrenchMax{};
    std::optional<std::string> wrenchStep{};
};

/// What to set the wrench to, what it would do uncorrected, and how well it keeps. Broken: it shows too
/// coarse steps for its own class. A setting out of the wrench's range is bad input.
Outcome torqueWrench(const WrenchRequest& request, Format format);

/// `gapwise torque preload M8x1 --torque T …`
struct PreloadRequest {
    std::string thread{};
    std::optional<std::string> torque{};
    std::optional<std::string> force{};
    std::optional<std::string> property{};
    std::optional<std::string> frictionThread{};
    std::optional<std::string> frictionHead{};
    std::optional<std::string> bearingDiameter{};
    std::optional<std::string> tighteningFactor{};
};

/// Clamp force from torque, torque from clamp force, or both from the class alone (90 % of its yield stress).
/// Broken: more than the proof load.
Outcome torquePreload(const PreloadRequest& request, Format format);

/// `gapwise torque nut-line --read DEG --stack MM …`
struct NutLineRequest {
    std::string read{};
    std::string stack{};
    std::string pitch{};
    std::string agrees{};
    std::string small{};
};

/// How far the nut stands from its old line, less what the stack explains. Broken: small or large.
Outcome torqueNutLine(const NutLineRequest& request, Format format);

/// `gapwise torque pattern 8`
struct PatternRequest {
    std::string screws{};
};

/// In which order the screws of a flange are tightened.
Outcome torquePattern(const PatternRequest& request, Format format);

/// `gapwise torque show FRAME FASTENER [--up END --drain CLOCK] …`
struct ShowRequest {
    std::string frame{};
    std::string fastener{};
    std::optional<std::string> up{};
    std::optional<std::string> drain{};
    std::optional<std::string> seenFrom{};
    std::optional<std::string> unit{};
    std::optional<std::string> length{};
    std::optional<std::string> adapter{};
    std::optional<std::string> angle{};
    std::optional<std::string> wrenchMin{};
    std::optional<std::string> wrenchMax{};
};

/// All that the card of a fastener tells: stages, pattern, screws on their flange, hand as the piece lies,
/// wrench, value, preload, angle window. A stage out of the wrench's range is bad input.
Outcome torqueShow(const DataFolder& data, const ShowRequest& request, Format format);

using TorqueRequest =
    std::variant<ConvertRequest, WrenchRequest, PreloadRequest, NutLineRequest, PatternRequest, ShowRequest>;

/// `data` finds the data folder; only a command that reads a frame asks for it.
Outcome torqueCommand(const TorqueRequest& request, Format format,
                      const std::function<Result<DataFolder>()>& data);

} // namespace gapwise
