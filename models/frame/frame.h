#pragma once

#include "geometry/datum/vector.h"
#include "geometry/shape/shape.h"
#include "models/frame/chain.h"
#include "models/frame/ids.h"
#include "models/frame/measurement.h"
#include "models/frame/rule.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What a part's index is: what its clock speaks of.
enum class IndexKind { None, Gap, Notch, TopMark, Opening, Arrow, MatchMark };

/// As it stands in a sentence: `gap`, `notch`, `TOP mark`; `index` for a part that has none.
std::string_view wordOf(IndexKind index);

/// How a part type's reference face is told from the other one. `None`: both faces are alike.
enum class FaceKind { None, Rounded, Marked, EndMark, Running, Chamfered, Dished };

/// What is put on a part before it goes in, and what never.
struct Lubricant {
    std::string use{}; ///< `clean engine oil, inside and outside`, or `none: seat faces dry and wiped clean`.
    std::string never{}; ///< `grease, paste with solids`; may be empty.
};

/// What can be bought. Pieces of one type are alike; its shape and mass are theirs.
struct PartType {
    PartTypeId id{};
    std::string name{};
    std::string function{};
    std::string material{};
    double densityGPerCm3 = 0.0;
    double massKg = 0.0; ///< As the parts list states it.
    IndexKind index = IndexKind::None;
    FaceKind face = FaceKind::None; ///< What the reference face is called.
    std::optional<Joint> joint{};   ///< Of a seal ring.
    std::optional<double> gapMm{};  ///< Width of the gap as seated.
    std::string tint{}; ///< `housing`, `steel`, `bronze`, `ring`, `aluminium`, `hot`, …: how it is drawn.
    std::optional<Lubricant> lubricant{};
    std::optional<double> expansionPerK{}; ///< Linear, near 20 °C.
    Shape shape{};
    std::string pointer{};
};

/// One piece of a type.
struct Part {
    PartId id{};
    std::string name{};
    PartTypeId type{};
    std::string tradeId{};
    std::optional<FastenerId> fastener{}; ///< The set of screws, washers or nuts that it is one of.
    bool casing = false;                  ///< Not of the cartridge: out of sight until it is placed.
    bool invented = true;
    std::string pointer{};
};

/// Where the axis of a seat stands off the shaft.
struct Aside {
    double radiusMm = 0.0;
    Clock clock = Clock::seenFrom(Side::Compressor, Degrees{0.0});
};

/// The groove of a ring's seat, in the datum axes of the part that has it.
struct RingGroove {
    double boreMm = 0.0; ///< Diameter of the bore that the groove is cut into.
    Span z{};
};

/// What carries the part in a seat from some moment on.
struct Carrier {
    PartId part{};
    std::optional<StepId> onceStep{}; ///< From this step on …
    std::vector<PartId>
        onceSeated{}; ///< … or as soon as all these parts are in their seats. Neither: from the start.
};

/// A place for a piece.
struct Seat {
    SeatId id{};
    std::vector<PartTypeId> types{}; ///< Any part of one of these types fits.
    std::vector<Carrier> carriers{}; ///< In the order of time; empty only for the housing.
    double zMm = 0.0;                ///< Where the part's origin lies, in the assembled cartridge.
    std::optional<Aside> aside{};    ///< A screw's hole; most seats lie on the shaft's axis.
    std::optional<RingGroove> groove{};
    std::optional<Clock>
        fixedIndex{};        ///< Where the seat itself sets the clock: a pin in its hole, the housing.
    bool reversible = false; ///< Either way round is right: no face rule.
    std::optional<Side> entersFrom{}; ///< The end from which the part goes in; nothing for the housing.
    std::string pointer{};
};

enum class StepAttitude { Any, CompressorUp, TurbineUp, Level, Bench };
enum class StepView { Any, Compressor, Turbine, Beside };

/// When a step, or what comes between two steps, applies at all.
enum class OnlyWhen {
    Always,
    RotorLoweredIn ///< The rotor was let down into the housing from above, turbine end up.
};

/// Why one step needs another.
struct Precedence {
    StepId step{};
    std::string reason{}; ///< PHY, ACC, MEA, CLN, SAF or REC.
    std::string why{};
    OnlyWhen when = OnlyWhen::Always;
};

/// What goes where before a step, and what never.
struct LubricantPoint {
    std::string where{};
    std::string use{};
    std::string never{}; ///< May be empty.
};

/// What a step uses up: it is new at every assembly.
struct Consumable {
    std::string name{};
    int quantity = 1;
};

/// What is looked at, felt or heard before a step is called done.
struct WitnessCheck {
    std::string look{}; ///< `ring seated`
    std::string good{}; ///< `gap at its seated width, the probe runs in the groove all round`
    std::string bad{};  ///< What it tells otherwise; may be empty.
};

