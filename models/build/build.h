#pragma once

#include "geometry/datum/datum.h"
#include "models/frame/ids.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace gapwise {

/// Who said what he sees, and whether he said it before or after the demand was shown.
struct Confirmation {
    enum class Said { Before, After };
    std::string by{};
    Said said = Said::Before;
};

/// A part in its seat. What is absent is not known.
struct Seating {
    PartId part{};
    SeatId seat{};
    /// Where the index points, relative to the top of what carries the part at this moment.
    std::optional<Clock> index{};
    std::optional<Side> referenceFaceLooks{};
    std::optional<bool> home{};
    std::vector<std::string> conditions{};
    std::optional<View> setIn{}; ///< The view in which the part was last set.
    std::optional<Confirmation> confirmed{};
    std::string pointer{}; ///< In the build sheet: `/seatings/3`.
};

struct TorqueNote {
    std::string fastener{};
    std::optional<double> torqueNm{};
    std::optional<bool> clockwise{};
    std::optional<Side> seenFrom{};
    std::optional<Degrees> angle{};
};

struct Reading {
    std::string measurement{};
    std::vector<double> values{};
    std::string unit{};
    std::string method{};
    std::string instrument{};
};

/// The state of one cartridge, as a build sheet says it.
struct Build {
    std::string frame{}; ///< Id of a bundled frame, or a path.
    std::optional<Attitude> attitude{};
    Degrees rotor{0.0}; ///< Turn of the rotor mark, clockwise from the compressor side.
    /// Whether the rotor was let down into the housing from above; not known before it is in.
    std::optional<bool> rotorLoweredIn{};
    std::vector<Seating> seatings{};
    std::vector<StepId> stepsDone{}; ///< In the order done.
    std::vector<TorqueNote> torques{};
    std::vector<Reading> readings{};

    const Seating* in(const SeatId& seat) const;
    const Seating* of(const PartId& part) const;
    bool done(const StepId& step) const;
};

} // namespace gapwise
