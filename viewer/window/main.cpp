#include "geometry/base/running_program.h"
#include "viewer/command/command_line.h"
#include "viewer/command/report.h"
#include "viewer/window/render_arguments.h"

#include <exception>

namespace {

using namespace gapwise;

Outcome run(const std::vector<std::string>& arguments, Format format) {
    if (arguments.empty() || arguments.front() != "render")
        return misused("gapwise-window",
                       {{.where = "arguments",
                         .found = arguments.empty() ? "nothing" : "\"" + arguments.front() + "\"",
                         .allowed = "render; see gapwise render --help"}});
    const auto parsed = parseRenderArguments({arguments.begin() + 1, arguments.end()});
    if (const auto* outcome = std::get_if<Outcome>(&parsed))
        return *outcome;
    return renderCommand(std::get<RenderRequest>(parsed), format, runningProgram());
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