/// What a person must have said before a step is called done.
enum class StepQuestion {
    Variant,     ///< Which bearing it is, in the hand.
    PickList,    ///< Every consumable of the frame lies there, in its quantity.
    Gauges,      ///< Every instrument of the plan, and the day until which it is calibrated.
    CountIn,     ///< How many blanks, rags and loose tools lie on the bench.
    CountOut,    ///< How many there are at the end: the same number.
    BlockHeight, ///< How high the block under the piece is, in millimetres.
    Retention,   ///< What holds the rotor while the piece is turned over.
    DragTorque,  ///< The torque that turns the nut before it seats, in newton-metres.
    NutLine      ///< How far the nut stands from its old line (see `NutLineRead`).
};

struct Step {
    StepId id{};
    std::string title{};
    std::vector<Precedence> after{};
    std::vector<StepAttitude> attitudes{}; ///< Any of them will do.
    StepView view = StepView::Any;
    std::vector<PartId> places{};
    std::vector<SeatId> hides{}; ///< After this step these seatings can no longer be checked by eye.
    bool holdPoint = false;
    OnlyWhen when = OnlyWhen::Always;
    bool maySkip = false;            ///< With a reason that stays in the record.
    bool holdsRotor = false;         ///< From this step on something holds the rotor in the housing.
    bool closesRecord = false;       ///< The last one: release, or of a practice frame the practice record.
    std::vector<StepId> standsFor{}; ///< Steps that are not needed once this one is done.
    std::vector<std::string> acts{}; ///< What to do, one sentence an act.
    std::vector<LubricantPoint> lubricants{};
    std::vector<std::string> tools{};
    std::vector<Consumable> consumables{};
    std::vector<WitnessCheck> witness{};
    std::vector<std::string> records{}; ///< What is written down.
    std::vector<StepQuestion> asks{};
    std::string pointer{};
};

/// How grave a hazard is: the signal words of ANSI Z535.4 with their meanings there (death or serious injury
/// will, or could, follow; minor injury could; no injury, but damage).
enum class Signal { Danger, Warning, Caution, Notice };

/// `DANGER`, `WARNING`, `CAUTION`, `NOTICE`.
std::string_view signalWordOf(Signal signal);

/// What can hurt someone or spoil the work, shown before the act.
struct Caution {
    std::string id{};
    Signal signal = Signal::Caution;
    std::string words{};         ///< The hazard and how to keep clear of it.
    std::vector<StepId> steps{}; ///< Where it is shown.
    std::vector<PartId> parts{}; ///< Whose cards show it.
    std::string source{};
    std::string pointer{};
};

/// What keeps a fastener from backing out; whatever it is, it is new at every assembly.
enum class Locking { None, SpringWasher, Tab, ThreadLock, ThreadLockAndTab };

/// Screws on one flange, numbered clockwise from 12 on, as the person sees them who tightens them.
struct ScrewGroup {
    std::string name{}; ///< `oil inlet`; may be empty where there is only one.
    int count = 1;
};

/// How a shaft nut is run down: seated, slackened, made snug, then turned to its final torque, with the angle
/// of that last turn.
struct RunDown {
    double seatNm = 0.0;
    double snugNm = 0.0;
    double dragMostNm = 0.0; ///< A nut that needs more than this before it seats picks up in its thread.
    Degrees leastAngle{0.0};
    Degrees mostAngle{0.0};
    double torqueFactor = 0.0;     ///< K of T = K·d·F.
    double stiffnessKnPerMm = 0.0; ///< Of the shaft and what it clamps.
    double stemDiameterMm = 0.0;   ///< Where the shaft is thinnest.
};

/// How far a nut may stand from the line drawn before it was taken off, the expected shift taken off.
struct NutLineLimits {
    Degrees agrees{0.0};
    Degrees small{0.0};
    std::vector<PartId> stack{}; ///< What it clamps: its change of length shifts the nut.
};

/// How a fastener is tightened.
struct TorquePlan {
    std::string thread{};         ///< `M5`, `M8x1-LH`: without a pitch the coarse one.
    std::string propertyClass{};  ///< ISO 898-1: `8.8`; for a shaft the class that its stem is nearest to.
    double lengthMm = 0.0;        ///< Of a screw, under its head; 0 for a nut.
    double torqueNm = 0.0;        ///< At the end.
    std::string lubrication{};    ///< State of thread and face that the torque is stated for.
    bool lubricatedValue = false; ///< The torque is already the reduced one for a lubricated thread.
    Locking locking = Locking::None;
    std::vector<double> stagesPercent{}; ///< Of `torqueNm`, rising to 100; empty for a nut that is run down.
    std::vector<int> pattern{};          ///< The order in which the screws of a group are tightened.
    bool checkPass = false;              ///< At the end once more round, clockwise, at the full torque.
    double frictionThread = 0.0;
    double frictionHead = 0.0;
    double headDiameterMm = 0.0;      ///< Mean diameter of the friction under head or nut.
    std::vector<ScrewGroup> groups{}; ///< At least one.
    std::optional<RunDown> runDown{};
    std::optional<NutLineLimits> nutLine{};
    std::string check{};  ///< What is looked at afterwards.
    std::string source{}; ///< Sheet and revision, or that it is invented.
};

