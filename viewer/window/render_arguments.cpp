#include "viewer/window/render_arguments.h"

#include "viewer/window/parse_words.h"

#include <CLI/CLI.hpp>

#include <utility>

namespace gapwise {

namespace {

constexpr const char* kCommand = "gapwise render";

constexpr const char* kExamples =
    "Examples:\n"
    "  gapwise render alder-72 --explode 1 --out alder-72.png\n"
    "  gapwise render alder-72 --section --size 3840x2160 --out cut.png\n"
    "  gapwise render my.build.json --from turbine --out turbine-end.png\n\n"
    "Exit status: 0 written, 2 bad input or usage, 3 this machine cannot do it now.";

void describeOptions(CLI::App& app, RenderRequest& request, bool& json) {
    app.add_option("BUILD-or-FRAME", request.source,
                   "A build sheet, a frame file, or the id of a bundled frame; - is standard input.\n"
                   "A frame is shown as its rules want it, a build with what is broken marked")
        ->type_name("")
        ->required();
    app.add_option("--out", request.out, "The PNG to write")->type_name("F.png")->required();
    app.add_option("--explode", request.explode, "Pull apart along the shaft: 0 assembled to 1 wholly")
        ->type_name("0..1");
    app.add_option("--from", request.from,
                   "compressor, turbine, or degrees: azimuth 0 is beside with the turbine on the left,\n"
                   "90 is from the compressor side; elevation 0 is level")
        ->type_name("SIDE or AZIMUTH,ELEVATION");
    app.add_flag("--section", request.section,
                 "Cut along the shaft through inlet and drain, the half at 3:00 (seen from the\n"
                 "compressor side) removed");
    app.add_option("--size", request.size, "In pixels, up to 8000x8000; 1600x900 without it")
        ->type_name("WxH");
    app.add_flag("--json", json, "Print JSON instead of text");
    app.footer(kExamples);
}

} // namespace

std::variant<RenderRequest, Outcome> parseRenderArguments(const std::vector<std::string>& arguments) {
    CLI::App app{"Draw a frame or a build to a picture, no display needed", kCommand};
    RenderRequest request;
    bool json = false;
    describeOptions(app, request, json);
    if (std::optional<Outcome> outcome = parseWords(app, arguments, kCommand))
        return std::move(*outcome);
    return request;
}

} // namespace gapwise
