#pragma once

#include "geometry/datum/datum.h"
#include "models/frame/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gapwise {

/// The shape of a ring's gap: straight, or stepped (overlapping ends, no straight way through).
enum class Joint { Straight, Stepped };

/// A clock as a rule prints it: the number, the side it is read from with the inlet on top, and its
/// tolerance. Without a side the number is 0 or 180, the same from both.
struct PrintedClock {
    Degrees clock{0.0};
    std::optional<Side> seenFrom{};
    Degrees tolerance{0.0};
};

/// `gap_clock`: the gap of the ring in the seat of `part` points to the printed clock.
struct GapClockRule {
    PartId part{};
    PrintedClock target{};
};

/// `mark`: the index mark of the part in the seat of `part` points to the printed clock.
struct MarkRule {
    PartId part{};
    PrintedClock target{};
};

/// `gaps_apart`: the two gaps are `apart` from each other, unsigned, 0 to 180.
struct GapsApartRule {
    PartId first{};
    PartId second{};
    Degrees apart{180.0};
    Degrees tolerance{0.0};
};

/// `gap_clear_of`: the whole gap arc keeps `margin` from a feature that crosses the ring's groove.
struct GapClearOfRule {
    PartId part{};
    FeatureId feature{};
    Degrees margin{0.0};
};

/// `face`: the reference face of the part looks toward another part or toward a side.
struct FaceRule {
    PartId part{};
    std::variant<PartId, Side> toward{Side::Compressor};
};

/// `joint`: the ring in the seat has the named joint.
struct JointRule {
    SeatId seat{};
    Joint joint = Joint::Straight;
};

/// `seat`: a part of a type that the seat lists is in it, fully home.
struct SeatRule {
    SeatId seat{};
};

/// `match_marks`: the index marks of the parts line up within `tolerance` of the first.
struct MatchMarksRule {
    std::vector<PartId> parts{};
    Degrees tolerance{0.0};
};

/// `engaged`: a feature of the part (its notch, a dowel hole) lies over its pin or dowel within `engage`,
/// half the play.
struct EngagedRule {
    PartId part{};
    std::optional<FeatureId> feature{}; ///< Of the part; without one its index is the notch.
    std::variant<PartId, FeatureId> with{
        PartId{}}; ///< A pin that is a part, or a dowel that is a feature of another part.
    Degrees engage{0.5};
};

/// `hand`: the fastener was tightened in the stated sense, as seen from a side.
struct HandRule {
    FastenerId fastener{};
    PartId part{}; ///< The first piece of the fastener.
    bool clockwise = true;
    Side seenFrom = Side::Compressor;
};

/// `order`: when the step is done, everything that it needs was done before it.
struct OrderRule {
    StepId step{};
    PartId part{}; ///< The first part that the step places; the housing where it places none.
};

/// `condition`: the part in the seat of `part` is new, or one of its surfaces is oiled, greased, coated or
/// dry.
struct ConditionRule {
    PartId part{};
    std::string surface{}; ///< `thread and nut face`; empty for the whole part.
    std::string state{};   ///< `new`, `oiled`, `greased`, `coated` or `dry`.
};

using RuleDemand = std::variant<GapClockRule, MarkRule, GapsApartRule, GapClearOfRule, FaceRule, JointRule,
                                SeatRule, MatchMarksRule, EngagedRule, HandRule, OrderRule, ConditionRule>;

/// What the frame demands of seatings. Numbers are kept as printed.
struct Rule {
    RuleId id{};
    RuleDemand demand{SeatRule{}};
    int severity = 3;      ///< 1 cosmetic … 4 fails at start-up or destructive.
    std::string printed{}; ///< The rule as the sheet words it: `gap right, seen from the compressor side`.
    std::string reason{};  ///< What goes wrong otherwise.
    StepId lastLook{};     ///< The last step at which it can be judged by eye.
    std::string source{};  ///< The sheet it comes from.
    std::optional<RuleId> twin{}; ///< The rule at the other end.
    std::string tradeId{};        ///< `O02`, or empty.
    std::string pointer{};        ///< JSON pointer in the frame file: `/rules/3`.
};

/// `gap_clock`, `mark`, … as in frame files and JSON output.
std::string_view kindOf(const Rule& rule);

/// The parts (by the seats meant for them) that a rule speaks of, in its order.
std::vector<PartId> partsOf(const Rule& rule);

/// The printed clock of a `gap_clock` or `mark` rule.
const PrintedClock* printedClockOf(const Rule& rule);

/// The printed clock in the datum; a rule without a side reads the same from both.
Clock targetOf(const PrintedClock& printed);

} // namespace gapwise
