#include "models/procedure/kit.h"

#include "models/access/outline.h"

#include <algorithm>

namespace gapwise {

namespace {

/// The locking elements of the trade's parts list: spring washers, tab and lock plates.
constexpr std::string_view kLockingPart = "P28";

/// Gathers items of one name, in the order of first use.
class Picking {
public:
    void add(const std::string& name, int quantity, const StepId& step) {
        auto found = std::ranges::find(items_, name, &PickItem::name);
        if (found == items_.end())
            found = items_.insert(items_.end(), PickItem{.name = name});
        found->quantity += quantity;
        if (std::ranges::find(found->steps, step) == found->steps.end())
            found->steps.push_back(step);
    }

    std::vector<PickItem> take() { return std::move(items_); }

private:
    std::vector<PickItem> items_{};
};

bool has(Locking locking, Locking one, Locking other) {
    return locking == one || locking == other;
}

/// `M8` of `M8x1-LH`.
std::string sizeOf(const std::string& thread) {
    return thread.substr(0, thread.find_first_of("x-"));
}

/// The locking elements that are drawn; nothing when the frame draws none of this fastener.
bool addDrawn(const Frame& frame, const Fastener& fastener, Picking& picking) {
    bool drawn = false;
    for (const Part& part : frame.parts) {
        const PartType* type = frame.type(part.type);
        if (part.fastener != fastener.id || part.tradeId != kLockingPart || !type)
            continue;
        picking.add(type->name, 1, fastener.step);
        drawn = true;
    }
    return drawn;
}

void addLocking(const Frame& frame, const Fastener& fastener, Picking& picking) {
    const TorquePlan& plan = *fastener.plan;
    if (has(plan.locking, Locking::ThreadLock, Locking::ThreadLockAndTab))
        picking.add("thread-lock, bottle", 1, fastener.step);
    const bool tabs = has(plan.locking, Locking::Tab, Locking::ThreadLockAndTab);
    if ((!tabs && plan.locking != Locking::SpringWasher) || addDrawn(frame, fastener, picking))
        return;
    int screws = 0;
    for (const ScrewGroup& group : plan.groups)
        screws += group.count;
    picking.add((tabs ? "tab plate " : "spring washer ") + sizeOf(plan.thread), screws, fastener.step);
}

} // namespace

std::vector<PickItem> pickListOf(const Frame& frame) {
    Picking picking;
    for (const Step& step : frame.steps) {
        for (const Consumable& each : step.consumables)
            picking.add(each.name, each.quantity, step.id);
        for (const Fastener& fastener : frame.fasteners)
            if (fastener.step == step.id && fastener.plan)
                addLocking(frame, fastener, picking);
    }
    return picking.take();
}

std::vector<GaugeItem> gaugesOf(const Frame& frame) {
    std::vector<GaugeItem> gauges;
    for (const Measurement& each : frame.measurements) {
        if (each.instrument.empty())
            continue;
        auto found = std::ranges::find(gauges, each.instrument, &GaugeItem::instrument);
        if (found == gauges.end())
            found = gauges.insert(gauges.end(), GaugeItem{.instrument = each.instrument});
        found->measurements.push_back(each.id);
    }
    return gauges;
}

std::vector<std::string> toolsOf(const Frame& frame) {
    std::vector<std::string> tools;
    for (const Step& step : frame.steps)
        for (const std::string& tool : step.tools)
            if (std::ranges::find(tools, tool) == tools.end())
                tools.push_back(tool);
    return tools;
}

/// What reaches through the block is the rotor, let down into the housing with nothing on it.
std::optional<double> leastBlockMm(const Frame& frame, Side up) {
    const auto rest = std::ranges::find(frame.rests, up, &Rest::up);
    const PartType* rotor = frame.typeOf(frame.rotor);
    const Seat* seat = frame.seat(seatOf(frame.rotor));
    if (rest == frame.rests.end() || !rotor || !seat)
        return std::nullopt;
    double through = 0.0;
    for (const Slab& slab : slabsOf(*rotor, *seat, demandedFaceOf(frame, frame.rotor)))
        through =
            std::max(through, up == Side::Turbine ? slab.z.to - rest->faceMm : rest->faceMm - slab.z.from);
    return through + rest->clearanceMm;
}

} // namespace gapwise
