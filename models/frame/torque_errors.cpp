#include "models/frame/frame_errors.h"

#include "models/json/schema_words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <map>
#include <numeric>

namespace gapwise {

namespace {

constexpr double kWholeTorque = 100.0;

/// Checks the plan of one fastener.
class PlanChecker {
public:
    PlanChecker(const Frame& frame, const Fastener& fastener, Complaints& complaints)
        : frame_{frame}, fastener_{fastener}, plan_{*fastener.plan}, complaints_{complaints} {}

    void check() const {
        checkPattern();
        checkStages();
        checkHand();
        checkPieces();
        if (plan_.runDown)
            checkRunDown(*plan_.runDown);
        if (plan_.nutLine)
            checkNutLine(*plan_.nutLine);
    }

private:
    void complain(std::string_view key, std::string found, std::string allowed) const {
        complaints_.add(fmt::format("{}/{}", fastener_.pointer, key), std::move(found), std::move(allowed));
    }

    int screws() const {
        return std::accumulate(plan_.groups.begin(), plan_.groups.end(), 0,
                               [](int sum, const ScrewGroup& group) { return sum + group.count; });
    }

    void checkPattern() const {
        if (plan_.groups.empty())
            complain("groups", "no group", "at least 1 group of screws");
        std::vector<int> sorted = plan_.pattern;
        std::ranges::sort(sorted);
        for (const ScrewGroup& group : plan_.groups) {
            std::vector<int> all(static_cast<std::size_t>(group.count));
            std::iota(all.begin(), all.end(), 1);
            if (sorted == all)
                continue;
            complain("pattern", fmt::format("[{}]", fmt::join(plan_.pattern, ", ")),
                     fmt::format("each screw from 1 to {} once{}", group.count,
                                 group.name.empty() ? "" : ", as the group " + group.name + " has them"));
            return;
        }
    }

    void checkStages() const {
        const std::string found = fmt::format("[{}]", fmt::join(plan_.stagesPercent, ", "));
        if (plan_.runDown.has_value() == plan_.stagesPercent.empty()) {
            const bool rising = std::ranges::adjacent_find(plan_.stagesPercent, std::greater_equal{}) ==
                                plan_.stagesPercent.end();
            if (!plan_.stagesPercent.empty() && (!rising || plan_.stagesPercent.back() != kWholeTorque))
                complain("stages_percent", found, "stages that rise to 100");
            return;
        }
        complaints_.add(fastener_.pointer,
                        plan_.runDown ? "stages_percent and run_down" : "neither stages_percent nor run_down",
                        "one of both");
    }

    /// Who holds the wrench sees a right-hand thread tighten clockwise.
    void checkHand() const {
        const bool leftHand = plan_.thread.ends_with("-LH");
        if (leftHand == fastener_.tightensClockwise)
            complain("tightens",
                     fmt::format("{} with the thread {}",
                                 fastener_.tightensClockwise ? "clockwise" : "counter_clockwise",
                                 plan_.thread),
                     "clockwise for a right-hand thread, counter_clockwise for a left-hand one (-LH)");
    }

    /// The pieces that have a thread, or all where none has one (nuts), type by type.
    void checkPieces() const {
        std::map<PartTypeId, int> threaded;
        std::map<PartTypeId, int> all;
        for (const Part& part : frame_.parts) {
            const PartType* type = part.fastener == fastener_.id ? frame_.type(part.type) : nullptr;
            if (!type)
                continue;
            ++all[type->id];
            if (!type->shape.threads.empty())
                ++threaded[type->id];
        }
        const std::map<PartTypeId, int>& counted = threaded.empty() ? all : threaded;
        const int drawn = std::accumulate(counted.begin(), counted.end(), 0,
                                          [](int sum, const auto& each) { return sum + each.second; });
        if (counted.size() <= 1 && drawn != 0 && drawn != screws())
            complain("groups", fmt::format("{} in all", screws()),
                     fmt::format("as many as there are pieces of {}: {}", fastener_.id.text, drawn));
    }

    void checkRunDown(const RunDown& runDown) const {
        if (screws() != 1)
            complain("run_down", schema::counted(static_cast<std::size_t>(screws()), "nut"), "a single nut");
        if (!(runDown.dragMostNm < runDown.snugNm))
            complain("run_down/snug_Nm", fmt::format("{}", runDown.snugNm),
                     fmt::format("more than drag_most_Nm, {}", runDown.dragMostNm));
        if (!(runDown.snugNm < plan_.torqueNm))
            complain("run_down/snug_Nm", fmt::format("{}", runDown.snugNm),
                     fmt::format("less than torque_Nm, {}", plan_.torqueNm));
        if (!(runDown.snugNm < runDown.seatNm))
            complain("run_down/seat_Nm", fmt::format("{}", runDown.seatNm),
                     fmt::format("more than snug_Nm, {}", runDown.snugNm));
        if (!(runDown.leastAngle < runDown.mostAngle))
            complain("run_down/angle_deg",
                     fmt::format("[{}, {}]", runDown.leastAngle.value, runDown.mostAngle.value),
                     "[from, to] with from < to");
    }

    void checkNutLine(const NutLineLimits& limits) const {
        if (!plan_.runDown)
            complain("nut_line", "a nut line without run_down", "a nut that is run down");
        if (!(limits.agrees < limits.small))
            complain("nut_line/small_deg", fmt::format("{}", limits.small.value),
                     fmt::format("more than agrees_deg, {}", limits.agrees.value));
        if (limits.stack.empty())
            complain("nut_line/stack", "no part", "the parts that the nut clamps");
    }

    const Frame& frame_;
    const Fastener& fastener_;
    const TorquePlan& plan_;
    Complaints& complaints_;
};

} // namespace

void torqueErrors(const Frame& frame, Complaints& complaints) {
    for (const Fastener& fastener : frame.fasteners)
        if (fastener.plan)
            PlanChecker{frame, fastener, complaints}.check();
}

} // namespace gapwise
