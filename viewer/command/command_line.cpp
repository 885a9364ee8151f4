#include "viewer/command/command_line.h"

#include "geometry/base/running_program.h"
#include "viewer/command/add_command.h"
#include "viewer/command/torque_arguments.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <utility>

namespace gapwise {

namespace {

constexpr const char* kIntro =
    "Gapwise rehearses and checks how a turbocharger cartridge goes together: where each ring gap\n"
    "points, which face looks where, and from which side that holds.";

constexpr const char* kExitStatus =
    "Exit status: 0 holds, 1 at least one broken rule, 2 bad input or usage,\n"
    "3 this machine cannot do it now.";

constexpr const char* kClockExample =
    "CLOCK and --drain are h:mm with hours 1 to 12, or degrees such as 90deg.\n"
    "Example: 3:00 from the compressor side; the turbine end is up, the drain at 9:00:\n"
    "  gapwise clock 3:00 --from compressor --up turbine --drain 9:00";

constexpr const char* kWindowCommands = "Commands of the window program (each with a help of its own):\n"
                                        "  [open] [FRAME or BUILD]     Open the window\n"
                                        "  render FRAME or BUILD       Draw a picture, no display needed\n";

/// Everything that a command line may set.
struct Typed {
    ClockRequest clock{};
    CheckRequest check{};
    FrameRequest frame{};
    JobRequest job{};
    MeasureRequest measure{};
    TorqueTyped torque{};
    bool json = false;
};

void addClock(CLI::App& app, Typed& typed) {
    CLI::App* clock = addCommand(app, typed.json, "clock",
                                 "Say a direction as each side sees it, and as it lies on the bench");
    ClockRequest& request = typed.clock;
    clock->add_option("CLOCK", request.clock, "The direction, seen from --from with the inlet on top")
        ->type_name("")
        ->required();
    clock->add_option("--from", request.from, "Side it is seen from: compressor or turbine")
        ->type_name("SIDE")
        ->required();
    clock->add_option("--up", request.up, "End that is up on the bench: compressor, turbine or level")
        ->type_name("END");
    clock
        ->add_option("--drain", request.drain,
                     "Where the drain points, seen from the front of the bench,\n"
                     "looking down on the end that is up; if level, from --seen-from")
        ->type_name("CLOCK");
    clock
        ->add_option("--seen-from", request.seenFrom,
                     "Side from which the drain of a level piece is seen; else it is --from")
        ->type_name("SIDE");
    clock
        ->add_option("--stand", request.stand,
                     "How far you have walked round an upright piece, clockwise from above")
        ->type_name("DEG");
    clock->add_flag("--as-seen", request.asSeen,
                    "Go back: CLOCK is what you see on the bench, looking down on the end\n"
                    "that is up (when level, looking from --from); the answer is what is\n"
                    "printed, for --from first");
    clock->footer(kClockExample);
}

void addCheck(CLI::App& app, Typed& typed) {
    CLI::App* check = addCommand(app, typed.json, "check",
                                 "Judge a build by every rule of its frame: what is wrong, and why");
    check->add_option("BUILD", typed.check.build, "Build sheet, or - for standard input")
        ->type_name("")
        ->required();
    check->add_flag("--complete", typed.check.complete,
                    "As before release: what is open or not due counts as broken");
    check->footer(kExitStatus);
}

void addFrame(CLI::App& app, Typed& typed) {
    CLI::App* frame = app.add_subcommand("frame", "Check or show a frame: parts, seats, rules, steps");
    frame->allow_extras();
    frame->require_subcommand(0, 1);
    const auto add = [&](const std::string& name, const std::string& words, FrameRequest::Act act) {
        CLI::App* command = addCommand(*frame, typed.json, name, words);
        command->add_option("FRAME", typed.frame.frame, "Id of a bundled frame, or path of a frame file")
            ->type_name("")
            ->required();
        command->parse_complete_callback([&typed, act] { typed.frame.act = act; });
        return command;
    };
    add("check", "Say everything that makes a frame file unusable", FrameRequest::Act::Check);
    CLI::App* show = add("show", "Show parts, seats, rules with both clocks, steps and fasteners",
                         FrameRequest::Act::Show);
    CLI::Option* part =
        show->add_option("--part", typed.frame.part,
                         "The card of this part only: how it must sit, seen from both sides,\n"
                         "why, and what goes with it")
            ->type_name("ID");
    CLI::Option* step = show->add_option("--step", typed.frame.step,
                                         "The card of this step only: what to do, lubricant, tools, torque,\n"
                                         "cautions, what to look at and to write down")
                            ->type_name("ID")
                            ->excludes(part);
    show->add_flag("--kit", typed.frame.kit,
                   "What the job needs: pick list, gauges, tools, height of the block")
        ->excludes(part)
        ->excludes(step);
}

void addJob(CLI::App& app, Typed& typed) {
    CLI::App* job = app.add_subcommand("job", "Say where a job stands, or write its slip for the next shift");
    job->allow_extras();
    job->require_subcommand(0, 1);
    const auto add = [&](const std::string& name, const std::string& words, JobRequest::Act act) {
        CLI::App* command = addCommand(*job, typed.json, name, words);
        command->add_option("FILE", typed.job.file, "Build sheet (- for standard input), or journal of a job")
            ->type_name("")
            ->required();
        command->parse_complete_callback([&typed, act] { typed.job.act = act; });
        command->footer(kExitStatus);
    };
    add("show", "Steps done, possible, waiting and open again, last looks, the next hold point",
        JobRequest::Act::Show);
    add("slip", "The hand-over slip: how the piece lies, what was done last, what to beware of",
        JobRequest::Act::Slip);
}

void addMeasure(CLI::App& app, Typed& typed) {
    CLI::App* measure =
        addCommand(app, typed.json, "measure",
                   "Judge every measurement: value, prediction, limits, causes");
    MeasureRequest& request = typed.measure;
    measure->add_option("BUILD", request.build, "Build sheet, or - for standard input")
        ->type_name("")
        ->required();
    measure->add_option("--bench", request.bench, "Instruments of the bench, else those of the demo bench")
        ->type_name("FILE");
    measure->add_option("--on", request.on, "Day of readings without one, for calibrations: 2026-05-04")
        ->type_name("DATE");
    measure->add_option("--chain", request.chain, "This chain only: its links and their shares")
        ->type_name("ID");
    measure->add_flag("--effects", request.effects, "What each change of a part does to every gap");
    measure
        ->add_option("--select", request.select,
                     "All grades of this dimension, with every gap that they move")
        ->type_name("DIMENSION");
    measure->add_option("--trials", request.trials, "Draw the chains at random so many times")
        ->type_name("N");
    measure->add_option("--seed", request.seed, "Where the draw begins: the same seed, the same result")
        ->type_name("N");
    measure->footer("Exit status: 0 holds, 1 something is beyond its limit or a decision is open,\n"
                    "2 bad input or usage, 3 this machine cannot do it now.");
}

/// `gapwise clock`, `gapwise frame show`: what was understood before the trouble.
std::string typedCommand(const CLI::App& app) {
    std::string name = "gapwise";
    for (const CLI::App* at = &app; !at->get_subcommands().empty();) {
        at = at->get_subcommands().front();
        name += " " + at->get_name();
    }
    return name;
}

/// The library's sentence as where, found and allowed.
Error usageError(const CLI::ParseError& error, const std::string& help) {
    const std::string words = error.what();
    if (error.get_name() == "RequiredError")
        return {.where = words.substr(0, words.find(" is required")), .found = "nothing", .allowed = help};
    if (error.get_name() == "ArgumentMismatch")
        return {.where = words.substr(0, words.find(':')),
                .found = words.ends_with("missing") ? "no value" : "more than one value",
                .allowed = "one value; " + help};
    return {.where = "arguments", .found = words, .allowed = help};
}

/// Whatever the library complained of, and whatever no command and no option took.
Errors usageErrors(const CLI::App& app, const std::string& command, const CLI::ParseError* error) {
    const std::string help = fmt::format("see {} --help", command);
    Errors errors;
    for (const std::string& word : app.remaining(true))
        errors.push_back({.where = "arguments", .found = fmt::format("\"{}\"", word), .allowed = help});
    if (error)
        errors.push_back(usageError(*error, help));
    return errors;
}

std::optional<Outcome> misuse(const CLI::App& app, const CLI::ParseError* error) {
    const std::string command = typedCommand(app);
    const Errors errors = usageErrors(app, command, error);
    if (!errors.empty())
        return misused(command, errors);
    const CLI::App* last = &app;
    while (!last->get_subcommands().empty())
        last = last->get_subcommands().front();
    if (!last->get_subcommands({}).empty())
        return misused(command, {{.where = "arguments",
                                  .found = "no command",
                                  .allowed = fmt::format("see {} --help", command)}});
    return std::nullopt;
}

Request requestOf(const CLI::App& app, const Typed& typed) {
    if (app.got_subcommand("clock"))
        return typed.clock;
    if (app.got_subcommand("check"))
        return typed.check;
    if (app.got_subcommand("job"))
        return typed.job;
    if (app.got_subcommand("measure"))
        return typed.measure;
    if (app.got_subcommand("torque"))
        return requestOf(typed.torque);
    return typed.frame;
}

std::variant<Request, Outcome> parseCommand(const std::vector<std::string>& arguments) {
    Typed typed;
    CLI::App app{kIntro, "gapwise"};
    app.set_version_flag("--version", std::string{"gapwise "} + GAPWISE_VERSION, "Print the version");
    app.allow_extras();
    app.require_subcommand(0, 1);
    addCheck(app, typed);
    addClock(app, typed);
    addFrame(app, typed);
    addJob(app, typed);
    addMeasure(app, typed);
    addTorque(app, typed.torque, typed.json);
    // Last, or the commands would take it over.
    app.footer(std::string{kWindowCommands} + "\n" + kExitStatus);
    try {
        app.parse(std::vector<std::string>{arguments.rbegin(), arguments.rend()});
    } catch (const CLI::CallForHelp&) {
        return HelpRequest{app.help()};
    } catch (const CLI::CallForVersion& version) {
        return HelpRequest{std::string{version.what()} + "\n"};
    } catch (const CLI::ParseError& error) {
        return *misuse(app, &error);
    }
    if (const auto wrong = misuse(app, nullptr))
        return *wrong;
    return requestOf(app, typed);
}

bool isCommand(std::string_view word) {
    return word == "check" || word == "clock" || word == "frame" || word == "job" || word == "measure" ||
           word == "torque" || word.starts_with('-');
}

/// A frame or a file in the place of a command is opened.
bool namesADocument(const std::string& word) {
    std::error_code ignored;
    if (std::filesystem::exists(word, ignored))
        return true;
    const Result<DataFolder> data = findDataFolder(runningProgram());
    return data && isBundledFrame(*data, word);
}

} // namespace

CLI::App* addCommand(CLI::App& parent, bool& json, const std::string& name, const std::string& words) {
    CLI::App* command = parent.add_subcommand(name, words);
    command->allow_extras();
    command->add_flag("--json", json, "Print JSON instead of text");
    return command;
}

Format formatOf(const std::vector<std::string>& arguments) {
    return std::ranges::find(arguments, "--json") == arguments.end() ? Format::Text : Format::Json;
}

std::variant<Request, Outcome> parseCommandLine(const std::vector<std::string>& arguments) {
    if (arguments.empty())
        return WindowRequest{{"open"}};
    if (arguments.front() == "open" || arguments.front() == "render")
        return WindowRequest{arguments};
    if (isCommand(arguments.front()) || !namesADocument(arguments.front()))
        return parseCommand(arguments);
    WindowRequest open{{"open"}};
    open.arguments.insert(open.arguments.end(), arguments.begin(), arguments.end());
    return open;
}

} // namespace gapwise
