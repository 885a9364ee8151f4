#include "models/frame/frame_errors.h"

#include "geometry/base/overloaded.h"
#include "models/frame/names.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace gapwise {

namespace {

constexpr Degrees kLeastEngagement{0.5};
constexpr Degrees kHalfTurn{180.0};

bool isFrom(Degrees value, double least, double most) {
    return value.value >= least && value.value <= most; // false for what is no number
}

std::string asText(const Span& span) {
    return fmt::format("{} to {}", span.from, span.to);
}

/// Checks each rule against the parts, seats and features that it names.
class RuleChecker {
public:
    RuleChecker(const Frame& frame, const Rule& rule, Complaints& complaints)
        : frame_{frame}, rule_{rule}, complaints_{complaints} {}

    void operator()(const GapClockRule& rule) const {
        needGap(rule.part, "part");
        checkPrinted(rule.target);
    }

    void operator()(const MarkRule& rule) const {
        needIndex(rule.part, "part");
        checkPrinted(rule.target);
    }

    void operator()(const GapsApartRule& rule) const {
        needGap(rule.first, "parts/0");
        needGap(rule.second, "parts/1");
        if (rule.first == rule.second && !rule.first.empty())
            complain("parts/1", quotedId(rule.second.text), "another part than the first");
        if (!isFrom(rule.apart, 0.0, 180.0))
            complain("apart_deg", fmt::format("{}", rule.apart.value), "an angle from 0 to 180");
        checkTolerance(rule.tolerance);
    }

    void operator()(const GapClearOfRule& rule) const {
        needGap(rule.part, "part");
        if (!isFrom(rule.margin, 0.0, 180.0))
            complain("margin_deg", fmt::format("{}", rule.margin.value), "an angle from 0 to 180");
        checkCrossing(rule);
    }

    void operator()(const FaceRule& rule) const;

    void operator()(const JointRule& rule) const {
        const auto hasJoint = [](const PartType& type) { return type.joint.has_value(); };
        needOfTypes(rule.seat, "seat", hasJoint, "no joint", "a seat whose part types all have a joint");
        const Seat* seat = frame_.seat(rule.seat);
        if (seat && std::ranges::none_of(seat->types, [&](const PartTypeId& id) {
                const PartType* type = frame_.type(id);
                return !type || !type->joint || type->joint == rule.joint;
            }))
            complain("joint", quotedId(nameOf(rule.joint)), "the joint of a part type that the seat lists");
    }

    void operator()(const SeatRule& /*references say it all*/) const {}

    void operator()(const MatchMarksRule& rule) const {
        if (rule.parts.size() < 2)
            complain("parts", schema::counted(rule.parts.size(), "part"), "at least 2 parts");
        std::set<PartId> seen;
        for (std::size_t i = 0; i < rule.parts.size(); ++i) {
            const std::string key = fmt::format("parts/{}", i);
            needIndex(rule.parts[i], key);
            if (!seen.insert(rule.parts[i]).second)
                complain(key, fmt::format("{} again", quotedId(rule.parts[i].text)), "each part once");
        }
        checkTolerance(rule.tolerance);
    }

    void operator()(const EngagedRule& rule) const;

    void operator()(const HandRule& rule) const;

    void operator()(const OrderRule& rule) const {
        const Step* step = frame_.step(rule.step);
        if (step && step->after.empty())
            complain("step", fmt::format("{}, which needs no other step", quotedId(rule.step.text)),
                     "a step with something under after");
    }

    void operator()(const ConditionRule& /*conditionErrors says it all*/) const {}

    void checkCommon() const {
        if (rule_.severity < 1 || rule_.severity > 4)
            complain("severity", fmt::format("{}", rule_.severity), "a whole number from 1 to 4");
    }

private:
    void complain(std::string_view key, std::string found, std::string allowed) const {
        complaints_.add(fmt::format("{}/{}", rule_.pointer, key), std::move(found), std::move(allowed));
    }

    /// Complains about each type of the seat that does not suit.
    template <class Suits>
    void needOfTypes(const SeatId& id, std::string_view key, Suits suits, std::string_view lack,
                     std::string_view allowed) const {
        const Seat* seat = frame_.seat(id);
        for (std::size_t i = 0; seat && i < seat->types.size(); ++i)
            if (const PartType* type = frame_.type(seat->types[i]); type && !suits(*type))
                complain(key, fmt::format("{}, whose part type {} has {}", id.text, type->id.text, lack),
                         std::string{allowed});
    }

    void needGap(const PartId& part, std::string_view key) const {
        const auto hasGap = [](const PartType& type) { return type.index == IndexKind::Gap; };
        needOfTypes(seatOf(part), key, hasGap, "no gap as its index", "a part whose index is its gap");
    }

    void needIndex(const PartId& part, std::string_view key) const {
        const auto hasIndex = [](const PartType& type) { return type.index != IndexKind::None; };
        needOfTypes(seatOf(part), key, hasIndex, "no index", "a part with an index");
    }

    void checkTolerance(Degrees tolerance) const {
        if (!(tolerance.value > 0.0) || tolerance > kHalfTurn)
            complain("tolerance_deg", fmt::format("{}", tolerance.value), "an angle above 0 to 180");
    }

    void checkPrinted(const PrintedClock& printed) const {
        const double clock = printed.clock.value;
        if (!(clock >= 0.0 && clock < 360.0))
            complain("clock_deg", fmt::format("{}", clock), "a clock from 0 to below 360");
        else if (!printed.seenFrom && clock != 0.0 && clock != 180.0)
            complaints_.add(rule_.pointer, fmt::format("clock_deg {} without seen_from", clock),
                            "seen_from beside every clock but 0 and 180");
        checkTolerance(printed.tolerance);
    }

    void checkCrossing(const GapClearOfRule& rule) const;

