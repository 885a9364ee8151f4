#pragma once

#include "geometry/datum/side.h"
#include "models/frame/ids.h"
#include "models/frame/measurement.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// How the pieces of a dimension scatter within its tolerance. Normal: the tolerance is three standard
/// deviations.
enum class Scatter { Normal, Rectangular, Triangular };

/// A size on a drawing: from one station to another, along +Z (lengths) or outward (diameters, from `axis`).
/// Its id is a quantity's where it can be measured: then what was measured counts.
struct Dimension {
    QuantityId id{};    ///< `t_T`
    std::string name{}; ///< `thrust bearing, thickness over the pads`
    PartId part{};
    StationId from{};
    StationId to{};
    double nominalMm = 0.0;   ///< May be negative or 0: where `to` lies from `from`.
    double toleranceMm = 0.0; ///< Either way.
    Scatter scatter = Scatter::Normal;
    std::string pointer{};
};

/// Two stations that touch: always, or when the rotor is pushed to a side.
struct Contact {
    StationId first{};
    StationId second{};
    std::optional<Side> pushedTo{};
    std::string pointer{};
};

/// A clearance as a closed loop: from one station by its links to another. It predicts the quantity of the
/// same id. A diametral chain leads through `axis`.
struct Chain {
    QuantityId id{};    ///< `g_cs_C`
    std::string name{}; ///< `compressor shroud gap, rotor toward the compressor`
    StationId from{};
    StationId to{};
    std::optional<Side> pushedTo{}; ///< Where the rotor is pushed.
    std::vector<Term> links{};      ///< Dimensions, in the order of the way from `from` to `to`.
    Window window{};                ///< For a chain that no measurement has limits for.
    std::string pointer{};
};

/// What a change is: something that ran, something that a person chose, something gone wrong.
enum class ChangeKind { Wear, Choice, Fault };

/// One change in one place, by a length w > 0, as it moves dimensions: wear of collar A is `a_A − w, h_A +
/// w`.
struct Change {
    std::string id{};   ///< `collar-A-worn`
    std::string name{}; ///< `collar A, running face worn`
    ChangeKind kind = ChangeKind::Wear;
    PartId part{};
    std::vector<Term> moves{};
    std::string remedy{}; ///< What to do where it is the cause.
    std::string pointer{};
};

/// A dimension that is chosen from grades so that a chain comes to the middle of its window.
struct Selector {
    QuantityId dimension{}; ///< `L_S`
    QuantityId sets{};      ///< `c`
    PartId part{};
    std::vector<double> gradesMm{}; ///< Rising.
    std::string otherwise{};        ///< What to do where no grade will do.
    std::string pointer{};
};

/// The rotor as a lever on two bearings: distances along the shaft, with the quantities that hang on it.
struct LeverPlan {
    double spanMm = 0.0;    ///< Between the middles of the bearings.
    double noseMm = 0.0;    ///< From the compressor bearing outboard to the dial at the nose.
    double turbineMm = 0.0; ///< From the turbine bearing outboard to the dial at the hub.
    double bearingLengthMm = 0.0;
    QuantityId noseReading{};    ///< `R_n`
    QuantityId turbineReading{}; ///< `R_t`
    QuantityId compressorPlay{}; ///< Chain `D_C`: diametral play that the parts give.
    QuantityId turbinePlay{};    ///< Chain `D_T`.
    std::string pointer{};
};

} // namespace gapwise
