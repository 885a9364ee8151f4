#include "models/procedure/tightening.h"

#include "models/torque/stages.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

int mostScrews(const TorquePlan& plan) {
    int most = 1;
    for (const ScrewGroup& group : plan.groups)
        most = std::max(most, group.count);
    return most;
}

std::vector<int> inTurn(int screws) {
    std::vector<int> order;
    for (int screw = 1; screw <= screws; ++screw)
        order.push_back(screw);
    return order;
}

/// The pattern, and after it the screws that it leaves out.
std::vector<int> patternOf(const TorquePlan& plan) {
    std::vector<int> order = plan.pattern;
    for (const int screw : inTurn(mostScrews(plan)))
        if (std::ranges::find(order, screw) == order.end())
            order.push_back(screw);
    return order;
}

std::vector<Stage> runDownStages(const TorquePlan& plan, bool tightens) {
    const RunDown& run = *plan.runDown;
    const std::vector<int> order = patternOf(plan);
    return {{StageKind::Seat, "seat", run.seatNm, tightens, order},
            {StageKind::Slacken, "slacken", 0.0, !tightens, order},
            {StageKind::Snug, "snug", run.snugNm, tightens, order},
            {StageKind::Final, "final", plan.torqueNm, tightens, order}};
}

int screwsOf(const TorquePlan& plan, std::size_t group) {
    return group < plan.groups.size() ? plan.groups[group].count : 1;
}

bool isOf(const Tightened& entry, const FastenerId& fastener, const NextScrew& place) {
    return entry.fastener == fastener && entry.stage == place.stage && entry.group == place.group &&
           entry.screw == place.screw;
}

} // namespace

const TorqueNote* noteOf(const Build& build, const Fastener& fastener) {
    const auto found = std::ranges::find(build.torques, fastener.id.text, &TorqueNote::fastener);
    return found == build.torques.end() ? nullptr : &*found;
}

std::vector<Stage> stagesOf(const Fastener& fastener) {
    if (!fastener.plan)
        return {};
    const TorquePlan& plan = *fastener.plan;
    if (plan.runDown)
        return runDownStages(plan, fastener.tightensClockwise);
    std::vector<Stage> stages;
    const std::vector<int> order = patternOf(plan);
    const std::vector<double> percents =
        plan.stagesPercent.empty() ? std::vector<double>{100.0} : plan.stagesPercent;
    for (const double percent : percents)
        stages.push_back({StageKind::Draw, fmt::format("{:g} %", percent),
                          stageTorqueNm(plan.torqueNm, percent), fastener.tightensClockwise, order});
    if (plan.checkPass)
        stages.push_back({StageKind::CheckPass, "once more round, clockwise", plan.torqueNm,
                          fastener.tightensClockwise, inTurn(mostScrews(plan))});
    return stages;
}

std::vector<NextScrew> screwsInOrder(const Fastener& fastener, int group) {
    std::vector<NextScrew> screws;
    if (!fastener.plan || group < 0)
        return screws;
    const int count = screwsOf(*fastener.plan, static_cast<std::size_t>(group));
    const std::vector<Stage> stages = stagesOf(fastener);
    for (std::size_t stage = 0; stage < stages.size(); ++stage)
        for (const int screw : stages[stage].order)
            if (screw <= count)
                screws.push_back({stage, group, screw});
    return screws;
}

int groupsOf(const Fastener& fastener) {
    return fastener.plan ? std::max(1, static_cast<int>(fastener.plan->groups.size())) : 0;
}

std::optional<NextScrew> nextIn(const Fastener& fastener, int group, const JobState& state) {
    if (std::ranges::find(state.build.torques, fastener.id.text, &TorqueNote::fastener) !=
        state.build.torques.end())
        return std::nullopt;
    const std::vector<NextScrew> screws = screwsInOrder(fastener, group);
    std::size_t done = 0;
    for (const Tightened& entry : state.tightened)
        if (done < screws.size() && isOf(entry, fastener.id, screws[done]))
            ++done;
    return done < screws.size() ? std::optional{screws[done]} : std::nullopt;
}

Tightening tighteningOf(const Fastener& fastener, const JobState& state) {
    Tightening tightening;
    for (int group = 0; group < groupsOf(fastener); ++group) {
        const std::vector<NextScrew> screws = screwsInOrder(fastener, group);
        const std::optional<NextScrew> next = nextIn(fastener, group, state);
        tightening.all += screws.size();
        tightening.done += screws.size();
        if (!next)
            continue;
        const auto left = std::ranges::find_if(screws, [&](const NextScrew& screw) {
            return screw.stage == next->stage && screw.screw == next->screw;
        });
        tightening.done -= static_cast<std::size_t>(screws.end() - left);
        if (!tightening.next)
            tightening.next = next;
    }
    return tightening;
}

Tightened plannedAt(const Fastener& fastener, const NextScrew& screw) {
    const std::vector<Stage> stages = stagesOf(fastener);
    return Tightened{.fastener = fastener.id,
                     .stage = screw.stage,
                     .group = screw.group,
                     .screw = screw.screw,
                     .torqueNm = stages[screw.stage].torqueNm,
                     .clockwise = stages[screw.stage].clockwise,
                     .seenFrom = fastener.handSeenFrom};
}

std::optional<Tightened> nextTightened(const Fastener& fastener, const JobState& state) {
    const Tightening tightening = tighteningOf(fastener, state);
    if (!tightening.next)
        return std::nullopt;
    return plannedAt(fastener, *tightening.next);
}

} // namespace gapwise
