#include "models/chain/selection.h"

#include "models/chain/prediction.h"
#include "models/torque/nut_line.h"
#include "models/torque/thread.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Lengths this close are the same: gaps are sums of binary fractions, so 0.070 + 0.020 is not 0.090.
constexpr double kSameMm = 1e-9;

bool holds(const Window& window, double gapMm) {
    return (!window.least || gapMm >= *window.least - kSameMm) &&
           (!window.most || gapMm <= *window.most + kSameMm);
}

/// What a selector works on: sizes and gaps as they are before anything is exchanged.
struct Now {
    const Frame& frame;
    std::map<QuantityId, DimensionValue> values{};
    std::span<const MeasuredValue> measured{};

    double gap(const Chain& chain) const {
        const auto isIt = [&](const MeasuredValue& value) { return value.id == chain.id; };
        const auto found = std::ranges::find_if(measured, isIt);
        return found != measured.end() ? found->value : predict(chain, values).valueMm;
    }
};

/// The chains that the dimension moves, the one that it sets first.
std::vector<const Chain*> movedChains(const Frame& frame, const Selector& selector) {
    std::vector<const Chain*> moved;
    for (const Chain& chain : frame.chains)
        if (sensitivityOf(chain, selector.dimension) != 0)
            moved.push_back(&chain);
    std::ranges::stable_partition(moved, [&](const Chain* chain) { return chain->id == selector.sets; });
    return moved;
}

/// The pitch of the nut that has a line; nothing where the frame has no such nut.
std::optional<double> linedNutPitchMm(const Frame& frame) {
    for (const Fastener& fastener : frame.fasteners) {
        if (!fastener.plan || !fastener.plan->nutLine)
            continue;
        if (const Result<MetricThread> thread = parseThread(fastener.plan->thread, fastener.id.text); thread)
            return thread->pitchMm;
    }
    return std::nullopt;
}

/// By how much the stack that the nut clamps grows with the dimension: what it takes off the thread that
/// stands beyond the nut.
int stackGrowth(const Frame& frame, const QuantityId& dimension) {
    const Chain* beyond = frame.chain(QuantityId{"beyond_nut"});
    return beyond != nullptr ? -sensitivityOf(*beyond, dimension) : 0;
}

double nutShiftDeg(const Now& now, const Selector& selector, double longerMm) {
    const int growth = stackGrowth(now.frame, selector.dimension);
    const std::optional<double> pitch = linedNutPitchMm(now.frame);
    return growth != 0 && pitch ? expectedNutShift(growth * longerMm, *pitch).value : 0.0;
}

GapThen gapThen(const Now& now, const Chain& chain, const QuantityId& dimension, double longerMm) {
    const double gap = now.gap(chain);
    const double then = gap + sensitivityOf(chain, dimension) * longerMm;
    const Window window = windowOf(now.frame, chain.id);
    return {.chain = chain.id, .nowMm = gap, .thenMm = then, .window = window, .within = holds(window, then)};
}

GradeOption optionOf(const Now& now, const Selector& selector, double gradeMm) {
    const double longer = gradeMm - now.values.at(selector.dimension).valueMm;
    GradeOption option{.gradeMm = gradeMm};
    for (const Chain* chain : movedChains(now.frame, selector))
        option.gaps.push_back(gapThen(now, *chain, selector.dimension, longer));
    option.allWithin = std::ranges::all_of(option.gaps, &GapThen::within);
    option.nutShiftDeg = nutShiftDeg(now, selector, longer);
    return option;
}

std::optional<double> middleOf(const Window& window) {
    if (!window.least || !window.most)
        return std::nullopt;
    return (*window.least + *window.most) / 2.0;
}

/// Whether `option` lies nearer to what is required than `other`, or as near and nearer to what is in now.
bool better(const Selection& selection, const GradeOption& option, const GradeOption& other) {
    const double off = std::abs(option.gradeMm - selection.requiredMm);
    const double otherOff = std::abs(other.gradeMm - selection.requiredMm);
    if (std::abs(off - otherOff) > kSameMm)
        return off < otherOff;
    return std::abs(option.gradeMm - selection.nowMm) < std::abs(other.gradeMm - selection.nowMm);
}

std::optional<std::size_t> proposedOf(const Selection& selection) {
    const auto nearest = std::ranges::min_element(
        selection.grades, [&](const auto& one, const auto& other) { return better(selection, one, other); });
    if (nearest == selection.grades.end() || nearest->gaps.empty() || !nearest->gaps.front().within)
        return std::nullopt;
    return static_cast<std::size_t>(nearest - selection.grades.begin());
}

Selection selectionOf(const Now& now, const Selector& selector, const Chain& set) {
    const double gap = now.gap(set);
    const std::optional<double> middle = middleOf(windowOf(now.frame, set.id));
    const int sensitivity = sensitivityOf(set, selector.dimension);
    Selection selection{.selector = &selector,
                        .nowMm = now.values.at(selector.dimension).valueMm,
                        .targetMm = middle.value_or(gap)};
    selection.requiredMm = selection.nowMm;
    if (sensitivity != 0)
        selection.requiredMm += (selection.targetMm - gap) / sensitivity;
    for (const double grade : selector.gradesMm)
        selection.grades.push_back(optionOf(now, selector, grade));
    if (middle && sensitivity != 0)
        selection.proposed = proposedOf(selection);
    return selection;
}

} // namespace

std::vector<Selection> selectionsOf(const Frame& frame, std::span<const MeasuredValue> measured) {
    const Now now{.frame = frame, .values = dimensionValues(frame, measured), .measured = measured};
    std::vector<Selection> selections;
    for (const Selector& selector : frame.selectors)
        if (const Chain* set = frame.chain(selector.sets);
            set != nullptr && frame.dimension(selector.dimension) != nullptr)
            selections.push_back(selectionOf(now, selector, *set));
    return selections;
}

} // namespace gapwise
