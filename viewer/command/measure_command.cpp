#include "viewer/command/measure_command.h"

#include "models/build/date.h"
#include "models/build/names.h"
#include "models/build/read_build.h"
#include "models/json/document.h"
#include "viewer/command/measure_shown.h"
#include "viewer/command/number.h"
#include "viewer/command/text_layout.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr const char* kCommand = "gapwise measure";
constexpr NumberRange kTrials{100.0, 1e8, false, "a whole number of trials from 100 to 100000000"};
constexpr NumberRange kSeed{0.0, 9e15, false, "a whole number of 0 or more"};

/// What was typed, checked before anything is read.
struct Wanted {
    std::optional<TrialPlan> trials{};
    Errors errors{};
};

double whole(const std::string& text, std::string_view option, const NumberRange& range, Errors& errors) {
    const double number = valueOr(parseNumber(text, option, range), range.least, errors);
    if (number != std::floor(number))
        errors.push_back({std::string{option}, quotedText(text), std::string{range.words}});
    return number;
}

Wanted wantedOf(const MeasureRequest& request) {
    Wanted wanted;
    if (request.on && !isDate(*request.on))
        wanted.errors.push_back({"--on", quotedText(*request.on), kDateWords});
    if (request.trials)
        wanted.trials = TrialPlan{
            .trials = static_cast<std::size_t>(whole(*request.trials, "--trials", kTrials, wanted.errors))};
    if (request.seed && !request.trials)
        wanted.errors.push_back({"--seed", "no --trials", "trials that the seed is for"});
    else if (request.seed)
        wanted.trials->seed =
            static_cast<std::uint64_t>(whole(*request.seed, "--seed", kSeed, wanted.errors));
    return wanted;
}

/// The ids that an option may name.
template <class Things, class IdOf>
void checkId(const std::optional<std::string>& typed, std::string_view option, const Things& things,
             const IdOf& idOf, Errors& errors) {
    if (!typed || std::ranges::any_of(things, [&](const auto& each) { return idOf(each) == *typed; }))
        return;
    const std::string ids = listed(things, ", ", idOf);
    errors.push_back(
        {std::string{option}, quotedText(*typed), ids.empty() ? "none: the frame has none" : ids});
}

Errors unknownIds(const Frame& frame, const MeasureRequest& request) {
    Errors errors;
    checkId(request.chain, "--chain", frame.chains, [](const Chain& each) { return each.id.text; }, errors);
    checkId(
        request.select, "--select", frame.selectors, [](const Selector& each) { return each.dimension.text; },
        errors);
    return errors;
}

/// Draws the chain that was asked for, or every chain that has a window to be held against.
std::vector<DrawnChain> drawn(const MeasureShown& shown, const TrialPlan& plan) {
    std::vector<DrawnChain> all;
    const auto values = dimensionValues(*shown.frame, measuredValues(shown.report));
    for (const Chain& chain : shown.frame->chains) {
        const Window window = windowOf(*shown.frame, chain.id);
        const bool asked = shown.onlyChain ? chain.id == *shown.onlyChain : !window.empty();
        if (asked)
            all.push_back({chain.id, drawTrials(chain, values, window, plan), plan.seed});
    }
    return all;
}

MeasureShown shownOf(const BuildSheet& sheet, const Bench& bench, const MeasureRequest& request) {
    MeasureShown shown{
        .name = request.build == "-" ? "standard input" : request.build,
        .frame = &sheet.frame,
        .build = &sheet.build,
        .bench = &bench,
        .report = measureReport(sheet.frame, sheet.build, bench, {.today = request.on.value_or("")})};
    if (request.chain)
        shown.onlyChain = QuantityId{*request.chain};
    if (request.select)
        shown.onlySelector = QuantityId{*request.select};
    if (request.effects)
        shown.effects = effectTable(sheet.frame);
    return shown;
}

} // namespace

Outcome measureCommand(const DataFolder& data, const MeasureRequest& request, Format format) {
    const Wanted wanted = wantedOf(request);
    if (!wanted.errors.empty())
        return misused(kCommand, wanted.errors);
    const Result<BuildSheet> sheet = readBuildSheet(data, request.build);
    if (!sheet)
        return failed(ExitStatus::BadInput, sheet.errors());
    const Result<Bench> bench = request.bench ? readBench(data, *request.bench) : demoBench(data);
    if (!bench)
        return failed(request.bench ? ExitStatus::BadInput : ExitStatus::CannotNow, bench.errors());
    if (Errors errors = unknownIds(sheet->frame, request); !errors.empty())
        return misused(kCommand, std::move(errors));
    MeasureShown shown = shownOf(*sheet, *bench, request);
    if (wanted.trials)
        shown.drawn = drawn(shown, *wanted.trials);
    return {.status = isBroken(shown.report) ? ExitStatus::Broken : ExitStatus::Holds,
            .text = format == Format::Json ? measureAsJson(shown) : measureAsText(shown)};
}

} // namespace gapwise
