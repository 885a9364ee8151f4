#include "models/measure/judge.h"

#include "models/gauging/bush.h"
#include "models/measure/flags.h"
#include "models/measure/numbers.h"
#include "models/uncertainty/decision.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

ToleranceInterval intervalOf(const Window& window) {
    return {.least = window.least, .most = window.most};
}

Conformity guarded(const Window& window, double value, double expanded) {
    return decide(value, expanded, intervalOf(window), DecisionRule::Guarded).conformity;
}

Standing guardedStanding(const Window& first, const Window& service, double value, double expanded) {
    const Conformity inFirst = guarded(first, value, expanded);
    if (inFirst == Conformity::Within)
        return Standing::Within;
    if (service.empty())
        return inFirst == Conformity::Outside ? Standing::Beyond : Standing::NotProven;
    const Conformity inService = guarded(service, value, expanded);
    if (inService == Conformity::Outside)
        return Standing::Beyond;
    const bool proven = inService == Conformity::Within && inFirst == Conformity::Outside;
    return proven ? Standing::Between : Standing::NotProven;
}

/// The limits of a quantity; of an unbalance the permissible total.
Limits limitsOf(const QuantityResult& result) {
    Limits limits = result.quantity->limits;
    if (result.unbalance)
        limits.fresh = Window{.least = std::nullopt, .most = result.unbalance->permissible};
    return limits;
}

std::string_view takenWords(Takes takes) {
    switch (takes) {
    case Takes::Least: return "The least";
    case Takes::Most: return "The largest";
    case Takes::Range: return "The range";
    case Takes::Mean: break;
    }
    return "";
}

/// A mean of several values may lie between the steps of its instrument.
int judgedDecimals(const Evaluated& read, const Quantity& quantity) {
    const int least = quantity.unit == Unit::Millimetres ? 2 : 1;
    const bool isMean = quantity.takes == Takes::Mean && read.values.size() > 1;
    return std::max(read.decimals + (isMean && read.decimals < 3 ? 1 : 0), least);
}

/// The words of one verdict.
class Verdict {
public:
    Verdict(const QuantityResult& result, const Evaluated& read)
        : result_{result},
          quantity_{*result.quantity},
          read_{read},
          limits_{limitsOf(result)},
          decimals_{judgedDecimals(read, quantity_)} {}

    Judgement judged() {
        Judgement judgement{.limit = limits_.fresh.empty() ? limits_.service : limits_.fresh};
        judgement.standing = standingOf(limits_, read_.judged, read_.expanded);
        if (hasOwnLimits() || judgement.standing != Standing::NoLimit)
            if (std::string why = whyNotJudged(); !why.empty())
                return {Standing::NotJudged, false, judgement.limit, std::move(why)};
        if (limits_.rule == LimitRule::AsPrinted)
            near_ = endNear(limits_.fresh, read_.judged, read_.expanded);
        if (limits_.rule == LimitRule::AsPrinted && !near_)
            near_ = endNear(limits_.service, read_.judged, read_.expanded);
        judgement.close = near_.has_value();
        judgement.words = words(judgement.standing);
        addOwnLimits(judgement);
        return judgement;
    }

private:
    std::string number(double value) const { return numberWords(value, decimals_, quantity_.unit); }
    std::string window(const Window& window) const { return windowWords(window, decimals_, quantity_.unit); }
    bool hasOwnLimits() const { return result_.fourPoint || result_.unbalance || quantity_.ringGap; }

    std::string whyNotJudged() const {
        if (hasFlag(read_.flags, FlagKind::PartNotPlaced))
            return "Not judged: a part was not in when it was read.";
        if (hasFlag(read_.flags, FlagKind::WrongInstrument))
            return "Not judged: it was read with another kind of instrument than its method takes.";
        const std::string& wanted = limits_.method;
        if (wanted.empty() || read_.method == wanted)
            return {};
        const Method* limit = result_.measurement->method(wanted);
        const Method* taken = result_.measurement->method(read_.method);
        const std::string blind = taken && !taken->blind.empty() ? "; " + taken->blind : std::string{};
        return fmt::format("Not judged: {}, the limit is for another method: {}{}.",
                           taken ? "read with " + taken->words : std::string{"how it was read is not said"},
                           limit ? limit->words : wanted, blind);
    }

    std::string words(Standing standing) const {
        const std::string value = taken();
        const bool twoBands = !limits_.fresh.empty() && !limits_.service.empty();
        const Window& first = limits_.fresh.empty() ? limits_.service : limits_.fresh;
        const Window& last = twoBands ? limits_.service : first;
        switch (standing) {
        case Standing::Within:
            return fmt::format("{} {} {}{}", value, first.least && first.most ? "lies within" : "keeps to",
                               window(first), closeWords());
        case Standing::Between:
            return fmt::format("{} lies outside {} and within the limit, {}{} A named person decides.", value,
                               window(first), window(last), closeWords());
        case Standing::Beyond:
            return fmt::format("{} is beyond the limit, {}{}", value, window(last), closeWords());
        case Standing::NotProven:
            return fmt::format("{} ± {} straddles {}: not proven. Read again with a better instrument.",
                               value, number(read_.expanded), window(nearBand()));
        default: return number(read_.judged) + ": there is no limit to hold it against.";
        }
    }

