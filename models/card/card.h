#pragma once

#include "models/check/check.h"
#include "models/frame/frame.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gapwise {

/// The card of a part: what it is, how it must sit and why, what it is treated with, what can hurt, what is
/// measured and tightened at it. A plain value of what the frame says, formatted for no screen.

/// A step by id and title; empty where there is none.
struct CardStep {
    StepId id{};
    std::string title{};
    bool empty() const { return id.empty(); }
    bool operator==(const CardStep&) const = default;
};

/// Where something on a part points.
struct DemandedClock {
    PartId of{};
    std::string what{};  ///< `gap`, `notch`, `TOP mark`; or the name of a feature, such as a dowel hole.
    bool isIndex = true; ///< It is the part's index, not another feature.
    Clock target = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    Degrees tolerance{0.0};
    std::optional<Side> printedFrom{}; ///< The side that the sheet prints; nothing where it prints none.
    std::string on{};                  ///< The pin or dowel that it lies over, or empty.
};

/// Which way the reference face looks.
struct DemandedFace {
    FaceKind kind = FaceKind::None;
    Side looks = Side::Compressor;
    std::optional<PartId> toward{}; ///< The part that the sheet names instead of a side.
};

/// The angle between the indices of several parts.
struct DemandedApart {
    Degrees apart{0.0}; ///< 0: in one line.
    Degrees tolerance{0.0};
};

/// A feature that the whole gap must clear.
struct DemandedClear {
    FeatureId feature{};
    std::string name{};          ///< `spill slot CO`; its id where it has no name.
    std::optional<Clock> at{};   ///< Its middle, where it lies in the housing.
    Degrees margin{0.0};         ///< From its edge to the end of the ring.
    Degrees betweenMiddles{0.0}; ///< From its middle to the middle of the gap.
};

/// A joint, or that the part is in its place and fully home.
struct DemandedFact {
    std::string what{};
};

using Demanded = std::variant<DemandedFact, DemandedClock, DemandedFace, DemandedApart, DemandedClear>;

/// One rule that speaks of the part.
struct CardDemand {
    RuleId rule{};
    std::string kind{};    ///< `gap_clock`, `face`, … as in frame files.
    std::string printed{}; ///< As the sheet words it.
    Demanded demanded{};
    std::vector<PartId> with{}; ///< The other parts that the rule speaks of.
    int severity = 3;           ///< 1 … 4.
    std::string reason{};       ///< What goes wrong otherwise.
    CardStep lastLook{};        ///< The last step at which it can be judged by eye.
    std::string source{};
    std::string tradeId{}; ///< `O02`, or empty.
};

/// A caution with the steps at which it is shown.
struct CardCaution {
    std::string id{};
    Signal signal = Signal::Caution;
    std::string words{};
    std::vector<CardStep> steps{};
    std::string source{};
};

struct CardMeasurement {
    MeasurementId id{};
    std::string name{};
    std::string where{};
    CardStep step{};
};

/// A set of screws, or a nut, that the part is one of or that holds it.
struct CardFastener {
    enum class Role { PartIsOneOf, HoldsPart };
    Role role = Role::HoldsPart;
    FastenerId id{};
    std::string name{};
    std::string size{};
    bool tightensClockwise = true;
    Side seenFrom = Side::Compressor;
    CardStep step{};
    std::vector<PartId> pieces{};    ///< All of the set that the frame has.
    std::vector<std::string> sets{}; ///< The same in short: `T2 × 6`, `W2 × 6`.
    std::vector<PartId> holds{};
};

struct PartCard {
    PartId id{};
    std::string name{};
    std::string setName{}; ///< `T2 × 6` for a piece of a set, else its id.
    PartTypeId type{};
    std::string typeName{};
    std::string tradeId{}; ///< `P12`, or empty.
    std::string function{};
    std::string material{};
    double massKg = 0.0;
    IndexKind index = IndexKind::None;
    FaceKind face = FaceKind::None;
    bool casing = false;
    CardStep placedIn{}; ///< The step that places it.
    std::optional<Side> entersFrom{};
    CardStep hiddenBy{}; ///< The step after which it can no longer be looked at; empty: nothing hides it.
    std::vector<CardDemand> demands{};
    /// The directions of the index that all rules allow together, as from the compressor side; the whole
    /// circle where no rule speaks of one.
    Arcs allowed = Arcs::whole();
    std::optional<Lubricant> lubricant{};
    std::vector<CardCaution> cautions{}; ///< The gravest first.
    std::vector<CardMeasurement> measurements{};
    std::vector<CardFastener> fasteners{};
    std::vector<std::string> orientations{}; ///< Of the trade's list that its rules are about: `O01`, `O02`.
    std::vector<WithoutRule> withoutRule{};  ///< Of that list, what this frame has no rule for, and why.
};

/// The card of a part of the frame (of its own seat, wherever the piece lies now).
PartCard partCardOf(const Frame& frame, const PartId& part);

/// What is to be seen of a part that sits right, from one side with the inlet on top.
struct RightSight {
    std::string_view face{};        ///< `sharp`; empty where both faces are alike or no rule says.
    bool referenceFace = true;      ///< Whether that is the reference face.
    std::optional<Degrees> clock{}; ///< Of its index, by the narrowest rule about it.
    Degrees tolerance{0.0};
};
RightSight rightSightOf(const PartCard& card, Side eye);

} // namespace gapwise
