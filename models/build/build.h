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

/// When a reading was taken: before dismantling, or since.
enum class Occasion { Before, After };

/// The values of one quantity, as they were read, with what makes them a reading: how, with what, by whom.
struct Reading {
    std::string measurement{};
    std::string quantity{}; ///< May be empty where the measurement gives only one.
    Occasion occasion = Occasion::After;
    std::vector<double> values{}; ///< In `unit`, in the order of the quantity's points.
    std::string unit{};
    std::string method{};     ///< Id of one of the measurement's methods; empty: not said.
    std::string instrument{}; ///< Its number; empty: not said.
    std::string by{};
    std::string on{};                          ///< `2026-05-04`; empty: not said.
    std::optional<double> temperatureC{};      ///< Of the part; 20 where nobody said it.
    std::optional<double> gaugeTemperatureC{}; ///< Of the instrument; 20 where nobody said it.
    std::string pointer{};                     ///< In the build sheet: `/readings/3`.
};

/// How a part was found.
enum class PartCondition { AsNew, WornInLimits, WornOut, Damaged, Missing, WrongPart };

/// What becomes of it.
enum class PartFate { Reuse, Renew, Reject };

/// What a person decided about a part on its measurements and looks.
struct PartDecision {
    PartId part{};
    PartCondition condition = PartCondition::AsNew;
    PartFate fate = PartFate::Reuse;
    std::string by{};
    std::string reason{};     ///< Needed for reuse between the new band and the limit.
    std::string cause{};      ///< Suspected, of the shop's list: `dirt in oil`; may be empty.
    std::string concession{}; ///< Its number, for reuse beyond a limit.
};

/// An instrument of the bench.
struct Instrument {
    std::string id{};   ///< Its number: `MIC-07`
    std::string kind{}; ///< `flat_anvil_micrometer`: what methods ask for.
    std::string name{}; ///< `outside micrometer, flat anvils`
    std::string unit{"mm"};
    double resolution = 0.0;
    double uncertainty = 0.0; ///< Expanded, k = 2.
    double least = 0.0;       ///< Range.
    double most = 0.0;
    std::string calibratedUntil{}; ///< `2027-01-31`; empty: not known.
    std::string pointer{};
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
    std::vector<Reading> readings{}; ///< In the order taken: of one quantity and occasion the last counts.
    std::vector<PartDecision> decisions{}; ///< One a part.
    std::vector<std::string> work{};       ///< What was done besides: `deposits_removed_turbine`.
    std::vector<Instrument> instruments{}; ///< Those that the sheet itself names.

    const Seating* in(const SeatId& seat) const;
    const Seating* of(const PartId& part) const;
    bool done(const StepId& step) const;
};

} // namespace gapwise