    const Frame& frame_;
    const Rule& rule_;
    Complaints& complaints_;
};

void RuleChecker::operator()(const FaceRule& rule) const {
    const auto hasFace = [](const PartType& type) { return type.face != FaceKind::None; };
    needOfTypes(seatOf(rule.part), "part", hasFace, "no reference face", "a part with a reference face");
    const Seat* own = frame_.seat(seatOf(rule.part));
    if (own && own->reversible)
        complain("part", fmt::format("{}, whose seat is reversible", quotedId(rule.part.text)),
                 "a part that may not go in either way round");
    const auto* toward = std::get_if<PartId>(&rule.toward);
    const Seat* other = toward ? frame_.seat(seatOf(*toward)) : nullptr;
    if (own && other && own->zMm == other->zMm)
        complain(
            "toward",
            fmt::format("{}, which lies at z {} like {}", quotedId(toward->text), own->zMm, rule.part.text),
            "compressor, turbine, or a part on one side of it");
}

void RuleChecker::operator()(const EngagedRule& rule) const {
    const Part* part = frame_.part(rule.part);
    if (!rule.feature)
        needIndex(rule.part, "part");
    else if (const PartType* owner = frame_.feature(*rule.feature).type;
             part && owner && owner->id != part->type)
        complain("feature", fmt::format("{}, a feature of {}", quotedId(rule.feature->text), owner->id.text),
                 fmt::format("a feature of {}", part->type.text));
    const auto* withPart = std::get_if<PartId>(&rule.with);
    const auto* withFeature = std::get_if<FeatureId>(&rule.with);
    const PartType* other = withFeature ? frame_.feature(*withFeature).type : nullptr;
    if ((withPart && *withPart == rule.part) || (other && part && other->id == part->type))
        complain("with", quotedId(withPart ? withPart->text : withFeature->text),
                 "a pin or a feature of another part");
    if (!(rule.engage >= kLeastEngagement) || rule.engage > kHalfTurn)
        complain("engage_deg", fmt::format("{}", rule.engage.value), "half the play, from 0.5 to 180");
}

/// A rule that wants another sense than the fastener tightens in would have it slackened.
void RuleChecker::operator()(const HandRule& rule) const {
    const Fastener* fastener = frame_.fastener(rule.fastener);
    if (!fastener)
        return;
    const bool sameSide = fastener->handSeenFrom == rule.seenFrom;
    if ((fastener->tightensClockwise == rule.clockwise) != sameSide)
        complain("turned",
                 fmt::format("{}, seen from the {} side", nameIn(kTurnNames, rule.clockwise),
                             nameOf(rule.seenFrom)),
                 fmt::format("as {} tightens: {}, seen from the {} side", fastener->id.text,
                             nameIn(kTurnNames, fastener->tightensClockwise),
                             nameOf(fastener->handSeenFrom)));
    if (rule.part.empty())
        complain("fastener", fmt::format("{}, of which no piece is a part", quotedId(rule.fastener.text)),
                 "a fastener that a part names as its own");
}

/// The feature has to cut the bore where the ring's groove is, else the rule means nothing.
void RuleChecker::checkCrossing(const GapClearOfRule& rule) const {
    const Seat* seat = frame_.seat(seatOf(rule.part));
    const Frame::FoundFeature found = frame_.feature(rule.feature);
    const Part* owner = frame_.partWithFeature(rule.feature);
    if (!seat || !found.feature || !owner)
        return;
    if (!seat->groove) {
        complain("part", fmt::format("{} without a groove", seat->id.text), "a ring in a groove");
        return;
    }
    const Extent extent = extentOf(found.feature->form);
    const Span z = alongShaft(frame_, owner->id, extent.z);
    const Span& groove = seat->groove->z;
    const double radius = seat->groove->boreMm / 2.0;
    const bool overlaps = std::min(z.to, groove.to) > std::max(z.from, groove.from);
    const bool crosses = extent.r.from <= radius && extent.r.to >= radius;
    if (!overlaps || !crosses)
        complain("feature",
                 fmt::format("{} at z {} mm, r {} mm", rule.feature.text, asText(z), asText(extent.r)),
                 fmt::format("a feature that crosses the groove of {} at z {} mm, r {} mm", rule.part.text,
                             asText(groove), radius));
    else if (extent.widthMm > seat->groove->boreMm)
        complain("feature", fmt::format("{}, {} mm wide", rule.feature.text, extent.widthMm),
                 fmt::format("a feature narrower than the bore of {} mm", seat->groove->boreMm));
}

} // namespace

std::optional<Side> demandedFace(const Frame& frame, const PartId& part) {
    for (const Rule& rule : frame.rules) {
        const auto* face = std::get_if<FaceRule>(&rule.demand);
        if (!face || face->part != part)
            continue;
        if (const auto* side = std::get_if<Side>(&face->toward))
            return *side;
        const Seat* own = frame.seat(seatOf(part));
        const Seat* other = frame.seat(seatOf(std::get<PartId>(face->toward)));
        if (own && other)
            return other->zMm > own->zMm ? Side::Compressor : Side::Turbine;
    }
    return std::nullopt;
}

Span alongShaft(const Frame& frame, const PartId& part, const Span& own) {
    const Seat* seat = frame.seat(seatOf(part));
    const double station = seat ? seat->zMm : 0.0;
    if (demandedFace(frame, part) == Side::Turbine)
        return Span{station - own.to, station - own.from};
    return Span{station + own.from, station + own.to};
}

void ruleErrors(const Frame& frame, Complaints& complaints) {
    for (const Rule& rule : frame.rules) {
        const RuleChecker checker{frame, rule, complaints};
        checker.checkCommon();
        std::visit(checker, rule.demand);
    }
}

} // namespace gapwise
