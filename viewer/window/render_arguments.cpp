#include "viewer/window/render_arguments.h"

#include "viewer/window/parse_words.h"

#include <CLI/CLI.hpp>

#include <string_view>
#include <utility>

namespace gapwise {

namespace {

constexpr const char* kCommand = "gapwise render";
constexpr std::string_view kSection = "--section";

constexpr const char* kExamples =
    "Examples:\n"
    "  gapwise render alder-72 --explode 1 --out alder-72.png\n"
    "  gapwise render alder-72 --section --size 3840x2160 --out cut.png\n"
    "  gapwise render alder-72 --section quarter --section-at \"10:30 compressor\" --out open.png\n"
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
    app.add_option(
           "--section", request.section,
           "Cut along the shaft: a half away, or a quarter. Without a word, and without\n"
           "--section-at, the half at 3:00 seen from the compressor side: the cut goes through inlet\n"
           "and drain. A quarter goes from 12:00 to 3:00 seen from there")
        ->type_name("[half|quarter]");
    app.add_option("--section-at", request.sectionAt,
                   "The middle of what is taken away: 12:00, 6:00, or a clock or degrees with the side\n"
                   "they are seen from, such as \"1:30 turbine\" or \"45deg compressor\"")
        ->type_name("\"CLOCK SIDE\"");
    app.add_flag("--casings", request.casings,
                 "Show the casings that are in place too; else they are out of sight");
    app.add_option("--alone", request.alone, "Only this part, where it sits")->type_name("PART");
    app.add_option("--size", request.size, "In pixels, up to 8000x8000; 1600x900 without it")
        ->type_name("WxH");
    app.add_flag("--json", json, "Print JSON instead of text");
    app.footer(kExamples);
}

/// Words that are no option and no value of one: what is to be drawn, if all is well.
long sourcesIn(const CLI::App& app, const std::vector<std::string>& words) {
    long sources = 0;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const CLI::Option* option = words[i].starts_with("--") ? app.get_option_no_throw(words[i]) : nullptr;
        if (option && words[i] != kSection && option->get_items_expected_max() > 0)
            ++i;
        else if (!words[i].starts_with("-") || words[i] == "-")
            ++sources;
    }
    return sources;
}

/// `--section` stands alone or has a word after it, which may as well be what is to be drawn: it belongs to
/// the option where it is one of its words, or where something else is to be drawn.
std::vector<std::string> withSectionSaid(const CLI::App& app, const std::vector<std::string>& words) {
    const long sources = sourcesIn(app, words);
    std::vector<std::string> said;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] != kSection) {
            said.push_back(words[i]);
            continue;
        }
        const std::string next = i + 1 < words.size() ? words[i + 1] : std::string{};
        const bool own =
            next == "half" || next == "quarter" || (sources > 1 && !next.empty() && !next.starts_with("-"));
        said.push_back(std::string{kSection} + "=" + (own ? next : "half"));
        i += own ? 1U : 0U;
    }
    return said;
}

} // namespace

std::variant<RenderRequest, Outcome> parseRenderArguments(const std::vector<std::string>& arguments) {
    CLI::App app{"Draw a frame or a build to a picture, no display needed", kCommand};
    RenderRequest request;
    bool json = false;
    describeOptions(app, request, json);
    if (std::optional<Outcome> outcome = parseWords(app, withSectionSaid(app, arguments), kCommand))
        return std::move(*outcome);
    return request;
}

} // namespace gapwise
