#pragma once

#include "geometry/datum/datum.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// A dial in space around a ring: the circle, its hours, the demanded windows, the gap. All points in the
/// datum axes, mm.
struct RingDial {
    struct Hour {
        int hour = 12;
        Vec3 at{};
    };
    std::vector<std::vector<Vec3>> circle{};  ///< The circle and a stroke at each hour, as lines.
    std::vector<std::vector<Vec3>> windows{}; ///< One line each.
    std::vector<Vec3> gap{};   ///< From the ring to the circle; empty when the clock is not known.
    std::vector<Hour> hours{}; ///< 12, 3, 6 and 9.
    std::string top{};         ///< What stands at 12.
};

/// What a dial is drawn for. Clocks are those of the datum; the hours run as seen from `seenFrom`, from the
/// top of what carries the ring.
struct RingDialOf {
    double zMm = 0.0;
    double ringRadiusMm = 10.0;
    Side seenFrom = Side::Compressor;
    Clock top = Clock::seenFrom(Side::Compressor, Degrees{0.0}); ///< Of what carries the ring.
    std::optional<Clock> gap{};
    std::vector<Arc> windows{}; ///< As seen from the compressor side.
    std::string topWord = "inlet";
};

RingDial ringDialOf(const RingDialOf& wanted);

} // namespace gapwise