/// A set of screws, or the shaft nut, that is tightened together.
struct Fastener {
    FastenerId id{};
    std::string name{}; ///< `screws of the seal plate`
    std::string size{}; ///< `6 × M6×20`
    bool tightensClockwise = true;
    Side handSeenFrom = Side::Compressor;
    StepId step{};
    std::vector<PartId> parts{}; ///< What it holds; the pieces themselves name it as their fastener.
    std::optional<TorquePlan> plan{};
    std::string pointer{};
};

/// What the workpiece stands on with one end up: a machined face over a block with an open middle.
struct Rest {
    Side up = Side::Turbine;   ///< The end that is up.
    double faceMm = 0.0;       ///< Station of the face that lies on the block, in the assembled cartridge.
    double clearanceMm = 20.0; ///< Free under the lowest thing that reaches through.
    std::string pointer{};
};

/// Two parts whose solids share material when assembled: a press fit, a thread drawn as its cylinder.
struct SharedMaterial {
    PartId first{};
    PartId second{};
    std::string why{};
    std::string pointer{};
};

/// An orientation that the trade knows and this frame has no rule for, with the reason.
struct WithoutRule {
    std::string tradeId{}; ///< `O06`
    std::string why{};
    std::string pointer{};
};

enum class Purpose { Practice, Work };

/// A size of turbocharger in one bearing variant: everything that a frame file says.
struct Frame {
    FrameId id{};
    std::string name{};
    std::string size{};
    std::string variant{};           ///< `full_floating` or `pinned`.
    std::optional<FrameId> sister{}; ///< The same size in the other bearing variant.
    Purpose purpose = Purpose::Practice;
    std::string sheet{};    ///< Where the numbers come from …
    std::string revision{}; ///< … and in which revision.
    Side rotationSeenFrom = Side::Compressor;
    bool rotatesClockwise = true;
    PartId housing{}; ///< The part that carries the datum.
    PartId rotor{};   ///< The part whose turn `rotor_deg` is.
    std::vector<PartType> types{};
    std::vector<Part> parts{};
    std::vector<Seat> seats{};
    std::vector<Rule> rules{};
    std::vector<Step> steps{};
    std::vector<Caution> cautions{};
    std::vector<Measurement> measurements{};
    std::vector<Dimension> dimensions{};
    std::vector<Contact> contacts{};
    std::vector<Chain> chains{};
    std::vector<Change> changes{};
    std::vector<Selector> selectors{};
    std::optional<LeverPlan> lever{};
    std::vector<Fastener> fasteners{};
    std::vector<Rest> rests{};
    std::vector<SharedMaterial> sharedMaterial{};
    std::vector<WithoutRule> withoutRule{};

    const PartType* type(const PartTypeId& id) const;
    const Part* part(const PartId& id) const;
    const PartType* typeOf(const PartId& id) const;
    const Seat* seat(const SeatId& id) const;
    const Rule* rule(const RuleId& id) const;
    const Step* step(const StepId& id) const;
    const Fastener* fastener(const FastenerId& id) const;
    const Measurement* measurement(const MeasurementId& id) const;
    const Dimension* dimension(const QuantityId& id) const;
    const Chain* chain(const QuantityId& id) const;
    std::optional<std::size_t> stepIndex(const StepId& id) const;

    struct FoundFeature {
        const PartType* type = nullptr;
        const Feature* feature = nullptr;
    };
    struct FoundQuantity {
        const Measurement* measurement = nullptr;
        const Quantity* quantity = nullptr;
    };
    /// The quantity with this id of any measurement; both null when nothing measures it.
    FoundQuantity quantity(const QuantityId& id) const;
    /// The feature with this id on any part type; both null when there is none.
    FoundFeature feature(const FeatureId& id) const;
    /// A part (the first) that has this feature.
    const Part* partWithFeature(const FeatureId& id) const;
};

/// Where a part that sits in this seat has its origin off the shaft: zero for most.
Vec3 asideOf(const Seat& seat);

/// The step after which the seat can no longer be looked at; null when nothing hides it.
const Step* hidingStepOf(const Frame& frame, const SeatId& seat);

} // namespace gapwise
