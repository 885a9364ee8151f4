#include "viewer/panels/step_question_pages.h"
#include "viewer/panels/typed_number.h"

#include "models/procedure/kit.h"
#include "models/procedure/step_status.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

constexpr std::array<const char*, 3> kCounted{"blanks", "rags", "tools"};

const Answered* answerTo(const Job& job, StepQuestion question) {
    for (const Step& step : job.frame.steps)
        if (std::ranges::find(step.asks, question) != step.asks.end())
            return job.state.answer(step.id, nameOf(question));
    return nullptr;
}

void addSaid(StepPage& page, const Answered& said) {
    page.flow.text(Kind::Strong, "Said: " + said.answer + (said.by.empty() ? "" : ", by " + said.by));
}

/// All three numbers together, or what is wrong at its field.
void sayCount(const StepPage& page, const std::string& question) {
    std::string words;
    int all = 0;
    bool right = true;
    for (const char* each : kCounted) {
        const std::string name = question + " " + each;
        const std::optional<int> count = typedCount(page.drafts().fields[name]);
        if (!count) {
            page.drafts().faults[name] = "A whole number, 0 where there is none.";
            right = false;
            continue;
        }
        words += fmt::format("{}{} {}", words.empty() ? "" : ", ", *count, each);
        all += *count;
    }
    if (right)
        sign(page, Answered{page.step.id, question, words, static_cast<double>(all), whoWorks(page.job)});
}

/// A positive number or what is wrong, at its field.
std::optional<double> positive(const StepPage& page, const std::string& name, const std::string& typed) {
    const std::optional<double> number = typedNumber(typed);
    if (number && *number > 0.0)
        return number;
    page.drafts().faults[name] = "A number above 0, as 12.5 or 12,5.";
    return std::nullopt;
}

void sayBlock(const StepPage& page, std::optional<double> least, const std::string& typed) {
    const auto height = positive(page, "block_height", typed);
    if (!height)
        return;
    if (least && *height < *least) {
        page.drafts().faults["block_height"] =
            fmt::format("{:g} mm is too low: the shaft end would stand on the bench. At least {:.1f} mm.",
                        *height, *least);
        return;
    }
    sign(page, Answered{page.step.id, "block_height", fmt::format("{:g} mm", *height), *height,
                        whoWorks(page.job)});
}

/// Which end is up, once it was said.
std::optional<Side> upNow(const Job& job) {
    if (!job.state.build.attitude || job.attitude().up == EndUp::Level)
        return std::nullopt;
    return job.attitude().up == EndUp::Turbine ? Side::Turbine : Side::Compressor;
}

} // namespace

std::string_view labelOf(StepQuestion question) {
    switch (question) {
    case StepQuestion::Variant: return "Bearing";
    case StepQuestion::PickList: return "Pick list";
    case StepQuestion::Gauges: return "Gauges";
    case StepQuestion::CountIn: return "Count in";
    case StepQuestion::CountOut: return "Count out";
    case StepQuestion::BlockHeight: return "Block";
    case StepQuestion::Retention: return "Held by";
    case StepQuestion::DragTorque: return "Drag";
    case StepQuestion::NutLine: return "Nut line";
    }
    return {};
}

void addCount(StepPage& page, StepQuestion question) {
    const std::string name{nameOf(question)};
    const bool out = question == StepQuestion::CountOut;
    page.flow.text(Kind::Strong, out ? "How many are there now, fitted blanks counted in?"
                                     : "How many lie on the bench? The same number is counted at the end.");
    const Answered* in = out ? answerTo(page.job, StepQuestion::CountIn) : nullptr;
    if (in)
        page.flow.text(Kind::Body, "Counted in: " + in->answer + ".");
    if (const Answered* said = page.job.state.answer(page.step.id, name)) {
        addSaid(page, *said);
        if (in && in->answer != said->answer)
            addWarning(page, "Not what was counted in. What is missing may lie in the piece: find it, then "
                             "count again.");
    }
    for (const char* each : kCounted)
        addField(page, {.name = name + " " + each, .label = each, .hint = "number"});
    addButton(page, out ? "Counted out" : "Counted in", {.leading = true, .id = "counted"},
              [p = page, name] { sayCount(p, name); });
}

void addBlockHeight(StepPage& page) {
    const std::optional<Side> up = upNow(page.job);
    page.flow.text(Kind::Strong, "How high is the block under the piece?");
    std::optional<double> least;
    for (const Side side : {Side::Turbine, Side::Compressor}) {
        const std::optional<double> height = leastBlockMm(page.job.frame, side);
        if (!height || (up && *up != side))
            continue;
        if (up)
            least = height;
        page.flow.text(Kind::Body, fmt::format("{} end up: at least {:.1f} mm.",
                                               side == Side::Turbine ? "Turbine" : "Compressor", *height));
    }
    page.flow.text(Kind::Soft,
                   "It is open in the middle; the machined flange stands on it. Pass a rule under "
                   "the place where the shaft end will be.");
    if (const Answered* said = page.job.state.answer(page.step.id, "block_height"))
        addSaid(page, *said);
    addField(page, {.name = "block_height", .label = "Height in mm", .hint = "mm", .button = "Say so"},
             [p = page, least](const std::string& typed) { sayBlock(p, least, typed); });
}

void addRetention(StepPage& page) {
    page.flow.text(Kind::Strong, "What holds the rotor while the piece is turned over?");
    const Answered* said = page.job.state.answer(page.step.id, "retention");
    for (const char* kind : {"strap over the hub", "plate over the hub", "turbine housing"})
        addTick(page, {.id = kind, .words = kind, .ticked = said && said->answer == kind}, [p = page, kind] {
            sign(p, Answered{p.step.id, "retention", kind, std::nullopt, whoWorks(p.job)});
        });
    if (said)
        addSaid(page, *said);
    addField(page,
             {.name = "retention", .label = "Something else", .hint = "what holds it", .button = "Say so"},
             [p = page](const std::string& typed) {
                 const std::string words = trimmedWords(typed);
                 if (words.empty())
                     p.drafts().faults["retention"] = "What holds it, in a few words.";
                 else
                     sign(p, Answered{p.step.id, "retention", words, std::nullopt, whoWorks(p.job)});
             });
}

void addDragTorque(StepPage& page) {
    page.flow.text(Kind::Strong, "Which torque turns the nut before it comes to its seat?");
    for (const Fastener& fastener : page.job.frame.fasteners)
        if (fastener.step == page.step.id && fastener.plan && fastener.plan->runDown)
            page.flow.text(Kind::Body,
                           fmt::format("More than {:g} N·m tells of a thread that picks up: take it off and "
                                       "look.",
                                       fastener.plan->runDown->dragMostNm));
    if (const Answered* said = page.job.state.answer(page.step.id, "drag_torque"))
        addSaid(page, *said);
    addField(page, {.name = "drag_torque", .label = "Drag torque in N·m", .hint = "N·m", .button = "Say so"},
             [p = page](const std::string& typed) {
                 if (const auto torque = positive(p, "drag_torque", typed))
                     sign(p, Answered{p.step.id, "drag_torque", fmt::format("{:g} N·m", *torque), *torque,
                                      whoWorks(p.job)});
             });
}

} // namespace gapwise
