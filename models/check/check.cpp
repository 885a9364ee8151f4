#include "models/check/check.h"

#include "models/check/carrier.h"
#include "models/check/mistakes.h"
#include "models/check/stated.h"
#include "models/check/words.h"
#include "models/frame/allowed.h"

#include "geometry/base/overloaded.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace gapwise {

namespace {

/// What a rule that prints a clock demands, in the datum.
std::optional<ClockWindow> windowOf(const Rule* rule) {
    const PrintedClock* printed = rule ? printedClockOf(*rule) : nullptr;
    if (!printed)
        return std::nullopt;
    return ClockWindow{targetOf(*printed), printed->tolerance};
}

/// The clocks of the first part of a rule, and the signed turn (clockwise from the compressor side) that
/// mends it.
class Explainer {
public:
    Explainer(const Frame& frame, const Build& build, const CheckOptions& options)
        : frame_{frame}, build_{build}, options_{options} {}

    Finding explain(const Verdict& verdict) const {
        Finding finding{.verdict = verdict};
        const View current = currentView(*verdict.rule);
        if (!isStated(*verdict.rule))
            finding.asSeen = asSeen(verdict);
        if (verdict.state == RuleState::Broken) {
            addMistakes(finding);
            addTurn(finding, current.side);
        }
        if (auto* face = std::get_if<FaceCompared>(&finding.verdict.compared))
            face->referenceFaceVisible = face->expected == current.side;
        finding.question = questionOf(frame_, finding);
        finding.words = wordsOf(Telling{frame_, build_, finding, current});
        return finding;
    }

private:
    std::optional<View> knownView() const {
        if (options_.currentView)
            return options_.currentView;
        return build_.attitude ? std::optional{viewFromFront(*build_.attitude)} : std::nullopt;
    }

    /// Where the person stands; without an attitude, the rule's own view.
    View currentView(const Rule& rule) const {
        const PrintedClock* printed = printedClockOf(rule);
        const Side own = printed ? printed->seenFrom.value_or(Side::Compressor) : Side::Compressor;
        return knownView().value_or(inletOnTop(own));
    }

    const Seating* seatingOf(const Verdict& verdict) const {
        return build_.in(seatOf(partsOf(*verdict.rule).front()));
    }

    std::optional<Finding::AsSeen> asSeen(const Verdict& verdict) const {
        const Seating* seating = seatingOf(verdict);
        const std::optional<View> view = seating && seating->setIn ? seating->setIn : knownView();
        const HousingClock clock = housingClockOf(frame_, build_, seatOf(partsOf(*verdict.rule).front()));
        if (!seating || !view || !clock.index)
            return std::nullopt;
        return Finding::AsSeen{seenIn(*view, *clock.index), *view};
    }

    void addMistakes(Finding& finding) const {
        if (const auto* direction = std::get_if<DirectionCompared>(&finding.verdict.compared))
            addDirectionMistakes(finding, *direction);
        if (std::holds_alternative<FaceCompared>(finding.verdict.compared))
            finding.mistakes = {Mistake::Reversed};
        const RuleDemand& demand = finding.verdict.rule->demand;
        const bool ofAPlace =
            std::holds_alternative<SeatRule>(demand) || std::holds_alternative<JointRule>(demand);
        if (ofAPlace && sitsInAnothersSeat(finding.verdict))
            finding.mistakes = {Mistake::SwappedEnds};
        if (std::holds_alternative<HandRule>(demand))
            finding.mistakes = {Mistake::WrongHand};
    }

    void addDirectionMistakes(Finding& finding, const DirectionCompared& direction) const {
        const Rule& rule = *finding.verdict.rule;
        const PrintedClock* printed = printedClockOf(rule);
        const Seating* seating = seatingOf(finding.verdict);
        const MistakesFound found = mistakesOf(MistakeCase{
            .actual = Clock::seenFrom(direction.seenFrom, *direction.actual),
            .window = {Clock::seenFrom(direction.seenFrom, direction.expected), direction.tolerance},
            .printed = printed ? std::optional{*printed} : std::nullopt,
            .twin = windowOf(rule.twin ? frame_.rule(*rule.twin) : nullptr),
            .sister = windowOf(options_.sister ? options_.sister->rule(rule.id) : nullptr),
            .setIn = seating ? seating->setIn : std::nullopt});
        finding.mistakes = found.mistakes;
        finding.asPrinted = found.asPrinted;
    }

    /// True when the part in the seat is one that is meant for, and fits, another seat.
    bool sitsInAnothersSeat(const Verdict& verdict) const {
        const PartId& part = verdict.parts.front();
        const Seat* own = frame_.seat(seatOf(part));
        const PartType* type = frame_.typeOf(part);
        return own && type && part != partsOf(*verdict.rule).front() &&
               std::ranges::find(own->types, type->id) != own->types.end();
    }

