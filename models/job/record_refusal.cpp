#include "models/job/record_refusal.h"

#include "models/frame/names.h"
#include "models/job/part_refusal.h"
#include "models/procedure/hold_point.h"
#include "models/procedure/person_name.h"
#include "models/procedure/questions.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace gapwise {

namespace {

constexpr double kMostCounted = 10'000.0;
constexpr double kMostMeasured = 100'000.0;

bool isDay(const std::string& text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-')
        return false;
    int year = 0;
    unsigned month = 0;
    unsigned day = 0;
    if (std::sscanf(text.c_str(), "%4d-%2u-%2u", &year, &month, &day) != 3)
        return false;
    return std::chrono::year_month_day{std::chrono::year{year}, std::chrono::month{month},
                                       std::chrono::day{day}}
        .ok();
}

/// Why an answer is none to its question; empty when it is one.
std::string allowedAnswer(const Question& question, const Answered& event) {
    const double amount = event.amount.value_or(std::nan(""));
    const auto within = [&](double most) { return std::isfinite(amount) && amount >= 0.0 && amount <= most; };
    switch (question.kind) {
    case AnswerKind::Count:
        return within(kMostCounted) && std::floor(amount) == amount ? "" : "a whole number from 0";
    case AnswerKind::Number:
        return within(kMostMeasured) ? "" : fmt::format("a number from 0, in {}", question.unit);
    case AnswerKind::Day: return isDay(event.answer) ? "" : "a day as 2027-03-31";
    case AnswerKind::NutLine: return "a reading of the nut line";
    case AnswerKind::Choice:
        return std::ranges::find(question.choices, event.answer) != question.choices.end()
                   ? ""
                   : fmt::format("{}", fmt::join(question.choices, ", "));
    case AnswerKind::Tick:
    case AnswerKind::Words: return "";
    }
    return "";
}

std::string foundIn(const Answered& event) {
    return event.amount ? fmt::format("\"{}\", {:g}", event.answer, *event.amount)
                        : fmt::format("\"{}\"", event.answer);
}

} // namespace

/// To lay it on another end is a turning; to say where the drain points is not.
Errors refusalOfTurning(const Frame& frame, const JobState& state, const AttitudeChanged& event) {
    const std::optional<Attitude>& now = state.build.attitude;
    if (!now || now->up == event.attitude.up || event.unretained)
        return {};
    const auto finding = findingBeforeTurning(frame, state);
    if (!finding)
        return {};
    return {refusal("turn the piece", finding->words,
                    "that the rotor is held first, or that it is written down as turned with it loose")};
}

Errors refusalOfAnswer(const Frame& frame, const JobState& state, const Answered& event) {
    const Step* step = frame.step(event.step);
    const std::vector<Question> questions = step ? questionsOf(frame, *step) : std::vector<Question>{};
    const auto question = std::ranges::find(questions, event.question, &Question::name);
    const std::string where = fmt::format("{}/{}", event.step.text, event.question);
    if (question == questions.end())
        return {refusal(where, step ? "the step does not ask that" : "no such step",
                        fmt::format("a question of a step of {}", frame.id.text))};
    Errors errors;
    if (isBlank(event.by) && !state.person)
        errors.push_back(refusal(where + "/by", "no name", "the name of the person who answers"));
    if (isBlank(event.answer))
        errors.push_back(refusal(where + "/answer", "nothing", "an answer"));
    else if (const std::string allowed = allowedAnswer(*question, event); !allowed.empty())
        errors.push_back(refusal(where + "/answer", foundIn(event), allowed));
    return errors;
}

Errors refusalOfCondition(const Build& build, const ConditionStated& event) {
    Errors errors = refusalOfEmptySeat(build, event.seat);
    const auto named = [&](const Named<std::string_view>& each) { return each.name == event.state; };
    if (std::ranges::none_of(kConditionNames, named))
        errors.push_back(refusal(event.seat.text + "/state", fmt::format("\"{}\"", event.state),
                                 "new, oiled, greased, coated or dry"));
    return errors;
}

Errors refusalOfCaution(const Frame& frame, const CautionAcknowledged& event) {
    if (std::ranges::find(frame.cautions, event.caution, &Caution::id) != frame.cautions.end())
        return {};
    return {refusal(event.caution, "no such caution", fmt::format("a caution of {}", frame.id.text))};
}

Errors refusalOfPerson(const PersonCame& event) {
    if (!isBlank(event.name))
        return {};
    return {refusal("name", "nothing", "the name of the person who works from here on")};
}

Errors refusalOfNote(const NoteWritten& event) {
    if (!isBlank(event.words))
        return {};
    return {refusal("note", "nothing", "words")};
}

} // namespace gapwise
