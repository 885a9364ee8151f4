#include "viewer/window/open_arguments.h"

#include "viewer/window/parse_words.h"

#include <CLI/CLI.hpp>

#include <utility>

namespace gapwise {

namespace {

constexpr const char* kCommand = "gapwise open";

constexpr const char* kExamples =
    "Examples:\n"
    "  gapwise                                 the opening screen, or the job that was cut off\n"
    "  gapwise birch-150 --use show            a frame, everything still on the tray\n"
    "  gapwise my.build.json --use bench       a build sheet, to confirm at the bench\n\n"
    "Exit status: 0 closed, 2 bad input or usage, 3 no display or no OpenGL 3.3.";

void describeOptions(CLI::App& app, OpenRequest& request, std::string& use) {
    app.add_option("FRAME-or-BUILD", request.what, "Id of a bundled frame, a frame file, or a build sheet")
        ->type_name("");
    app.add_option("--use", use, "What for: practise, bench or show; practise without it")
        ->check(CLI::IsMember({"practise", "bench", "show"}))
        ->type_name("USE");
    app.add_option("--width", request.size.width, "Width of the window in pixels")
        ->check(CLI::Range(kLeastWindow.width, kMostWindow.width));
    app.add_option("--height", request.size.height, "Height of the window in pixels")
        ->check(CLI::Range(kLeastWindow.height, kMostWindow.height));
    app.add_flag("--figures", request.tellFigures,
                 "Tell on standard error when the first picture stood and how many were drawn");
    app.add_option("--targets", request.targetsFile,
                   "After each picture, write there what can be pressed and where, for scripts")
        ->type_name("F.json");
    app.footer(kExamples);
}

} // namespace

std::variant<OpenRequest, Outcome> parseOpenArguments(const std::vector<std::string>& arguments) {
    CLI::App app{"Open the window", kCommand};
    OpenRequest request;
    std::string use{nameOf(request.use)};
    bool json = false;
    describeOptions(app, request, use);
    app.add_flag("--json", json, "Print errors as JSON too");
    if (std::optional<Outcome> outcome = parseWords(app, arguments, kCommand))
        return std::move(*outcome);
    request.use = useNamed(use).value_or(request.use);
    return request;
}

} // namespace gapwise
