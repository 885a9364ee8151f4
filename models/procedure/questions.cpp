#include "models/procedure/questions.h"

#include "models/procedure/kit.h"

#include "models/procedure/step_status.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

Question counted(StepQuestion asked, std::string words) {
    return {.name = std::string{nameOf(asked)}, .words = std::move(words), .kind = AnswerKind::Count};
}

Question measured(StepQuestion asked, std::string words, std::string unit) {
    return {.name = std::string{nameOf(asked)},
            .words = std::move(words),
            .kind = AnswerKind::Number,
            .unit = std::move(unit)};
}

void addPickList(const Frame& frame, std::vector<Question>& questions) {
    const std::vector<PickItem> items = pickListOf(frame);
    for (std::size_t i = 0; i < items.size(); ++i)
        questions.push_back({.name = fmt::format("pick-{}", i + 1),
                             .words = fmt::format("{} × {}", items[i].quantity, items[i].name),
                             .kind = AnswerKind::Tick});
}

void addGauges(const Frame& frame, std::vector<Question>& questions) {
    const std::vector<GaugeItem> items = gaugesOf(frame);
    for (std::size_t i = 0; i < items.size(); ++i)
        questions.push_back(
            {.name = fmt::format("gauge-{}", i + 1),
             .words = fmt::format("{}: until which day is it calibrated?", items[i].instrument),
             .kind = AnswerKind::Day});
}

void addAsked(const Frame& frame, StepQuestion asked, std::vector<Question>& questions) {
    switch (asked) {
    case StepQuestion::Variant:
        return questions.push_back(
            {.name = std::string{nameOf(asked)},
             .words = "Take the bearing in the hand. It turns freely and has no notch: full_floating; it has "
                      "a notch or a pin hole: pinned; it is in two halves: split.",
             .kind = AnswerKind::Choice,
             .choices = {"full_floating", "pinned", "split"}});
    case StepQuestion::PickList: return addPickList(frame, questions);
    case StepQuestion::Gauges: return addGauges(frame, questions);
    case StepQuestion::CountIn:
        return questions.push_back(counted(asked, "How many blanks, rags and loose tools lie on the bench?"));
    case StepQuestion::CountOut:
        return questions.push_back(
            counted(asked, "How many blanks, rags and loose tools are there now, fitted blanks counted in?"));
    case StepQuestion::BlockHeight:
        return questions.push_back(measured(asked, "How high is the block under the piece?", "mm"));
    case StepQuestion::Retention:
        return questions.push_back({.name = std::string{nameOf(asked)},
                                    .words = "What holds the rotor while the piece is turned over?"});
    case StepQuestion::DragTorque:
        return questions.push_back(
            measured(asked, "Which torque turns the nut before it comes to its seat?", "N·m"));
    case StepQuestion::NutLine:
        return questions.push_back({.name = std::string{nameOf(asked)},
                                    .words = "How far does the nut stand from its old line?",
                                    .kind = AnswerKind::NutLine,
                                    .unit = "°"});
    }
}

} // namespace

std::string_view nameOf(StepQuestion question) {
    switch (question) {
    case StepQuestion::Variant: return "variant";
    case StepQuestion::PickList: return "pick_list";
    case StepQuestion::Gauges: return "gauges";
    case StepQuestion::CountIn: return "count_in";
    case StepQuestion::CountOut: return "count_out";
    case StepQuestion::BlockHeight: return "block_height";
    case StepQuestion::Retention: return "retention";
    case StepQuestion::DragTorque: return "drag_torque";
    case StepQuestion::NutLine: return "nut_line";
    }
    return {};
}

std::vector<Question> questionsOf(const Frame& frame, const Step& step) {
    std::vector<Question> questions;
    for (const StepQuestion asked : step.asks)
        addAsked(frame, asked, questions);
    for (std::size_t i = 0; i < step.witness.size(); ++i)
        questions.push_back({.name = fmt::format("witness-{}", i + 1),
                             .words = fmt::format("{}: {}", step.witness[i].look, step.witness[i].good),
                             .kind = AnswerKind::Tick,
                             .needed = false});
    return questions;
}

bool isAnswered(const JobState& state, const StepId& step, const Question& question) {
    if (question.kind == AnswerKind::NutLine)
        return state.nutLine.has_value();
    return state.answer(step, question.name) != nullptr;
}

} // namespace gapwise
