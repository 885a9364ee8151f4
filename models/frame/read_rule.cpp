#include "models/frame/names.h"
#include "models/frame/readers.h"
#include "models/json/schema_words.h"

#include <algorithm>

namespace gapwise {

namespace {

constexpr Range kToleranceDeg{0.0, 180.0};
constexpr Range kApartDeg{0.0, 180.0};
constexpr Range kMarginDeg{0.0, 90.0};
constexpr Range kEngageDeg{0.0, 45.0};
constexpr int kWorstSeverity = 4;

using DemandReader = RuleDemand (*)(Fields&, const Frame&);

PrintedClock readPrinted(Fields& fields) {
    return PrintedClock{.clock = Degrees{fields.number("clock_deg", kClockDeg)},
                        .seenFrom = fields.maybeWord("seen_from", kSideNames),
                        .tolerance = Degrees{fields.number("tolerance_deg", kToleranceDeg)}};
}

RuleDemand readGapClock(Fields& fields, const Frame& /*known*/) {
    return GapClockRule{fields.id<PartId>("part"), readPrinted(fields)};
}

RuleDemand readMark(Fields& fields, const Frame& /*known*/) {
    return MarkRule{fields.id<PartId>("part"), readPrinted(fields)};
}

RuleDemand readGapsApart(Fields& fields, const Frame& /*known*/) {
    std::vector<PartId> parts = fields.ids<PartId>("parts");
    if (parts.size() != 2) {
        if (fields.holdsArray("parts"))
            fields.complain("parts", schema::counted(parts.size(), "part id"), "2 part ids");
        parts.resize(2);
    }
    return GapsApartRule{.first = std::move(parts[0]),
                         .second = std::move(parts[1]),
                         .apart = Degrees{fields.number("apart_deg", kApartDeg)},
                         .tolerance = Degrees{fields.number("tolerance_deg", kToleranceDeg)}};
}

RuleDemand readGapClearOf(Fields& fields, const Frame& /*known*/) {
    return GapClearOfRule{.part = fields.id<PartId>("part"),
                          .feature = fields.id<FeatureId>("feature"),
                          .margin = Degrees{fields.number("margin_deg", kMarginDeg)}};
}

RuleDemand readFace(Fields& fields, const Frame& /*known*/) {
    FaceRule rule{.part = fields.id<PartId>("part")};
    std::string toward = fields.text("toward");
    for (const auto& [name, side] : kSideNames)
        if (toward == name) {
            rule.toward = side;
            return rule;
        }
    rule.toward = PartId{std::move(toward)};
    return rule;
}

RuleDemand readJoint(Fields& fields, const Frame& /*known*/) {
    return JointRule{fields.id<SeatId>("seat"), fields.word("joint", kJointNames)};
}

RuleDemand readSeatDemand(Fields& fields, const Frame& /*known*/) {
    return SeatRule{fields.id<SeatId>("seat")};
}

RuleDemand readMatchMarks(Fields& fields, const Frame& /*known*/) {
    return MatchMarksRule{fields.ids<PartId>("parts"),
                          Degrees{fields.number("tolerance_deg", kToleranceDeg)}};
}

RuleDemand readEngaged(Fields& fields, const Frame& known) {
    EngagedRule rule{.part = fields.id<PartId>("part"),
                     .feature = fields.maybeId<FeatureId>("feature"),
                     .engage = Degrees{fields.number("engage_deg", kEngageDeg)}};
    std::string with = fields.text("with");
    if (known.feature(FeatureId{with}).feature)
        rule.with = FeatureId{std::move(with)};
    else
        rule.with = PartId{std::move(with)};
    return rule;
}

RuleDemand readHand(Fields& fields, const Frame& known) {
    HandRule rule{.fastener = fields.id<FastenerId>("fastener"),
                  .clockwise = fields.word("turned", kTurnNames),
                  .seenFrom = fields.word("seen_from", kSideNames)};
    const auto piece = std::ranges::find(known.parts, std::optional{rule.fastener}, &Part::fastener);
    if (piece != known.parts.end())
        rule.part = piece->id;
    return rule;
}

RuleDemand readOrder(Fields& fields, const Frame& known) {
    OrderRule rule{.step = fields.id<StepId>("step"), .part = known.housing};
    const Step* step = known.step(rule.step);
    if (step && !step->places.empty())
        rule.part = step->places.front();
    return rule;
}

RuleDemand readCondition(Fields& fields, const Frame& /*known*/) {
    return ConditionRule{.part = fields.id<PartId>("part"),
                         .surface = fields.maybeText("surface").value_or(""),
                         .state = std::string{fields.word("state", kConditionNames)}};
}

} // namespace

Rule readRule(Fields& fields, const Frame& known) {
    // In the order of RuleDemand.
    constexpr std::array<Named<DemandReader>, std::variant_size_v<RuleDemand>> kKinds{{
        {"gap_clock", readGapClock},
        {"mark", readMark},
        {"gaps_apart", readGapsApart},
        {"gap_clear_of", readGapClearOf},
        {"face", readFace},
        {"joint", readJoint},
        {"seat", readSeatDemand},
        {"match_marks", readMatchMarks},
        {"engaged", readEngaged},
        {"hand", readHand},
        {"order", readOrder},
        {"condition", readCondition},
    }};
    return Rule{.id = fields.id<RuleId>("id"),
                .demand = fields.word("kind", kKinds)(fields, known),
                .severity = fields.whole("severity", 1, kWorstSeverity),
                .printed = fields.text("printed"),
                .reason = fields.text("reason"),
                .lastLook = fields.id<StepId>("last_look"),
                .source = fields.text("source"),
                .twin = fields.maybeId<RuleId>("twin"),
                .tradeId = fields.maybeText("trade_id").value_or(""),
                .pointer = fields.pointer()};
}

} // namespace gapwise
