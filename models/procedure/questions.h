#pragma once

#include "models/job/log.h"

#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What is answered: a tick, words, a day, a count, a number with a unit, one of a few words, or the nut line
/// (which has an event of its own).
enum class AnswerKind { Tick, Words, Day, Count, Number, Choice, NutLine };

/// Something that a step asks, as it is put to the person.
struct Question {
    std::string name{};  ///< As in `Answered::question`: `variant`, `pick-3`, `gauge-1`, `witness-2`, …
    std::string words{}; ///< `How high is the block under the piece?`
    AnswerKind kind = AnswerKind::Words;
    std::string unit{};                 ///< Of a number: `mm`, `N·m`.
    std::vector<std::string> choices{}; ///< What an answer may be; empty: anything.
    bool needed = true; ///< False: what is looked at, felt or heard; a step may be done without the tick.
};

/// Everything that a step asks, in the order in which its card shows it: its questions, of a list each item,
/// then its witness checks.
std::vector<Question> questionsOf(const Frame& frame, const Step& step);

/// Whether it stands answered in a job.
bool isAnswered(const JobState& state, const StepId& step, const Question& question);

} // namespace gapwise
