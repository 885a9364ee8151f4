#pragma once

#include "models/job/log.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

enum class StageKind { Draw, CheckPass, Seat, Slacken, Snug, Final };

/// One stage of a torque plan.
struct Stage {
    StageKind kind = StageKind::Draw;
    std::string name{};       ///< `60 %`, `once more round, clockwise`, `seat`, `slacken`, `snug`, `final`.
    double torqueNm = 0.0;    ///< 0 for slackening.
    bool clockwise = true;    ///< Which way the wrench turns, as seen from the fastener's `handSeenFrom`.
    std::vector<int> order{}; ///< The screws of a group in the order in which they are tightened.
};

/// What is written down of a fastener at its final torque; null while nothing is.
const TorqueNote* noteOf(const Build& build, const Fastener& fastener);

/// The stages of a fastener; empty for one without a plan.
std::vector<Stage> stagesOf(const Fastener& fastener);

/// The screw that comes next.
struct NextScrew {
    std::size_t stage = 0;
    int group = 0;
    int screw = 1;
};

/// How many groups of screws a fastener has; 0 for one without a plan.
int groupsOf(const Fastener& fastener);

/// Every screw of a group at every stage, in the order in which it comes.
std::vector<NextScrew> screwsInOrder(const Fastener& fastener, int group);

/// What comes next in one group: flanges of their own may be tightened in any order, a flange only in its
/// pattern. Nothing when it is at its last stage or its final torque is
/// written down.
std::optional<NextScrew> nextIn(const Fastener& fastener, int group, const JobState& state);

/// How far the tightening of a fastener has come.
struct Tightening {
    std::optional<NextScrew> next{}; ///< Nothing when it is at its last stage.
    std::size_t done = 0;            ///< Screws brought to the torque of a stage …
    std::size_t all = 0;             ///< … of so many.
};
Tightening tighteningOf(const Fastener& fastener, const JobState& state);

/// What is recorded of a screw that is tightened as planned. The stage must be one of the fastener's.
Tightened plannedAt(const Fastener& fastener, const NextScrew& screw);

/// What the next press of `tightened` records: torque and sense as planned.
std::optional<Tightened> nextTightened(const Fastener& fastener, const JobState& state);

} // namespace gapwise
