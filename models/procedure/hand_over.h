#pragma once

#include "models/check/check.h"
#include "models/job/log.h"
#include "models/procedure/step_graph.h"

#include <string>
#include <vector>

namespace gapwise {

/// An act in words: `R. Ohlin: SR-CO confirmed, gap at 9:00 seen from the compressor side`.
std::string wordsOf(const Frame& frame, const Event& event);

/// The slip for the next shift: how the piece lies, what was done last, what comes, what to beware of.
struct HandOver {
    std::string frame{};
    std::string attitude{}; ///< Which end is up, where the drain points, whether that was confirmed.
    std::vector<std::string> lastActs{}; ///< At most three, the last first.
    std::vector<std::string> possible{}; ///< Steps that can be done now.
    std::string nextHoldPoint{};         ///< Empty: none is left.
    std::vector<std::string> beware{}; ///< Loose rotor, tightening half done, looks that end next, findings.
    std::vector<std::string> apart{};  ///< Sub-assemblies on the bench that are not in the housing yet.
    std::string person{};              ///< Who worked last.
};
HandOver handOverOf(const StepGraph& graph, const Log& log, const JobState& state, const Checked& checked);

/// Every doing of a step that is in the log, also those that do not stand any more: the first attempt stays.
struct Attempt {
    StepId step{};
    std::size_t event = 0; ///< Index into `log.events`.
    bool stands = false;
    std::string words{};
};
std::vector<Attempt> attemptsOf(const Frame& frame, const Log& log, const StepId& step);

} // namespace gapwise
