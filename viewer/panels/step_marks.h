#pragma once

#include "viewer/dial/dial_state.h"
#include "viewer/workplace/procedure_now.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// The procedure as marks on a line.

enum class MarkState {
    Done,
    Next,     ///< Of those that are possible now the one that leads.
    Possible, ///< Everything that it needs is settled.
    Later,    ///< It waits for others.
    Skipped,
    NotNeeded
};

/// A seating that can be looked at for the last time before a step.
struct LastLook {
    SeatId seat{};
    PartId part{};
    DialState state{};
    bool finished = false;     ///< It holds and was confirmed.
    std::string unfinished{};  ///< Why it is not: see unfinishedWord.
    std::size_t stepsLeft = 0; ///< Until it goes out of sight; 0 once it has, too.
};

struct StepMark {
    StepId id{};
    std::string label{}; ///< The parts it places, or the first words of its title.
    std::string title{};
    MarkState state = MarkState::Later;
    bool holdPoint = false;
    bool reopened = false;             ///< It was done, and is open again.
    std::vector<LastLook> lastLooks{}; ///< What it hides.
};
std::vector<StepMark> stepMarksOf(const Job& job);

/// The mark that is Next; nothing when nothing is possible.
std::optional<std::size_t> nextMarkOf(const std::vector<StepMark>& marks);

/// The state in a word: `done`, `possible now`, `open again`, …
std::string_view wordOf(const StepMark& mark);

/// `turbine end up, looked at from the turbine side`; empty where any way will do.
std::string howOf(const Step& step);

/// `S08 Fit the turbine-end bearing – turbine end up, looked at from the turbine side`.
std::string sentenceOf(const Frame& frame, const StepId& step);

/// `last look, 2 steps left` of what a flag stands for.
std::string countdownOf(const LastLook& look);

/// What keeps a seating from being finished: `wrong`, `not set`, `not confirmed`, …
std::string unfinishedWord(const Job& job, const SeatId& seat, const DialState& state);

/// What a step would hide unfinished: `SR-TI (wrong), BRG-T (not placed)`; empty when nothing.
std::string hidesUnfinished(const StepMark& mark);

/// Parts that steps before the one that places `part` place, and that are in no seat: the nearest first.
std::vector<PartId> partsBefore(const Job& job, const PartId& part);

} // namespace gapwise
