#include "geometry/base/running_program.h"
#include "viewer/command/command_line.h"
#include "viewer/command/report.h"
#include "viewer/window/open_arguments.h"
#include "viewer/window/render_arguments.h"

#include <exception>

namespace {

using namespace gapwise;

Outcome render(const std::vector<std::string>& arguments, Format format) {
    const auto parsed = parseRenderArguments(arguments);
    if (const auto* outcome = std::get_if<Outcome>(&parsed))
        return *outcome;
    return renderCommand(std::get<RenderRequest>(parsed), format, runningProgram());
}

Outcome open(const std::vector<std::string>& arguments) {
    const auto parsed = parseOpenArguments(arguments);
    if (const auto* outcome = std::get_if<Outcome>(&parsed))
        return *outcome;
    return openWindow(std::get<OpenRequest>(parsed), runningProgram());
}

Outcome run(const std::vector<std::string>& arguments, Format format) {
    const std::string command = arguments.empty() ? "" : arguments.front();
    const std::vector<std::string> rest{arguments.begin() + (arguments.empty() ? 0 : 1), arguments.end()};
    if (command == "render")
        return render(rest, format);
    if (command == "open")
        return open(rest);
    return misused("gapwise-window", {{.where = "arguments",
                                       .found = command.empty() ? "nothing" : "\"" + command + "\"",
                                       .allowed = "open or render; see gapwise --help"}});
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
