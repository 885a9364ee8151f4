#include "viewer/command/torque_command.h"

#include "geometry/base/overloaded.h"

namespace gapwise {

Outcome torqueCommand(const TorqueRequest& request, Format format,
                      const std::function<Result<DataFolder>()>& data) {
    const auto show = [&](const ShowRequest& asked) {
        const Result<DataFolder> found = data();
        return found ? torqueShow(*found, asked, format) : failed(ExitStatus::CannotNow, found.errors());
    };
    return std::visit(
        Overloaded{[&](const ConvertRequest& convert) { return torqueConvert(convert, format); },
                   [&](const WrenchRequest& wrench) { return torqueWrench(wrench, format); },
                   [&](const PreloadRequest& preload) { return torquePreload(preload, format); },
                   [&](const NutLineRequest& line) { return torqueNutLine(line, format); },
                   [&](const PatternRequest& pattern) { return torquePattern(pattern, format); }, show},
        request);
}

} // namespace gapwise
