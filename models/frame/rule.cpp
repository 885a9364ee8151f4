#include "models/frame/rule.h"

#include "geometry/base/overloaded.h"

#include <array>

namespace gapwise {

std::string_view kindOf(const Rule& rule) {
    // In the order of RuleDemand.
    constexpr std::array<std::string_view, std::variant_size_v<RuleDemand>> kKinds{
        "gap_clock", "mark",        "gaps_apart", "gap_clear_of", "face",  "joint",
        "seat",      "match_marks", "engaged",    "hand",         "order", "condition"};
    return kKinds[rule.demand.index()];
}

std::vector<PartId> partsOf(const Rule& rule) {
    using Parts = std::vector<PartId>;
    return std::visit(Overloaded{[](const GapsApartRule& r) { return Parts{r.first, r.second}; },
                                 [](const JointRule& r) { return Parts{partMeantFor(r.seat)}; },
                                 [](const SeatRule& r) { return Parts{partMeantFor(r.seat)}; },
                                 [](const MatchMarksRule& r) { return r.parts; },
                                 [](const auto& r) { return Parts{r.part}; }},
                      rule.demand);
}

const PrintedClock* printedClockOf(const Rule& rule) {
    if (const auto* gap = std::get_if<GapClockRule>(&rule.demand))
        return &gap->target;
    if (const auto* mark = std::get_if<MarkRule>(&rule.demand))
        return &mark->target;
    return nullptr;
}

Clock targetOf(const PrintedClock& printed) {
    return Clock::seenFrom(printed.seenFrom.value_or(Side::Compressor), printed.clock);
}

} // namespace gapwise
