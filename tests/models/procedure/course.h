#pragma once

#include "models/job/log.h"
#include "models/procedure/step_graph.h"

#include <initializer_list>
#include <string>
#include <vector>

namespace gapwise::course {

/// A small invented frame whose steps stand for every kind of edge:
///
///     A –PHY→ B –MEA→ C –ACC→ D*      A –REC→ E* –CLN→ F      C –SAF→ G
///     R (places the rotor) –SAF→ K* (holds it, only when let down) –SAF→ W (only when let down)   R –MEA→ W
///     N stands for K;  D, F –REC→ Z, which closes the record         * = hold point
///
/// F1 is tightened at B, F2 (run down, left hand) at C.
Frame smallFrame();

/// One of the bundled frames; the test fails when it cannot be read.
Frame bundled(const std::string& id);

/// The ids, joined by blanks.
std::string text(const std::vector<StepId>& steps);

/// A state whose steps were done in this order.
JobState after(std::initializer_list<const char*> steps);

/// All that a frame's steps need, done in the frame's order, but for what does not apply.
Build allDone(const Frame& frame);

} // namespace gapwise::course
