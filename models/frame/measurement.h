#pragma once

#include "geometry/datum/side.h"
#include "models/frame/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// The unit in which a quantity is read, kept and shown.
enum class Unit { Millimetres, Degrees, GramMillimetres };

/// `mm`, `deg`, `g_mm`: as in files.
std::string_view nameOf(Unit unit);
/// `mm`, `°`, `g·mm`: as people read it.
std::string_view symbolOf(Unit unit);

/// Where a value may lie, both ends included. A missing end is open.
struct Window {
    std::optional<double> least{};
    std::optional<double> most{};

    bool empty() const { return !least && !most; }
    bool holds(double value) const { return (!least || value >= *least) && (!most || value <= *most); }
};

/// How a value is held against a limit. The rule belongs to the limit.
enum class LimitRule {
    AsPrinted, ///< Plain comparison; where value ± U straddles the limit, *close to the limit* is said.
    Guarded    ///< ISO 14253-1: U is a guard band; what straddles the limit is *not proven*.
};

/// The bands of one quantity, with what they are for.
struct Limits {
    Window fresh{};   ///< What new parts give, or what is demanded after assembly.
    Window service{}; ///< Beyond this nothing is used again; between the two a person decides.
    LimitRule rule = LimitRule::AsPrinted;
    std::string method{}; ///< Id of the method that the limit is for.
    std::string source{}; ///< Sheet and revision, or that it is invented.
};

/// A way of reading: where and how. A number without it is no clearance.
struct Method {
    std::string id{};                  ///< `push-pull`
    std::string words{};               ///< `dial on the shaft end, pushed and pulled, held 3 to 5 s`
    std::vector<std::string> gauges{}; ///< Kinds of instrument that it can be done with.
    std::string blind{}; ///< What it cannot see: `a flat anvil bridges a worn track`; may be empty.
};

/// Which of the values of a reading is held against the limits.
enum class Takes { Mean, Least, Most, Range };

/// A quantity with a sign.
struct Term {
    QuantityId of{};
    int sign = 1; ///< +1 or −1.
};

/// Two quantities that must agree: the difference of nose depths and the axial clearance.
struct Agreement {
    QuantityId with{};
    double withinMm = 0.0;
};

/// What kind of change is expected from before to after, and of what it follows.
enum class Direction { Down, Up };
struct Expectation {
    std::vector<PartId> renewed{}; ///< Any of these parts was renewed …
    std::string work{};            ///< … or this was done: `deposits_removed_turbine`.
    Direction direction = Direction::Down;
};

/// Feeler gaps at 12, 3, 6 and 9 as seen from one side, at a plane outboard of that side's bearing.
struct FourPointPlan {
    Side seenFrom = Side::Compressor;
    double outboardMm = 0.0;       ///< From the middle of the bearing of that side to the plane.
    double eccentricityMost = 0.0; ///< Of the casing, after the sag of the resting rotor is taken off.
    double pointLeast = 0.0;       ///< Each single gap is at least this.
    double consistencyMost = 0.0;  ///< |(12 + 6) − (3 + 9)|.
};

/// Residual unbalance by ISO 21940-11, split over two planes on the datum's Z.
struct UnbalancePlan {
    double grade = 0.0; ///< mm/s
    double speedRpm = 0.0;
    double massKg = 0.0;
    double centreMm = 0.0;          ///< Station of the centre of gravity.
    double compressorPlaneMm = 0.0; ///< Stations of the two balancing planes.
    double turbinePlaneMm = 0.0;
};

/// The gap between the ends of a seal ring, and what heat does to it.
struct RingGapPlan {
    double boreMm = 0.0;
    double ringPerK = 0.0; ///< Linear expansion.
    double borePerK = 0.0;
    double ringRiseK = 0.0; ///< Above 20 °C when running.
    double boreRiseK = 0.0;
};

/// How far a pinned bush turns: the notch is wider than the pin.
struct PinPlayPlan {
    double notchMm = 0.0;
    double pinMm = 0.0;
    double radiusMm = 0.0; ///< Where the notch meets the pin.
};

/// One number that a measurement gives: of a part, or of the assembly.
struct Quantity {
    QuantityId id{};
    std::string name{}; ///< `journal of the compressor bearing`
    PartId part{};      ///< Whose; empty for one of the assembly.
    Unit unit = Unit::Millimetres;
    /// Names of the places, in the order read (`plane 1, 0°`); a reading may hold them several times over.
    /// Empty: repeats of one place.
    std::vector<std::string> points{};
    int planes = 0; ///< The points are planes × directions of a diameter: ovality and taper are told.
    Takes takes = Takes::Mean;
    std::optional<double>
        expected{}; ///< Drawing size or usual value; a dimension of the same id has its own.
    std::optional<double> spreadMost{}; ///< Repeats that lie further apart are read again.
    std::optional<double> ovalityMost{};
    std::optional<double> taperMost{};
    Limits limits{};
    std::vector<Term> from{}; ///< Reckoned from other quantities where nobody read it itself.
    std::optional<Agreement> agrees{};
    std::vector<Expectation> expectations{};
    std::optional<FourPointPlan> fourPoint{};
    std::optional<UnbalancePlan> unbalance{};
    std::optional<RingGapPlan> ringGap{};
    std::optional<PinPlayPlan> pinPlay{};
    std::string pointer{};
};

/// Something that is measured: its name and place, how, and the quantities that come of it.
struct Measurement {
    MeasurementId id{};
    std::string name{};
    std::string where{};            ///< Where and how: `at the nose, rocked up and down`.
    std::string instrument{};       ///< With its resolution: `outside micrometer, 0.001 mm`; may be empty.
    StepId step{};                  ///< The step at which it is read.
    std::optional<StepId> before{}; ///< The step of the strip-down at which it is read before, if it is.
    std::vector<PartId> parts{};    ///< The parts that it judges.
    bool required = false;          ///< The step is not done without it.
    std::vector<Method> methods{};
    std::vector<Quantity> quantities{}; ///< Empty: judged by eye, with a condition word and no number.
    std::string pointer{};

    const Quantity* quantity(const QuantityId& id) const;
    const Method* method(std::string_view id) const;
};

} // namespace gapwise
