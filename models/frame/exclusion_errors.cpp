#include "models/frame/frame_errors.h"

#include "models/frame/allowed.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <cmath>
#include <map>

namespace gapwise {

namespace {

/// What one rule leaves to the index of one part, from the compressor side.
struct RuleWindow {
    const Rule* rule = nullptr;
    Arcs arcs = Arcs::whole();
};

/// To a tenth of a degree: for a person to read.
std::string asText(const Arcs& arcs) {
    std::vector<std::string> words;
    const auto tenth = [](double degrees) { return std::round(degrees * 10.0) / 10.0; };
    for (const Arc& arc : arcs.arcs())
        words.push_back(
            fmt::format("{}° to {}°", tenth(arc.start.value), tenth(wrapped(arc.start + arc.sweep).value)));
    return words.empty() ? "no clock" : schema::listed(words, "or");
}

std::string named(const RuleWindow& window) {
    return fmt::format("{} (at {}) allows {}", window.rule->id.text, window.rule->pointer,
                       asText(window.arcs));
}

bool isWhole(const Arcs& arcs) {
    return arcs.arcs().size() == 1 && arcs.arcs().front().sweep.value >= 360.0;
}

/// Clocks of a feature's copies in the housing when its part stands with its index at `index`, looking to
/// `face`.
std::vector<Degrees> clocksOf(const Feature& feature, const Clock& index, Side face) {
    std::vector<Degrees> clocks;
    for (int copy = 0; copy < feature.count; ++copy)
        clocks.push_back(featureClock(index, face, feature.offset + Degrees{360.0 * copy / feature.count})
                             .from(Side::Compressor));
    return clocks;
}

/// Where the pin or dowel stands that a rule engages with; empty when a build decides it.
std::vector<Degrees> clocksOfPin(const Frame& frame, const EngagedRule& rule) {
    const auto* feature = std::get_if<FeatureId>(&rule.with);
    const Part* owner = feature ? frame.partWithFeature(*feature) : frame.part(std::get<PartId>(rule.with));
    const Seat* seat = owner ? frame.seat(seatOf(owner->id)) : nullptr;
    if (!seat || !seat->fixedIndex)
        return {};
    if (!feature)
        return {seat->fixedIndex->from(Side::Compressor)};
    return clocksOf(*frame.feature(*feature).feature, *seat->fixedIndex, Side::Compressor);
}

Arcs engagedWindow(const Frame& frame, const EngagedRule& rule) {
    const std::vector<Degrees> pins = clocksOfPin(frame, rule);
    const Feature* notch = rule.feature ? frame.feature(*rule.feature).feature : nullptr;
    if (pins.empty() || (rule.feature && !notch))
        return Arcs::whole();
    std::vector<Side> faces{Side::Compressor, Side::Turbine};
    if (const auto face = demandedFace(frame, rule.part))
        faces = {*face};
    const Clock top = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    Arcs window;
    for (const Side face : faces)
        for (const Degrees offset : notch ? clocksOf(*notch, top, face) : std::vector{Degrees{0.0}})
            for (const Degrees pin : pins)
                window = window.unitedWith(Arcs::around(pin - offset, rule.engage));
    return window;
}

/// Complains at the later of two rules when they leave nothing together, else when all of them do.
void compare(const std::vector<RuleWindow>& windows, const PartId& part, Complaints& complaints) {
    bool told = false;
    Arcs common = Arcs::whole();
    for (std::size_t later = 0; later < windows.size(); ++later) {
        common = common.intersectedWith(windows[later].arcs);
        for (std::size_t earlier = 0; earlier < later; ++earlier) {
            if (!windows[earlier].arcs.intersectedWith(windows[later].arcs).empty())
                continue;
            complaints.add(windows[later].rule->pointer,
                           fmt::format("{}, {}", named(windows[later]), named(windows[earlier])),
                           fmt::format("a clock of {} that both rules allow", part.text));
            told = true;
        }
    }
    if (told || !common.empty())
        return;
    std::vector<std::string> all;
    for (const RuleWindow& window : windows)
        all.push_back(named(window));
    complaints.add(windows.back().rule->pointer, schema::listed(all, "and"),
                   fmt::format("a clock of {} that all these rules allow", part.text));
}

/// What a gap at any clock of `first` leaves to a second one that must be apart from it.
Arcs spread(const Arcs& first, const GapsApartRule& rule) {
    Arcs reached;
    for (const Arc& arc : first.arcs())
        for (const Degrees turn : {rule.apart, -rule.apart}) {
            const Degrees half{arc.sweep.value / 2.0 + rule.tolerance.value};
            reached = reached.unitedWith(Arcs::around(arc.middle() + turn, half));
        }
    return reached;
}

using Windows = std::map<PartId, std::vector<RuleWindow>>;

Windows windowsOf(const Frame& frame) {
    Windows windows;
    for (const Rule& rule : frame.rules) {
        const auto* engaged = std::get_if<EngagedRule>(&rule.demand);
        Arcs arcs = engaged ? engagedWindow(frame, *engaged) : allowedBy(frame, rule);
        if (!isWhole(arcs))
            windows[partsOf(rule).front()].push_back(RuleWindow{&rule, std::move(arcs)});
    }
    return windows;
}

Arcs commonOf(const Windows& windows, const PartId& part) {
    Arcs common = Arcs::whole();
    if (const auto found = windows.find(part); found != windows.end())
        for (const RuleWindow& window : found->second)
            common = common.intersectedWith(window.arcs);
    return common;
}

void apartError(const Windows& windows, const Rule& rule, Complaints& complaints) {
    const auto* apart = std::get_if<GapsApartRule>(&rule.demand);
    if (!apart)
        return;
    const Arcs first = commonOf(windows, apart->first);
    const Arcs second = commonOf(windows, apart->second);
    if (first.empty() || second.empty() || !spread(first, *apart).intersectedWith(second).empty())
        return;
    complaints.add(rule.pointer,
                   fmt::format("{}° ± {}° between {}, which may stand at {}, and {}, which may stand at {}",
                               apart->apart.value, apart->tolerance.value, apart->first.text, asText(first),
                               apart->second.text, asText(second)),
                   "two clocks that the rules of both parts allow");
}

} // namespace

void exclusionErrors(const Frame& frame, Complaints& complaints) {
    const Windows windows = windowsOf(frame);
    for (const auto& [part, ofPart] : windows)
        compare(ofPart, part, complaints);
    for (const Rule& rule : frame.rules)
        apartError(windows, rule, complaints);
}

} // namespace gapwise
