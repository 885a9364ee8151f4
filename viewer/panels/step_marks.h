#pragma once

#include "viewer/dial/dial_state.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// The procedure as marks on a line.

enum class MarkState {
    Done,
    Next,     ///< The first in the sheet's order that is possible now.
    Possible, ///< Everything before it is done.
    Later
};

/// A seating that can be looked at for the last time before a step.
struct LastLook {
    SeatId seat{};
    PartId part{};
    DialState state{};
    bool finished = false; ///< It holds and was confirmed.
};

struct StepMark {
    StepId id{};
    std::string label{}; ///< The parts it places, or the first words of its title.
    std::string title{};
    MarkState state = MarkState::Later;
    bool holdPoint = false;
    std::vector<LastLook> lastLooks{}; ///< What it hides.
    std::vector<StepId> missing{};     ///< Steps that must come before it and are not done.
};
std::vector<StepMark> stepMarksOf(const Job& job);

/// The mark that is Next; nothing when all is done.
std::optional<std::size_t> nextMarkOf(const std::vector<StepMark>& marks);

/// `S08 Fit the turbine-end bearing – turbine end up, looked at from the turbine side`.
std::string sentenceOf(const Frame& frame, const StepId& step);

/// What speaks against doing a step now: `comes after S06 and S07`, `is the end of the last look at SR-TI
/// (wrong)`; empty when nothing does.
std::string warningBefore(const StepMark& mark);

/// Parts that steps before the one that places `part` place, and that are in no seat: the nearest first.
std::vector<PartId> partsBefore(const Job& job, const PartId& part);

/// What a step would hide unfinished: `SR-TI (wrong), BRG-T (not placed)`; empty when nothing.
std::string hidesUnfinished(const StepMark& mark);

} // namespace gapwise