    /// The signed turn of the part, clockwise from the compressor side, that brings it to the middle of what
    /// is demanded.
    std::optional<Degrees> mendingTurn(const Finding& finding) const {
        const Rule& rule = *finding.verdict.rule;
        return std::visit(Overloaded{[&](const DirectionCompared& c) -> std::optional<Degrees> {
                                         return Degrees{-signOf(c.seenFrom) * c.deviation->value};
                                     },
                                     [&](const ApartCompared& c) { return apartTurn(rule, c); },
                                     [&](const ClearCompared&) { return clearTurn(rule); },
                                     [](const auto&) -> std::optional<Degrees> { return std::nullopt; }},
                          finding.verdict.compared);
    }

    /// The second part is turned: to the nearer of the two places that are the demanded angle from the first.
    std::optional<Degrees> apartTurn(const Rule& rule, const ApartCompared& compared) const {
        const auto* gaps = std::get_if<GapsApartRule>(&rule.demand);
        const Seating* first = gaps ? build_.in(seatOf(gaps->first)) : nullptr;
        const Seating* second = gaps ? build_.in(seatOf(gaps->second)) : nullptr;
        if (!first || !second || !first->index || !second->index)
            return std::nullopt;
        const Degrees from = second->index->from(Side::Compressor);
        const Degrees base = first->index->from(Side::Compressor);
        const Degrees ahead = wrappedHalf(base + compared.expected - from);
        const Degrees behind = wrappedHalf(base - compared.expected - from);
        return std::abs(ahead.value) <= std::abs(behind.value) ? ahead : behind;
    }

    /// Into the nearest arc that all rules of the part allow, and on to its middle.
    std::optional<Degrees> clearTurn(const Rule& rule) const {
        const PartId part = partsOf(rule).front();
        const HousingClock clock = housingClockOf(frame_, build_, seatOf(part));
        const Arcs allowed = allowedIndexOf(frame_, part);
        if (!clock.index)
            return std::nullopt;
        const Degrees theta = clock.index->from(Side::Compressor);
        const auto into = allowed.turnInto(theta);
        if (!into)
            return std::nullopt;
        const Degrees edge = wrapped(theta + *into);
        for (const Arc& arc : allowed.arcs())
            if (arc.contains(edge))
                return wrappedHalf(arc.middle() - theta);
        return into;
    }

    void addTurn(Finding& finding, Side eye) const {
        const std::optional<Degrees> turn = mendingTurn(finding);
        if (!turn || std::abs(turn->value) <= kAngleRounding.value)
            return;
        const double seen = wrappedHalf(Degrees{signOf(eye) * turn->value}).value;
        const bool halfRound = seen <= kAngleRounding.value - 180.0; // Either way is as short: clockwise.
        finding.turn =
            TurnHint{.size = Degrees{std::abs(seen)}, .clockwise = seen > 0.0 || halfRound, .side = eye};
    }

    const Frame& frame_;
    const Build& build_;
    const CheckOptions& options_;
};

auto rankOf(const Frame& frame, const Finding& finding) {
    const Rule& rule = *finding.verdict.rule;
    const std::size_t lastLook = frame.stepIndex(rule.lastLook).value_or(frame.steps.size());
    return std::tuple{finding.verdict.state != RuleState::Broken, -rule.severity, lastLook, rule.id};
}

} // namespace

Arcs allowedIndexOf(const Frame& frame, const PartId& part) {
    Arcs allowed = Arcs::whole();
    for (const Rule& rule : frame.rules)
        if (partsOf(rule) == std::vector<PartId>{part})
            allowed = allowed.intersectedWith(allowedBy(frame, rule));
    return allowed;
}

int Checked::count(RuleState state) const {
    return static_cast<int>(std::ranges::count(verdicts, state, &Verdict::state));
}

Checked checkBuild(const Frame& frame, const Build& build, const CheckOptions& options) {
    Checked checked;
    const Explainer explainer{frame, build, options};
    for (const Rule& rule : frame.rules) {
        const Verdict& verdict = checked.verdicts.emplace_back(judge(frame, build, rule));
        const bool due = verdict.state == RuleState::Broken || verdict.state == RuleState::Open;
        if (due || (options.complete && verdict.state == RuleState::NotDue))
            checked.findings.push_back(explainer.explain(verdict));
    }
    std::ranges::sort(checked.findings, {}, [&](const Finding& finding) { return rankOf(frame, finding); });
    checked.holds = options.complete ? checked.findings.empty() : checked.count(RuleState::Broken) == 0;
    return checked;
}

} // namespace gapwise
