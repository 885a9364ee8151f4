#include "models/check/stated.h"

#include "models/check/carrier.h"

#include "geometry/base/overloaded.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

namespace gapwise {

namespace {

constexpr std::string_view kNew = "new";
constexpr std::string_view kDry = "dry";

std::string turnWords(bool clockwise, Side from) {
    return fmt::format("{}, seen from the {} side", clockwise ? "clockwise" : "counter-clockwise",
                       nameOf(from));
}

std::string conditionWords(const ConditionRule& rule) {
    return rule.surface.empty() ? rule.state : fmt::format("{} {}", rule.surface, rule.state);
}

const TorqueNote* notedOf(const Build& build, const FastenerId& fastener) {
    const auto noted = std::ranges::find(build.torques, fastener.text, &TorqueNote::fastener);
    return noted == build.torques.end() ? nullptr : &*noted;
}

bool applies(OnlyWhen when, const Build& build) {
    return when == OnlyWhen::Always || build.rotorLoweredIn.value_or(false);
}

/// A step that may be left out and was is not needed.
bool isNeeded(const Frame& frame, const Build& build, const Precedence& need) {
    const Step* needed = frame.step(need.step);
    return needed && applies(need.when, build) && applies(needed->when, build) &&
           (!needed->maySkip || build.done(need.step));
}

/// Whether one of these steps stands for the needed one.
bool isStoodFor(const Frame& frame, const StepId& needed, std::span<const StepId> before) {
    return std::ranges::any_of(before, [&](const StepId& done) {
        const Step* step = frame.step(done);
        return step && std::ranges::find(step->standsFor, needed) != step->standsFor.end();
    });
}

/// `S17 after S14, S09, S13`: what it needs in this build.
std::string orderWords(const Frame& frame, const Build& build, const OrderRule& rule) {
    std::string words;
    if (const Step* step = frame.step(rule.step))
        for (const Precedence& need : step->after)
            if (isNeeded(frame, build, need))
                words += (words.empty() ? "" : ", ") + need.step.text;
    return fmt::format("{} after {}", rule.step.text, words.empty() ? "what it needs" : words);
}

bool isMissed(const Frame& frame, const Build& build, const Precedence& need,
              std::span<const StepId> before) {
    return isNeeded(frame, build, need) && std::ranges::find(before, need.step) == before.end() &&
           !isStoodFor(frame, need.step, before);
}

/// Something on a surface and nothing on it exclude each other.
bool contradicts(const std::string& stated, const std::string& wanted) {
    return stated != kNew && wanted != kNew && (stated == kDry) != (wanted == kDry);
}

} // namespace

Outcome handTurned(const Build& build, const HandRule& rule) {
    FactCompared compared{.expected = "tightened " + turnWords(rule.clockwise, rule.seenFrom), .actual = ""};
    const TorqueNote* noted = notedOf(build, rule.fastener);
    if (!noted || !noted->clockwise || !noted->seenFrom)
        return {compared, std::nullopt,
                fmt::format("nobody wrote down which way {} was turned", rule.fastener.text)};
    compared.actual = "turned " + turnWords(*noted->clockwise, *noted->seenFrom);
    const bool sameSide = *noted->seenFrom == rule.seenFrom;
    return {compared, (*noted->clockwise == rule.clockwise) == sameSide, ""};
}

Outcome orderKept(const Frame& frame, const Build& build, const OrderRule& rule) {
    const Step* step = frame.step(rule.step);
    FactCompared compared{.expected = orderWords(frame, build, rule), .actual = ""};
    const auto at = std::ranges::find(build.stepsDone, rule.step);
    if (!step || at == build.stepsDone.end())
        return {compared, std::nullopt, fmt::format("{} is not done yet", rule.step.text)};
    const std::span<const StepId> before{build.stepsDone.begin(), at};
    std::string missed;
    for (const Precedence& need : step->after)
        if (isMissed(frame, build, need, before))
            missed += fmt::format("{}{} {} ({})", missed.empty() ? rule.step.text + " done " : ", ",
                                  build.done(need.step) ? "before" : "without", need.step.text, need.why);
    compared.actual = missed.empty() ? compared.expected : missed;
    return {compared, missed.empty(), ""};
}

Outcome conditionStated(const Build& build, const ConditionRule& rule) {
    FactCompared compared{.expected = conditionWords(rule), .actual = ""};
    const Seating* seating = build.in(seatOf(rule.part));
    const std::vector<std::string> stated = seating ? seating->conditions : std::vector<std::string>{};
    if (std::ranges::find(stated, rule.state) != stated.end()) {
        compared.actual = compared.expected;
        return {compared, true, ""};
    }
    for (const std::string& state : stated)
        if (contradicts(state, rule.state))
            compared.actual = state;
    if (!compared.actual.empty())
        return {compared, false, ""};
    return {compared, std::nullopt, "nobody said so"};
}

bool isStated(const Rule& rule) {
    return std::holds_alternative<HandRule>(rule.demand) || std::holds_alternative<OrderRule>(rule.demand) ||
           std::holds_alternative<ConditionRule>(rule.demand);
}

bool isStatementDue(const Frame& frame, const Build& build, const Rule& rule) {
    return std::visit(Overloaded{[&](const HandRule& hand) {
                                     const Fastener* fastener = frame.fastener(hand.fastener);
                                     return notedOf(build, hand.fastener) ||
                                            (fastener && build.done(fastener->step));
                                 },
                                 [&](const OrderRule& order) { return build.done(order.step); },
                                 [&](const ConditionRule& condition) {
                                     const bool said = conditionStated(build, condition).holds.has_value();
                                     return isFilled(frame, build, seatOf(condition.part)) &&
                                            (said || build.done(rule.lastLook));
                                 },
                                 [](const auto&) { return false; }},
                      rule.demand);
}

} // namespace gapwise