    const Window& nearBand() const {
        const bool fresh = endNear(limits_.fresh, read_.judged, read_.expanded).has_value();
        return fresh || limits_.service.empty() ? limits_.fresh : limits_.service;
    }

    std::string closeWords() const {
        return near_ ? fmt::format(", close to {} (± {}).", number(*near_), number(read_.expanded)) : ".";
    }

    /// `The least, 11.992 mm,` or `0.068 mm` alone.
    std::string taken() const {
        const std::string_view which = takenWords(quantity_.takes);
        return which.empty() ? number(read_.judged) : fmt::format("{}, {},", which, number(read_.judged));
    }

    void addOwnLimits(Judgement& judgement) const {
        if (hasFlag(read_.flags, FlagKind::OutOfRound))
            beyond(judgement, "It is out of round or tapers beyond its limit.");
        if (result_.fourPoint && quantity_.fourPoint)
            addFourPoint(judgement, *result_.fourPoint, *quantity_.fourPoint);
        if (result_.unbalance)
            addUnbalance(judgement, *result_.unbalance);
        if (result_.hotGap && *result_.hotGap <= 0.0)
            beyond(judgement, "Hot, its ends meet: it would be forced into the bore.");
        if (quantity_.pinPlay)
            if (const PinState state = pinStateOf(Degrees{read_.judged}); state != PinState::Holds)
                beyond(judgement, std::string{adviceFor(state)});
    }

    void addFourPoint(Judgement& judgement, const FourPointResult& four, const FourPointPlan& plan) const {
        if (four.least < plan.pointLeast - kRounding)
            beyond(judgement, fmt::format("The smallest gap, {}, is below {}.", number(four.least),
                                          number(plan.pointLeast)));
        if (four.parts && four.casing > plan.eccentricityMost + kRounding)
            beyond(judgement, fmt::format("The casing is {} eccentric after the sag, at most {}.",
                                          numberWords(four.casing, 3, Unit::Millimetres),
                                          numberWords(plan.eccentricityMost, 3, Unit::Millimetres)));
    }

    void addUnbalance(Judgement& judgement, const UnbalanceResult& unbalance) const {
        if (!unbalance.split)
            return;
        const auto look = [&](const char* plane, double found, double share) {
            const Limits limits{.fresh = Window{.least = std::nullopt, .most = share}, .rule = limits_.rule};
            const Standing standing = standingOf(limits, found, read_.expanded);
            const std::string words =
                fmt::format("The {} plane has {} left of {}.", plane, number(found), number(share));
            if (standing == Standing::Beyond)
                beyond(judgement, words);
            else if (standing == Standing::NotProven && judgement.standing == Standing::Within) {
                judgement.standing = Standing::NotProven;
                judgement.words += " " + words;
            }
        };
        look("compressor", unbalance.compressor, unbalance.compressorShare);
        look("turbine", unbalance.turbine, unbalance.turbineShare);
    }

    static void beyond(Judgement& judgement, const std::string& words) {
        judgement.standing = Standing::Beyond;
        judgement.words += (judgement.words.empty() ? "" : " ") + words;
    }

    const QuantityResult& result_;
    const Quantity& quantity_;
    const Evaluated& read_;
    Limits limits_;
    int decimals_;
    std::optional<double> near_{};
};

} // namespace

Standing standingOf(const Limits& limits, double value, double expanded) {
    const Window& first = limits.fresh.empty() ? limits.service : limits.fresh;
    const Window second = limits.fresh.empty() ? Window{} : limits.service;
    if (first.empty())
        return Standing::NoLimit;
    if (limits.rule == LimitRule::Guarded)
        return guardedStanding(first, second, value, expanded);
    if (holdsValue(first, value))
        return Standing::Within;
    return !second.empty() && holdsValue(second, value) ? Standing::Between : Standing::Beyond;
}

Judgement notRead(const Measurement& measurement, const Quantity& quantity) {
    const Window& fresh = quantity.limits.fresh;
    return {.limit = fresh.empty() ? quantity.limits.service : fresh,
            .words = measurement.required ? fmt::format("Not read; {} asks for it.", measurement.step.text)
                                          : "Not read."};
}

Judgement judge(const QuantityResult& result, const Evaluated& read) {
    return Verdict{result, read}.judged();
}

} // namespace gapwise
