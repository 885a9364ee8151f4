#include "geometry/base/overloaded.h"
#include "geometry/base/running_program.h"
#include "viewer/command/command_line.h"
#include "viewer/command/report.h"
#include "viewer/command/window_program.h"

#include <exception>
#include <filesystem>

namespace {

using namespace gapwise;

/// Commands that read frames first need the data that lie beside the program.
template <class Work>
Outcome withData(const Work& work) {
    const Result<DataFolder> data = findDataFolder(runningProgram());
    return data ? work(*data) : failed(ExitStatus::CannotNow, data.errors());
}

Outcome run(const Request& request, Format format) {
    return std::visit(
        Overloaded{
            [](const HelpRequest& help) { return Outcome{.text = help.text}; },
            [&](const ClockRequest& clock) { return clockCommand(clock, format); },
            [&](const CheckRequest& check) {
                return withData([&](const DataFolder& data) { return checkCommand(data, check, format); });
            },
            [&](const FrameRequest& frame) {
                return withData([&](const DataFolder& data) { return frameCommand(data, frame, format); });
            },
            [&](const JobRequest& job) {
                return withData([&](const DataFolder& data) { return jobCommand(data, job, format); });
            },
            [&](const MeasureRequest& measure) {
                return withData(
                    [&](const DataFolder& data) { return measureCommand(data, measure, format); });
            },
            [&](const TorqueRequest& torque) {
                return torqueCommand(torque, format, [] { return findDataFolder(runningProgram()); });
            },
            [](const WindowRequest& window) { return becomeWindowProgram(window.arguments); }},
        request);
}

Outcome run(const std::vector<std::string>& arguments, Format format) {
    const auto parsed = parseCommandLine(arguments);
    if (const auto* wrong = std::get_if<Outcome>(&parsed))
        return *wrong;
    return run(std::get<Request>(parsed), format);
}

} // namespace

int main(int argc, char** argv) {
    const std::vector<std::string> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
    const Format format = formatOf(arguments);
    try {
        return report(run(arguments, format), format);
    } catch (const std::exception& trouble) {
        // Memory ran out, or a library broke its word: the shell still gets a status and a reason.
        return report(failed(ExitStatus::CannotNow, {Error{.where = "gapwise", .found = trouble.what()}}),
                      format);
    }
}
