#pragma once

#include "viewer/command/check_command.h"
#include "viewer/command/clock_command.h"
#include "viewer/command/frame_command.h"
#include "viewer/command/job_command.h"
#include "viewer/command/measure_command.h"
#include "viewer/command/outcome.h"
#include "viewer/command/torque_command.h"

#include <string>
#include <variant>
#include <vector>

namespace gapwise {

/// Text that was asked for instead of work: help, the version.
struct HelpRequest {
    std::string text{};
};

/// A command of the window program, with all its arguments as typed (`render`, …).
struct WindowRequest {
    std::vector<std::string> arguments{};
};

using Request = std::variant<HelpRequest, ClockRequest, CheckRequest, FrameRequest, JobRequest,
                             MeasureRequest, TorqueRequest, WindowRequest>;

/// The arguments without the program's name. The failure is a usage error in the words of the command line.
std::variant<Request, Outcome> parseCommandLine(const std::vector<std::string>& arguments);

/// Whether `--json` stands among the arguments, however wrong the rest may be.
Format formatOf(const std::vector<std::string>& arguments);

} // namespace gapwise
