#include "viewer/dial/dial_state.h"

#include <algorithm>

namespace gapwise {

namespace {

/// Whether it is new, oiled or dry is asked on the card of its step and shows on no dial until it is said.
bool isUnsaidCondition(const Verdict& verdict) {
    return verdict.state == RuleState::Open && std::holds_alternative<ConditionRule>(verdict.rule->demand);
}

/// Verdicts of the rules that speak of the seat. While a gap is turned before others, they are judged anew.
std::vector<Verdict> verdictsOf(const Job& job, const PartId& meant) {
    const bool live = job.turning.has_value();
    const Build shown = live ? shownBuildOf(job) : Build{};
    std::vector<Verdict> verdicts;
    for (const Verdict& verdict : job.checked.verdicts) {
        const std::vector<PartId> parts = partsOf(*verdict.rule);
        if (std::ranges::find(parts, meant) != parts.end())
            verdicts.push_back(live ? judge(job.frame, shown, *verdict.rule) : verdict);
    }
    std::erase_if(verdicts, isUnsaidCondition);
    return verdicts;
}

bool any(const std::vector<Verdict>& verdicts, RuleState state) {
    return std::ranges::any_of(verdicts, [&](const Verdict& verdict) { return verdict.state == state; });
}

DialState judgedState(const Job& job, const Seating& seating, const PartId& meant) {
    const std::vector<Verdict> verdicts = verdictsOf(job, meant);
    if (any(verdicts, RuleState::Broken))
        return {DialSign::Broken, "wrong"};
    if (!seating.index && indexIsSet(job.frame, seating.part, seating.seat))
        return {DialSign::NotSet, "not set"};
    const bool hasFace = std::ranges::any_of(verdicts, [](const Verdict& verdict) {
        return std::holds_alternative<FaceRule>(verdict.rule->demand);
    });
    if (hasFace && !seating.referenceFaceLooks)
        return {DialSign::NotSet, "face not set"};
    if (any(verdicts, RuleState::Open))
        return {DialSign::Open, seating.confirmed ? "open" : "not confirmed"};
    return {DialSign::Holds, "holds"};
}

} // namespace

PartId meantFor(const Frame& frame, const SeatId& seat) {
    const auto found =
        std::ranges::find_if(frame.parts, [&](const Part& part) { return seatOf(part.id) == seat; });
    return found == frame.parts.end() ? PartId{} : found->id;
}

bool indexIsSet(const Frame& frame, const PartId& part, const SeatId& seatId) {
    const PartType* type = frame.typeOf(part);
    const Seat* seat = frame.seat(seatId);
    return type && seat && type->index != IndexKind::None && !seat->fixedIndex;
}

Build shownBuildOf(const Job& job) {
    Build build = job.state.build;
    for (Seating& seating : build.seatings) {
        if (job.turning && seating.seat == job.turning->seat)
            seating.index = job.turning->index;
        // What is on record would be copied instead of looked at.
        if (job.use == Use::Bench && !demandShown(job, seating.seat))
            seating.index.reset();
    }
    return build;
}

DialState dialStateOf(const Job& job, const SeatId& seat) {
    const Seating* seating = job.state.build.in(seat);
    if (!seating)
        return {DialSign::Empty, "not placed"};
    const bool turned = job.turning && job.turning->seat == seat;
    if (turned && job.use != Use::Show)
        return {DialSign::Turning, "being turned"};
    if (!demandShown(job, seat))
        return job.use == Use::Bench ? DialState{DialSign::Unsaid, "say what you see"}
                                     : DialState{DialSign::NotSet, "not set"};
    Seating shown = *seating;
    if (turned)
        shown.index = job.turning->index;
    return judgedState(job, shown, meantFor(job.frame, seat));
}

} // namespace gapwise
