#pragma once

#include "viewer/workplace/workplace.h"

#include <string>
#include <string_view>

namespace gapwise {

struct Drafts;

/// The page of the card that asks this question: the page of the list for an item of it.
std::string tabOfQuestion(std::string_view question);

/// Whether it keeps a step from being called done; who only shows the work needs no more than its parts.
bool stops(const Job& job, const Missing& missing);

/// How many things speak against calling a step done: what it waits for, what is missing, what it hides.
std::size_t openPointsOf(const Job& job, const StepId& step);

/// Whether one of them keeps it from being called done at all.
bool stopsDoing(const Job& job, const StepId& step);

/// The next wish of who goes on by foot switch: the step of the card that is open is done when nothing speaks
/// against it, then the card of the next one opens; what is open is shown otherwise.
std::optional<Wish> stepOn(const Job& job, Drafts& drafts);

/// The card of the step before the one that is open; of the one done last where none is.
std::optional<Wish> stepBack(const Job& job, Drafts& drafts);

} // namespace gapwise
