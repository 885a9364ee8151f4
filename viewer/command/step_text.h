#pragma once

#include "models/frame/frame.h"

#include <string>

namespace gapwise {

/// What `gapwise frame show --step` prints: the whole card of one step, with the fasteners, cautions and
/// measurements that belong to it.
std::string stepAsText(const Frame& frame, const Step& step);

/// A fastener in lines of text: size, hand, torque, stages and pattern or run-down, lubrication, locking,
/// source.
std::string fastenerText(const Fastener& fastener);

/// `may be skipped`, `holds the rotor`, …: what else is to be known of a step, in a row; may be empty.
std::string stepNotesOf(const Step& step);

} // namespace gapwise
